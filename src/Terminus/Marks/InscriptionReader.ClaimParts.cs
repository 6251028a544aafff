namespace Terminus;

/// <content>What follows from the words of a claim: dates, numbers, a status, offices.</content>
internal sealed partial class InscriptionReader
{
    /// <summary>Reads the words of a claim and all that follows from them, and returns the token behind.</summary>
    private int ReadClaim(Claim claim)
    {
        group++;
        var state = new ClaimState(drafts.Count, claim);
        while (state.At < tokens.Count)
        {
            int next = SkipSoft(state.At, 4);
            if (next >= tokens.Count)
            {
                break;
            }

            state.IsOpen = drafts.Count == state.First;
            bool taken = TryApostrophe(claim, state, next) || TryStatus(claim, state, next) || TryDate(claim, state, next)
                || TrySharedYear(claim, state, next) || TryYear(claim, state, next) || TryNumber(claim, state, next)
                || TryNewOffice(claim, state, next) || TryWord(claim, state, next);
            if (!taken)
            {
                break;
            }
        }

        return drafts.Count > state.First ? state.End
            : claim.HasPatent ? AddWords(claim, state.From, state.End)
            : claim.Start;
    }

    /// <summary>The apostrophe of <c>PAT'D</c> read as a space.</summary>
    private bool TryApostrophe(Claim claim, ClaimState state, int next)
    {
        bool letter = state.IsOpen && tokens[next].Kind == TokenKind.Word && tokens[next].Text is "D" or "S" && next == SkipSoft(claim.End)
            && !IsDigits(SkipSoft(next + 1));
        if (letter)
        {
            state.At = state.End = next + 1;
        }

        return letter;
    }

    private bool TryStatus(Claim claim, ClaimState state, int next)
    {
        int behind = Status(next, state.IsOpen);
        if (behind > next)
        {
            state.Wrote(AddPending(claim, state.StartOf(next), behind));
        }

        return behind > next;
    }

    private bool TryDate(Claim claim, ClaimState state, int next)
    {
        if (DateAt(next, out int behind) is not { } date || (tokens[next].Months == 0 && state.IsExplicitNumber))
        {
            return false;
        }

        int start = state.Shared is null ? state.StartOf(next) : next;
        AddShared(claim, state, date.Year, next);
        AddDate(claim, date, start, behind);
        state.Wrote(behind);
        return true;
    }

    /// <summary>Days of one month, or of one year, before their year: <c>AUG. 12 &amp; 19 1884</c>, <c>APR. 7 AND MAY 19 1885</c>.</summary>
    private bool TrySharedYear(Claim claim, ClaimState state, int next)
    {
        if (state.Shared is { } first && DateGrammar.DayAndYear(tokens, next, first.Months, out int behind) is { } second)
        {
            AddShared(claim, state, second.Year, next);
            AddDate(claim, second, next, behind);
            state.Wrote(behind);
            return true;
        }

        if (state.Shared is null && DateGrammar.WithoutYear(tokens, next, out behind) is { } part && FollowedByDate(ref behind, part.Months))
        {
            state.Shared = part;
            state.SharedFrom = state.StartOf(next);
            state.At = behind;
            return true;
        }

        return false;
    }

    private void AddShared(Claim claim, ClaimState state, string year, int next)
    {
        if (state.Shared is { } part)
        {
            AddDate(claim, part with { Year = year }, state.SharedFrom, LastBefore(next) + 1);
            state.Shared = null;
        }
    }

    private bool TryYear(Claim claim, ClaimState state, int next)
    {
        int at = next > 0 && tokens[next - 1].IsSign('\'') ? next - 1 : next;
        bool mayStand = state.IsOpen || state.IsOfNewOffice || drafts[drafts.Count - 1].IsOfYear;
        if (!mayStand || state.IsExplicitNumber || DateGrammar.YearAlone(tokens, at, out int behind) is not { } year)
        {
            return false;
        }

        AddDate(claim, year, state.StartOf(at), behind);
        state.Wrote(behind);
        return true;
    }

    private bool TryNumber(Claim claim, ClaimState state, int next)
    {
        if (NumberGrammar.Read(tokens, next, out int behind) is not { } number
            || !IsPlausible(number, claim, state.IsOpen, state.IsExplicitNumber, next))
        {
            return false;
        }

        AddNumber(claim, number, state.StartOf(next), behind);
        state.Wrote(behind);
        return true;
    }

    /// <summary>Another country with its own year: <c>PATENTED CANADA 1912 U.S.A. 1910</c>.</summary>
    private bool TryNewOffice(Claim claim, ClaimState state, int next)
    {
        int year = SkipSoft(next + 1);
        if (state.IsOpen || tokens[next].Office is not { } office || year >= tokens.Count || ClaimAt(next) is not null
            || DateGrammar.YearAlone(tokens, year, out _) is null)
        {
            return false;
        }

        claim.Offices.Clear();
        claim.Offices.Add(office);
        state.Lead = next;
        state.IsOfNewOffice = true;
        state.At = next + 1;
        return true;
    }

    private bool TryWord(Claim claim, ClaimState state, int next)
    {
        bool explicitNumber = state.IsExplicitNumber;
        if (!(tokens[next].Kind == TokenKind.Word || tokens[next].IsSign('#')) || !TryGoOn(claim, next, state.IsOpen, ref explicitNumber, out int behind))
        {
            return false;
        }

        state.IsExplicitNumber = explicitNumber;
        state.At = behind;
        if (state.IsOpen)
        {
            state.End = behind;
        }
        else if (tokens[next].Office is not null)
        {
            Extend(behind);
            state.End = behind;
        }
        else if (state.Lead < 0)
        {
            state.Lead = next;
        }

        return true;
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
            bool ofYear = !open && drafts[drafts.Count - 1] is { IsOfficeAssumed: true, IsOfYear: true } && tokens[at - 1].Kind != TokenKind.Break;
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
}
