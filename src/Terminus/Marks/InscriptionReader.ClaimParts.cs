namespace Terminus;

/// <content>What follows from the words of a claim: dates, numbers, a status, offices.</content>
internal sealed partial class InscriptionReader
{
    // Numbers of so many digits are of patents granted since 1911, which stand beside the words for another that is pending.
    private const int DigitsOfLatePatent = 7;

    /// <summary>Reads the words of a claim and all that follows from them, and returns the token behind.</summary>
    private int ReadClaim(in Claim claim)
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
            bool taken = TryApostrophe(ref state, next) || TryStatus(ref state, next) || TryDate(ref state, next)
                || TrySharedYear(ref state, next) || TryYear(ref state, next) || TryNumber(ref state, next)
                || TryNewOffice(ref state, next) || TryWord(ref state, next);
            if (!taken)
            {
                break;
            }
        }

        return drafts.Count > state.First ? state.End
            : state.Claim.HasPatent ? AddWords(state.Claim, state.Claim.Start, state.End)
            : state.Claim.Start;
    }

    /// <summary>The apostrophe of <c>PAT'D</c> read as a space.</summary>
    private bool TryApostrophe(ref ClaimState state, int next)
    {
        bool letter = state.IsOpen && (tokens[next].IsLetter('D') || tokens[next].IsLetter('S')) && next == SkipSoft(state.Claim.End)
            && !tokens[SkipSoft(next + 1)].IsDigits;
        if (letter)
        {
            state.At = state.End = next + 1;
        }

        return letter;
    }

    private bool TryStatus(ref ClaimState state, int next)
    {
        int behind = Status(next, state.IsOpen);
        if (behind > next)
        {
            state.Wrote(AddPending(state.Claim, state.StartOf(next), behind));
        }

        return behind > next;
    }

    private bool TryDate(ref ClaimState state, int next)
    {
        if (DateAt(next, out int behind) is not { } date || (state.IsExplicitNumber && tokens[next].Months == 0))
        {
            return false;
        }

        int start = state.Shared is null ? state.StartOf(next) : next;
        AddShared(ref state, date.Year, next);
        AddDate(state.Claim, date, start, behind);
        state.Wrote(behind);
        return true;
    }

    /// <summary>Days of one month, or of one year, before their year: <c>AUG. 12 &amp; 19 1884</c>, <c>APR. 7 AND MAY 19 1885</c>.</summary>
    private bool TrySharedYear(ref ClaimState state, int next)
    {
        if (state.Shared is { } first && DateGrammar.DayAndYear(tokens, next, first.Months, out int behind) is { } second)
        {
            AddShared(ref state, second.Year, next);
            AddDate(state.Claim, second, next, behind);
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

    private void AddShared(ref ClaimState state, DigitPattern year, int next)
    {
        if (state.Shared is { } part)
        {
            AddDate(state.Claim, part with { Year = year }, state.SharedFrom, LastBefore(next) + 1);
            state.Shared = null;
        }
    }

    private bool TryYear(ref ClaimState state, int next)
    {
        int at = tokens[next - 1].IsSign('\'') ? next - 1 : next;
        bool mayStand = state.IsOpen || state.IsOfNewOffice || drafts[drafts.Count - 1].IsOfYear;
        if (!mayStand || state.IsExplicitNumber || DateGrammar.YearAlone(tokens, at, out int behind) is not { } year)
        {
            return false;
        }

        AddDate(state.Claim, year, state.StartOf(at), behind);
        state.Wrote(behind);
        return true;
    }

    private bool TryNumber(ref ClaimState state, int next)
    {
        if (NumberGrammar.Read(tokens, next, out int behind) is not { } number || !IsPlausible(number, state, next))
        {
            return false;
        }

        AddNumber(state.Claim, number, state.StartOf(next), behind);
        state.Wrote(behind);
        return true;
    }

    private bool IsPlausible(StampedNumber number, in ClaimState state, int at)
    {
        int size = number.Digits.Length;
        if (IsBehindPending(state, number))
        {
            return false;
        }

        if (state.IsExplicitNumber || number.Right is not null || (number.Year is not null && size >= 2))
        {
            return size <= 9;
        }

        bool lineBreak = tokens[at - 1].Kind == TokenKind.Break;
        int least = !state.IsOpen || lineBreak ? 5 : state.Claim.IsPlant ? 1 : state.Claim.IsReissue || state.Claim.IsAbroad ? 3 : 4;
        return size <= 9 && size >= least && (number.IsGrouped || !number.LooksLikeYear);
    }

    /// <summary>Whether a few bare digits stand right behind words of an application: they are its number or a model's, and no patent's.</summary>
    private bool IsBehindPending(in ClaimState state, StampedNumber number)
        => !state.IsOpen && state.At == state.End && !number.IsGrouped && number.Digits.Length < DigitsOfLatePatent
            && drafts[drafts.Count - 1].Kind is MarkKind.Pending or MarkKind.DesignPending;

    /// <summary>Another country with its own year: <c>PATENTED CANADA 1912 U.S.A. 1910</c>.</summary>
    private bool TryNewOffice(ref ClaimState state, int next)
    {
        if (state.IsOpen || tokens[next].Office is not { } office || DateGrammar.YearAlone(tokens, SkipSoft(next + 1), out _) is null || TryClaimAt(next, out _))
        {
            return false;
        }

        state.Claim.NameOnly(office);
        state.Lead = next;
        state.IsOfNewOffice = true;
        state.At = next + 1;
        return true;
    }

    private int LastBefore(int at)
    {
        int last = at - 1;
        while (tokens[last].IsSoft || tokens[last].Is(Terms.And))
        {
            last--;
        }

        return last;
    }

    /// <summary>Whether a date that shares its year follows, behind commas and "and"; then the token is the first of that date.</summary>
    private bool FollowedByDate(ref int at, int months)
    {
        int next = SkipSoft(at);
        if (tokens[next].Is(Terms.And))
        {
            next = SkipSoft(next + 1);
        }

        bool follows = DateAt(next, out _) is not null || DateGrammar.DayAndYear(tokens, next, months, out _) is not null;
        at = follows ? next : at;
        return follows;
    }

    /// <summary>The token behind words that say "applied for" or "pending", or the token itself.</summary>
    private int Status(int at, bool open)
    {
        int next = at;
        while (!open && tokens[next].Is(Terms.And | Terms.Other | Terms.Also))
        {
            next = SkipSoft(next + 1);
        }

        ref readonly Token token = ref tokens[next];
        bool pending = token.Is(Terms.Pending | Terms.Angemeldet) || IsLetterPending(next);
        if ((!pending && !token.Is(Terms.Applied)) || DateAt(next, out _) is not null)
        {
            return at;
        }

        int behind = next + 1;
        if (pending)
        {
            return behind;
        }

        int after = SkipSoft(behind);
        if (tokens[after].IsLetter('D'))
        {
            // APL'D with its apostrophe read as a space.
            after = SkipSoft(after + 1);
        }

        return tokens[after].Is(Terms.For | Terms.Pending) ? after + 1 : behind;
    }

    /// <summary>The letter of <c>PAT. P.</c> at the end of a line.</summary>
    private bool IsLetterPending(int at)
        => tokens[at].IsLetter('P') && (tokens[at - 1].Is(Terms.Patent) || tokens[at - 2].Is(Terms.Patent))
            && SkipSoft(at + 1) is var next && (next >= tokens.Count || tokens[next].Office is not null || tokens[next - 1].Kind == TokenKind.Break);
}
