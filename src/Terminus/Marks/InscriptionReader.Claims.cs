namespace Terminus;

/// <content>The words of a patent claim, before its dates and numbers.</content>
internal sealed partial class InscriptionReader
{
    private const int MostClaimWords = 12;

    /// <summary>The claim whose words start at a token, or null.</summary>
    private Claim? ClaimAt(int start)
    {
        var claim = new Claim { Start = start };
        int at = start;
        int words = 0;
        while (at < tokens.Count && words++ < MostClaimWords)
        {
            Token token = tokens[at];
            if (token.Is(Term.Patent) && token.Lexemes.Length <= 3)
            {
                claim.HasPatent = true;
                claim.End = at + 1;
                return claim;
            }

            bool designLetter = at == start && token.Text == "D" && Is(SkipSoft(at + 1), Term.Patent);
            claim.IsDesign |= designLetter;
            if (token.Kind != TokenKind.Word || !(designLetter || TryQualify(claim, token)))
            {
                break;
            }

            claim.End = at + 1;

            int next = SkipSoft(at + 1);
            if (IsOriginLine(token, at, next))
            {
                break;
            }

            at = next;
        }

        return WithoutPatent(claim, start, at);
    }

    /// <summary>The name of a country at the end of a line is an origin and no part of the claim on the next.</summary>
    private bool IsOriginLine(Token token, int at, int next)
    {
        if (token.Office is null or "US" or "CA" || token.Lexemes[0].Class != WordClass.Country)
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

    private static bool TryQualify(Claim claim, Token token)
    {
        if (token.Lexemes.Length != 1)
        {
            return false;
        }

        if (token.Office is { } office)
        {
            AddOffice(claim, office);
            return true;
        }

        string term = token.Lexemes[0].Term;
        claim.IsDesign |= term == Term.Design;
        claim.IsPlant |= term == Term.Plant;
        claim.IsReissue |= term == Term.Reissue;
        claim.IsProvisional |= term == Term.Provisional;
        claim.HasOther |= term is Term.Other or Term.And or Term.Also;
        if (term == Term.Royal)
        {
            AddOffice(claim, "GB");
        }

        return term is Term.And or Term.Also or Term.Other or Term.Design or Term.Reissue or Term.Provisional or Term.Foreign or Term.Letters
            or Term.Royal or Term.Utility or Term.United or Term.Great or Term.Plant or "WORLD";
    }

    private static void AddOffice(Claim claim, string office)
    {
        if (!claim.Offices.Contains(office))
        {
            claim.Offices.Add(office);
        }
    }

    /// <summary>Words that claim without the word patent: <c>OTHERS PENDING</c>, <c>REISSUED JAN. 5 1892</c>, <c>DES. 123456</c>, <c>U.S. 2,345,678</c>.</summary>
    private Claim? WithoutPatent(Claim claim, int start, int at)
    {
        if (at == start)
        {
            claim.End = start;
            return Is(start, Term.Pending) && IsBehindClaim(start) ? claim : DesignLetter(claim, start);
        }

        if (Is(at, Term.Pending) || (Is(at, Term.Applied) && Is(SkipSoft(at + 1), Term.For)))
        {
            return claim.IsDesign || IsBehindClaim(start) || claim.Offices.Count > 0 ? claim : null;
        }

        bool named = claim.IsReissue || claim.IsDesign || claim.Offices.Count > 0;
        if (!named || at >= tokens.Count)
        {
            return null;
        }

        int number = Is(at, Term.No) ? SkipSoft(at + 1) : at;
        if (number < tokens.Count && NumberGrammar.Read(tokens, number, out _) is { } read)
        {
            int least = Is(at, Term.No) || claim.IsReissue ? 3 : claim.IsDesign ? 4 : 6;
            bool plausible = read.Digits.Length >= least || (read.Year is not null && claim.Offices.Count > 0);
            return plausible && !read.LooksLikeYear ? claim : claim.IsReissue && DateAt(number, out _) is not null ? claim : null;
        }

        return (claim.IsReissue || claim.IsDesign) && DateAt(at, out _) is not null ? claim : null;
    }

    /// <summary>A design number with its letter alone: <c>D-123456</c>.</summary>
    private Claim? DesignLetter(Claim claim, int start)
    {
        if (start >= tokens.Count || tokens[start].Text is not "D" || NumberGrammar.Read(tokens, start, out _) is not { Right: "design", Digits.Length: >= 5 })
        {
            return null;
        }

        claim.IsDesign = true;
        return claim;
    }

    private bool IsBehindClaim(int at)
        => drafts.Count > 0 && drafts[drafts.Count - 1].Kind is MarkKind.PatentDate or MarkKind.PatentNumber or MarkKind.DesignNumber or MarkKind.PatentWord
            && at > 0 && tokens[at].Start - drafts[drafts.Count - 1].End <= 6;

    private StampedDate? DateAt(int at, out int end)
    {
        end = at;
        return at >= tokens.Count ? null
            : DateGrammar.Named(tokens, at, out end) ?? DateGrammar.Numeric(tokens, at, out end);
    }
}
