namespace Terminus;

/// <content>Patent claims: the words, and the dates, numbers and offices that follow.</content>
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

    /// <summary>Reads the words of a claim and all that follows from them, and returns the token behind.</summary>
    private int ReadClaim(Claim claim)
    {
        group++;
        int first = drafts.Count;
        int from = claim.Start;
        int end = claim.End;
        int at = claim.End;
        bool explicitNumber = false;
        bool isOfNewOffice = false;
        int lead = -1;
        int known = first;
        StampedDate? dateWithoutYear = null;
        int dateWithoutYearFrom = 0;
        while (at < tokens.Count)
        {
            int next = SkipSoft(at, 4);
            if (next >= tokens.Count)
            {
                break;
            }

            lead = drafts.Count == known ? lead : -1;
            known = drafts.Count;

            Token token = tokens[next];
            bool open = drafts.Count == first;
            int pieceFrom = open ? from : lead >= 0 ? lead : next;
            if (token.Kind == TokenKind.Word && token.Text is "D" or "S" && open && next == SkipSoft(claim.End) && !IsDigits(SkipSoft(next + 1)))
            {
                // The apostrophe of PAT'D read as a space.
                at = end = next + 1;
                continue;
            }

            int status = Status(next, open);
            if (status > next)
            {
                from = at = end = AddPending(claim, pieceFrom, status);
                continue;
            }

            if (DateAt(next, out int behind) is { } date && (token.Months != 0 || !explicitNumber))
            {
                if (dateWithoutYear is not null)
                {
                    AddDate(claim, dateWithoutYear with { Year = date.Year }, open ? from : dateWithoutYearFrom, next);
                    drafts[drafts.Count - 1].End = tokens[LastBefore(next)].End;
                    dateWithoutYear = null;
                    open = false;
                }

                AddDate(claim, date, pieceFrom, behind);
                from = at = end = behind;
                continue;
            }

            if (dateWithoutYear is not null && DateGrammar.DayAndYear(tokens, next, dateWithoutYear.Months, out behind) is { } second)
            {
                AddDate(claim, dateWithoutYear with { Year = second.Year }, open ? from : dateWithoutYearFrom, next);
                drafts[drafts.Count - 1].End = tokens[LastBefore(next)].End;
                dateWithoutYear = null;
                AddDate(claim, second, next, behind);
                from = at = end = behind;
                continue;
            }

            if (DateGrammar.WithoutYear(tokens, next, out behind) is { } part && dateWithoutYear is null && FollowedByDate(ref behind, part.Months))
            {
                dateWithoutYear = part;
                dateWithoutYearFrom = next;
                at = behind;
                continue;
            }

            int yearAt = next > 0 && tokens[next - 1].IsSign('\'') ? next - 1 : next;
            bool listOfYears = !open && drafts[drafts.Count - 1] is { Kind: MarkKind.PatentDate, Date: { Months: 0, MonthDigits: "" } };
            if ((open || isOfNewOffice || listOfYears) && !explicitNumber && DateGrammar.YearAlone(tokens, yearAt, out behind) is { } year)
            {
                AddDate(claim, year, isOfNewOffice ? from : pieceFrom, behind);
                from = at = end = behind;
                isOfNewOffice = false;
                continue;
            }

            if (NumberGrammar.Read(tokens, next, out behind) is { } number && IsPlausible(number, claim, open, explicitNumber, next))
            {
                AddNumber(claim, number, pieceFrom, behind);
                from = at = end = behind;
                explicitNumber = false;
                continue;
            }

            if (!open && token.Office is { } nextOffice && ClaimAt(next) is null && SkipSoft(next + 1) is var yearOfNext && yearOfNext < tokens.Count
                && DateGrammar.YearAlone(tokens, yearOfNext, out _) is not null)
            {
                claim.Offices.Clear();
                claim.Offices.Add(nextOffice);
                from = next;
                at = next + 1;
                isOfNewOffice = true;
                continue;
            }

            if (!(token.Kind == TokenKind.Word || token.IsSign('#')) || !TryGoOn(claim, next, open, ref explicitNumber, out int consumed))
            {
                break;
            }

            at = consumed;
            end = open ? consumed : end;
            lead = lead >= 0 ? lead : next;
            if (!open && claim.Offices.Count > 0 && tokens[next].Office is not null)
            {
                Extend(consumed);
                end = consumed;
            }
        }

        if (drafts.Count == first)
        {
            if (!claim.HasPatent)
            {
                return claim.Start;
            }

            return AddWords(claim, from, end);
        }

        return end;
    }

    private int LastBefore(int at)
    {
        int last = at - 1;
        while (tokens[last].IsSoft || tokens[last].Is(Term.And))
        {
            last--;
        }

        return last;
    }

    /// <summary>Whether a date that shares its year follows, behind commas and "and"; then the token is the first of that date.</summary>
    private bool FollowedByDate(ref int at, int months)
    {
        int next = SkipSoft(at);
        if (Is(next, Term.And))
        {
            next = SkipSoft(next + 1);
        }

        bool follows = next < tokens.Count && (DateAt(next, out _) is not null || DateGrammar.DayAndYear(tokens, next, months, out _) is not null);
        at = follows ? next : at;
        return follows;
    }

    /// <summary>The token behind words that say "applied for" or "pending", or the token itself.</summary>
    private int Status(int at, bool open)
    {
        int next = at;
        while (!open && (Is(next, Term.And) || Is(next, Term.Other) || Is(next, Term.Also)))
        {
            next = SkipSoft(next + 1);
        }

        if (next < tokens.Count && DateAt(next, out _) is not null)
        {
            return at;
        }

        if (Is(next, Term.Pending) || Is(next, "ANGEMELDET") || IsLetterPending(next))
        {
            return next + 1;
        }

        if (!Is(next, Term.Applied))
        {
            return at;
        }

        int behind = next + 1;
        int after = SkipSoft(behind);
        if (after < tokens.Count && tokens[after].Text == "D")
        {
            // APL'D with its apostrophe read as a space.
            after = SkipSoft(after + 1);
        }

        return Is(after, Term.For) || Is(after, Term.Pending) ? after + 1 : behind;
    }

    /// <summary>The letter of <c>PAT. P.</c> at the end of a line.</summary>
    private bool IsLetterPending(int at)
        => at < tokens.Count && tokens[at].Text == "P" && Is(at - 1, Term.Patent) | Is(at - 2, Term.Patent)
            && SkipSoft(at + 1) is var next && (next >= tokens.Count || tokens[next].Office is not null || tokens[next - 1].Kind == TokenKind.Break);

    private bool IsPlausible(StampedNumber number, Claim claim, bool open, bool explicitNumber, int at)
    {
        int size = number.Digits.Length;
        if (explicitNumber || number.Right is not null || (number.Year is not null && size >= 2))
        {
            return size <= 9;
        }

        bool lineBreak = at > 0 && tokens[at - 1].Kind == TokenKind.Break;
        int least = !open || lineBreak ? 5 : claim.IsPlant ? 1 : claim.IsReissue || claim.Offices.Any(o => o != "US") ? 3 : 4;
        return size <= 9 && size >= least && (number.IsGrouped || !number.LooksLikeYear);
    }

    /// <summary>Words between the claim and what it claims: a number word, a country, a design, a reissue, "and".</summary>
    private bool TryGoOn(Claim claim, int at, bool open, ref bool explicitNumber, out int consumed)
    {
        consumed = at + 1;
        Token token = tokens[at];
        if (token.Is(Term.No) || token.IsSign('#'))
        {
            explicitNumber = true;
            return true;
        }

        int next = SkipSoft(at + 1);
        if (token.Office is { } office)
        {
            bool forNextClaim = ClaimAt(at) is { HasPatent: true };
            bool ofYear = !open && drafts[drafts.Count - 1] is { IsOfficeAssumed: true, Date: { Months: 0, MonthDigits: "" } } && tokens[at - 1].Kind != TokenKind.Break;
            if (forNextClaim || (!open && office != "US" && !ofYear) || IsMadeIn(at))
            {
                return false;
            }

            AddOffice(claim, office);
            if (ofYear)
            {
                drafts[drafts.Count - 1].Office = office;
                drafts[drafts.Count - 1].IsOfficeAssumed = false;
                drafts[drafts.Count - 1].Right = claim.Right(office);
            }

            return true;
        }

        if (token.Text is "+" or "\u271A" && IsDigits(next))
        {
            AddOffice(claim, "CH");
            explicitNumber = true;
            return true;
        }

        if (token.Is(Term.Dated) || ((token.Is(Term.In) || token.Is(Term.Of)) && open))
        {
            if (next < tokens.Count && (DateAt(next, out _) is not null || DateGrammar.YearAlone(tokens, next, out _) is not null))
            {
                return true;
            }
        }

        if (token.Is(Term.In) || token.Is(Term.United) || token.Is(Term.Great) || token.Is(Term.Of) || token.Is(Term.By))
        {
            return open && next < tokens.Count && tokens[next].Kind == TokenKind.Word
                && (tokens[next].Office is not null || tokens[next].Is(Term.United) || tokens[next].Is(Term.Great));
        }

        if (token.Is(Term.Design) && DesignFollows(next))
        {
            claim.IsDesign = true;
            return true;
        }

        if (token.Is(Term.Reissue) && next < tokens.Count && (IsDigits(next) || Is(next, Term.No) || DateAt(next, out _) is not null))
        {
            claim.IsReissue = true;
            return true;
        }

        if (token.Text is "COUNTRIES" or "ABROAD")
        {
            return true;
        }

        if (token.Is(Term.And) || token.Is(Term.Also) || token.Is(Term.Foreign) || token.Is(Term.Other))
        {
            if (ClaimAt(at) is { HasPatent: true } || next >= tokens.Count)
            {
                return open && token.Is(Term.Foreign);
            }

            Token following = tokens[next];
            return following.Months != 0 || following.Kind == TokenKind.Digits || following.Is(Term.Reissue) || following.Is(Term.Foreign)
                || following.Is(Term.No) || following.Is(Term.Other) || following.Text == "COUNTRIES" || (open && following.Office is not null) || following.Text == "D";
        }

        return false;
    }

    private bool IsMadeIn(int at) => Is(at - 1, Term.In) && at >= 2 && Is(at - 2, Term.Made);

    private bool DesignFollows(int next)
        => next >= tokens.Count || IsDigits(next) || Is(next, Term.No) || Is(next, Term.Pending) || Is(next, Term.Applied)
            || DateAt(next, out _) is not null || tokens[next].Kind == TokenKind.Break;

    private void Extend(int end) => drafts[drafts.Count - 1].End = end < tokens.Count && tokens[end].IsSign('.') && tokens[end].Joined
        ? tokens[end].End
        : tokens[end - 1].End;

    private MarkDraft AddClaimed(Claim claim, MarkKind kind, int from, int end)
    {
        MarkDraft draft = Add(kind, from, end);
        draft.Office = claim.Office ?? "US";
        draft.IsOfficeAssumed = claim.Office is null;
        draft.Right = claim.Right(draft.Office);
        if (claim.Offices.Count > 1)
        {
            draft.Reasons.Add(new Reason("marks.several-offices", "offices", string.Join(", ", claim.Offices)));
        }

        return draft;
    }

    private int AddPending(Claim claim, int from, int end)
    {
        bool design = claim.IsDesign && drafts.All(d => d.Group != group);
        MarkDraft draft = AddClaimed(claim, design ? MarkKind.DesignPending : MarkKind.Pending, from, end);
        draft.Wording = lexicon[design ? "mk.us_design_pending" : "mk.us_pending"];
        if (NumberBehindPending(end, out int behind) is { } number)
        {
            draft.Number = number;
            Extend(behind);
            if (number.Year is not null && draft.IsOfficeAssumed)
            {
                draft.Office = "GB";
                draft.Right = "patent";
                draft.IsOfficeAssumed = false;
            }

            return behind;
        }

        return end;
    }

    /// <summary>The number of the application, with its year: <c>PATENT APPLIED FOR No. 12345/46</c>.</summary>
    private StampedNumber? NumberBehindPending(int end, out int behind)
    {
        behind = end;
        int at = SkipSoft(end);
        bool explicitNumber = Is(at, Term.No);
        at = explicitNumber ? SkipSoft(at + 1) : at;
        return at < tokens.Count && (explicitNumber || IsDigits(at)) && NumberGrammar.Read(tokens, at, out behind) is { } number
            && (explicitNumber || number.Year is not null)
            ? number
            : null;
    }

    private void AddDate(Claim claim, StampedDate date, int from, int end)
    {
        MarkDraft draft = AddClaimed(claim, MarkKind.PatentDate, from, end);
        draft.Date = date;
        if (claim.Offices.Contains("US"))
        {
            // Of several countries it was the United States that asked for the date.
            draft.Office = "US";
            draft.Right = claim.Right("US");
        }
    }

    private void AddNumber(Claim claim, StampedNumber number, int from, int end)
    {
        bool design = claim.IsDesign || number.Right == "design";
        MarkDraft draft = AddClaimed(claim, MarkKind.PatentNumber, from, end);
        draft.Number = number;
        if (number.Right == "reissue")
        {
            draft.Right = "reissue";
        }

        if (design)
        {
            draft.Kind = draft.Office == "US" ? MarkKind.DesignNumber : MarkKind.RegisteredDesign;
            draft.Right = draft.Office == "US" ? "design" : "registered-design";
        }
        else if (number.Year is not null && draft.IsOfficeAssumed)
        {
            draft.Office = "GB";
            draft.Right = "patent";
            draft.IsOfficeAssumed = false;
            draft.Reasons.Add(new Reason("marks.number-of-year"));
        }
    }

    private int AddWords(Claim claim, int from, int end)
    {
        if (claim.IsProvisional)
        {
            MarkDraft pending = AddClaimed(claim, MarkKind.Pending, from, end);
            pending.Office = claim.Office ?? "GB";
            pending.Right = "patent";
            pending.IsOfficeAssumed = false;
            pending.Wording = lexicon["mk.prov_pat"];
            return end;
        }

        int webEnd = WebAddress(end);
        MarkDraft draft = AddClaimed(claim, MarkKind.PatentWord, from, webEnd);
        if (webEnd > end)
        {
            draft.Wording = lexicon["mk.patent_web"];
        }
        if (claim.IsDesign)
        {
            draft.Reasons.Add(new Reason("marks.design-word"));
        }

        return webEnd;
    }

    /// <summary>The token behind a web address that starts at most three signs behind the word, or the token itself.</summary>
    private int WebAddress(int at)
    {
        int next = SkipSoft(at);
        if (next >= tokens.Count || tokens[next].Text is not ("WWW" or "HTTP" or "HTTPS"))
        {
            return at;
        }

        while (next < tokens.Count && tokens[next].Kind != TokenKind.Break && (next == at || tokens[next].Joined || tokens[next].Text is "WWW" or "HTTP" or "HTTPS"))
        {
            next++;
        }

        while (next < tokens.Count && tokens[next].Joined)
        {
            next++;
        }

        return next;
    }
}
