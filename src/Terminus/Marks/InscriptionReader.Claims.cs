namespace Terminus;

/// <content>The words of a patent claim, before its dates and numbers.</content>
internal sealed partial class InscriptionReader
{
    private const int MostClaimWords = 12;

    // The words that can stand in a claim beside the names of countries.
    private const Terms WordsOfClaims = Terms.And | Terms.Also | Terms.Other | Terms.Design | Terms.Reissue | Terms.Provisional | Terms.Foreign
        | Terms.Letters | Terms.Royal | Terms.Utility | Terms.United | Terms.Great | Terms.Plant | Terms.World;

    /// <summary>Whether a claim starts at a token, and what its words say.</summary>
    private bool TryClaimAt(int start, out Claim claim)
    {
        claim = new Claim { Start = start };
        int at = start;
        int words = 0;
        while (at < tokens.Count && words++ < MostClaimWords)
        {
            ref readonly Token token = ref tokens[at];
            if (token.Is(Terms.Patent) && token.Meaning.IsClear)
            {
                claim.HasPatent = true;
                claim.End = at + 1;
                return true;
            }

            bool designLetter = at == start && token.IsLetter('D') && tokens[SkipSoft(at + 1)].Is(Terms.Patent);
            claim.IsDesign |= designLetter;
            if (!designLetter && !TryQualify(ref claim, token.Meaning))
            {
                break;
            }

            claim.End = at + 1;
            int next = SkipSoft(at + 1);
            if (IsOriginLine(in token, at, next))
            {
                break;
            }

            at = next;
        }

        return at == start ? IsContinued(ref claim, start) : IsWithoutPatent(in claim, start, at);
    }

    /// <summary>The name of a country at the end of a line is an origin and no part of the claim on the next.</summary>
    private bool IsOriginLine(in Token token, int at, int next)
    {
        if (token.Office is null or "US" or "CA" || token.Meaning.Lexemes[0].Class != WordClass.Country)
        {
            return false;
        }

        for (int i = at + 1; i < next; i++)
        {
            if (tokens[i].Kind == TokenKind.Break)
            {
                return true;
            }
        }

        return false;
    }

    private static bool TryQualify(ref Claim claim, Meaning meaning)
    {
        if (meaning.Office is { } office)
        {
            claim.Add(office);
            return true;
        }

        if (!meaning.Is(WordsOfClaims) || meaning.Lexemes.Length != 1)
        {
            return false;
        }

        claim.Add(meaning.Terms);
        if (meaning.Is(Terms.Royal))
        {
            claim.Add("GB");
        }

        return true;
    }

    /// <summary>What goes on from a claim without any of its words: <c>PENDING</c>, <c>D-123456</c>.</summary>
    private bool IsContinued(ref Claim claim, int start)
    {
        claim.End = start;
        ref readonly Token token = ref tokens[start];
        if (token.Is(Terms.Pending) && IsBehindClaim(start))
        {
            return true;
        }

        claim.IsDesign |= token.IsLetter('D') && NumberGrammar.Read(tokens, start, out _) is { Right: "design", Digits.Length: >= 5 };
        return claim.IsDesign;
    }

    /// <summary>Words that claim without the word patent: <c>OTHERS PENDING</c>, <c>REISSUED JAN. 5 1892</c>, <c>DES. 123456</c>, <c>U.S. 2,345,678</c>.</summary>
    private bool IsWithoutPatent(in Claim claim, int start, int at)
    {
        bool named = claim.IsDesign || claim.Office is not null;
        if (tokens[at].Is(Terms.Pending) || (tokens[at].Is(Terms.Applied) && tokens[SkipSoft(at + 1)].Is(Terms.For)))
        {
            return named || IsBehindClaim(start);
        }

        if ((!named && !claim.IsReissue) || at >= tokens.Count)
        {
            return false;
        }

        bool explicitNumber = tokens[at].Is(Terms.No);
        int number = explicitNumber ? SkipSoft(at + 1) : at;
        if (NumberGrammar.Read(tokens, number, out _) is { } read)
        {
            int least = explicitNumber || claim.IsReissue ? 3 : claim.IsDesign ? 4 : 6;
            bool plausible = read.Digits.Length >= least || (read.Year is not null && claim.Office is not null);
            return (plausible && !read.LooksLikeYear) || (claim.IsReissue && DateAt(number, out _) is not null);
        }

        return (claim.IsReissue || claim.IsDesign) && DateAt(at, out _) is not null;
    }

    private bool IsBehindClaim(int at)
        => drafts.Count > 0 && drafts[drafts.Count - 1].Kind is MarkKind.PatentDate or MarkKind.PatentNumber or MarkKind.DesignNumber or MarkKind.PatentWord
            && at > 0 && tokens[at].Start - drafts[drafts.Count - 1].End <= 6;

    private StampedDate? DateAt(int at, out int end) => DateGrammar.Any(tokens, at, out end);
}
