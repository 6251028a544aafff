namespace Terminus;

/// <content>Words between a claim and what it claims: a number word, a country, a design, a reissue, "and".</content>
internal sealed partial class InscriptionReader
{
    private const Terms Joining = Terms.And | Terms.Also | Terms.Foreign | Terms.Other;

    private const Terms Leading = Terms.In | Terms.United | Terms.Great | Terms.Of | Terms.By;

    private bool TryWord(ref ClaimState state, int next)
    {
        ref readonly Token token = ref tokens[next];
        if (!(token.Kind == TokenKind.Word || token.IsSign('#')) || !TryGoOn(ref state, next))
        {
            return false;
        }

        int behind = next + 1;
        state.At = behind;
        if (state.IsOpen)
        {
            state.End = behind;
        }
        else if (token.Office is not null)
        {
            // What led to it is in the mark now, and leads to no other.
            Extend(behind);
            state.End = behind;
            state.Lead = -1;
        }
        else if (state.Lead < 0)
        {
            state.Lead = next;
        }

        return true;
    }

    private bool TryGoOn(ref ClaimState state, int at)
    {
        ref readonly Token token = ref tokens[at];
        int next = SkipSoft(at + 1);
        if (token.Is(Terms.No) || token.IsSign('#'))
        {
            state.IsExplicitNumber = true;
            return true;
        }

        if (token.Office is { } office)
        {
            return TryOffice(ref state, at, office);
        }

        if (tokens.Text(at) is "+" or "\u271A" && tokens[next].IsDigits)
        {
            state.Claim.Add("CH");
            state.IsExplicitNumber = true;
            return true;
        }

        if ((token.Is(Terms.Dated) || (state.IsOpen && token.Is(Terms.In | Terms.Of)))
            && (DateAt(next, out _) is not null || DateGrammar.YearAlone(tokens, next, out _) is not null))
        {
            return true;
        }

        if (token.Is(Leading))
        {
            return state.IsOpen && (tokens[next].Office is not null || tokens[next].Is(Terms.United | Terms.Great));
        }

        if (token.Is(Terms.Design) && DesignFollows(next))
        {
            state.Claim.IsDesign = true;
            return true;
        }

        if (token.Is(Terms.Reissue) && (tokens[next].IsDigits || tokens[next].Is(Terms.No) || DateAt(next, out _) is not null))
        {
            state.Claim.IsReissue = true;
            return true;
        }

        return tokens.Text(at) is "COUNTRIES" or "ABROAD" || (token.Is(Joining) && GoesOnBehind(in state, at, next));
    }

    /// <summary>The name of a country, which the claim takes unless it opens another claim or is an origin.</summary>
    private bool TryOffice(ref ClaimState state, int at, string office)
    {
        bool ofYear = !state.IsOpen && drafts[drafts.Count - 1] is { IsOfficeAssumed: true, IsOfYear: true } && tokens[at - 1].Kind != TokenKind.Break;
        if ((!state.IsOpen && office != "US" && !ofYear) || IsMadeIn(at) || (TryClaimAt(at, out Claim other) && other.HasPatent))
        {
            return false;
        }

        state.Claim.Add(office);
        if (ofYear)
        {
            drafts[drafts.Count - 1].NameOffice(office, state.Claim.Right(office));
        }

        return true;
    }

    private bool GoesOnBehind(in ClaimState state, int at, int next)
    {
        ref readonly Token following = ref tokens[next];
        if (next >= tokens.Count || (TryClaimAt(at, out Claim other) && other.HasPatent))
        {
            return state.IsOpen && tokens[at].Is(Terms.Foreign);
        }

        return following.Months != 0 || following.IsDigits || following.Is(Terms.Reissue | Terms.Foreign | Terms.No | Terms.Other)
            || tokens.Text(next) is "COUNTRIES" || (state.IsOpen && following.Office is not null) || following.IsLetter('D');
    }

    private bool IsMadeIn(int at) => tokens[at - 1].Is(Terms.In) && tokens[at - 2].Is(Terms.Made);

    private bool DesignFollows(int next)
    {
        ref readonly Token token = ref tokens[next];
        return next >= tokens.Count || token.IsDigits || token.Is(Terms.No | Terms.Pending | Terms.Applied) || token.Kind == TokenKind.Break
            || DateAt(next, out _) is not null;
    }
}
