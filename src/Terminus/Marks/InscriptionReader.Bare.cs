namespace Terminus;

/// <content>Dates, numbers and years that stand without a wording, and numbers before their claim.</content>
internal sealed partial class InscriptionReader
{
    /// <summary>The last year in which a patent was marked by its date (44 Stat. 1058, from 1 April 1927 by its number).</summary>
    private const int LastYearOfDates = 1927;

    private int ReadBare(int at)
    {
        Token token = tokens[at];
        if (token.Is(Term.Since) || token.Is(Term.Established))
        {
            return ReadSince(at);
        }

        if (token.Is(Term.Given))
        {
            given = true;
            return at;
        }

        if (token.Is(Term.No))
        {
            int digits = SkipSoft(at + 1);
            return IsDigits(digits) ? ReadNumberBefore(at, digits, named: true) : at;
        }

        if (token.Months != 0 || token.Kind == TokenKind.Digits)
        {
            int end = ReadBareDate(at);
            if (end > at)
            {
                return end;
            }
        }

        return token.Kind == TokenKind.Digits ? ReadNumberBefore(at, at, named: false) : at;
    }

    // Whether words of a presentation stood before.
    private bool given;

    private int ReadSince(int at)
    {
        int year = SkipSoft(at + 1);
        if (year >= tokens.Count || DateGrammar.YearAlone(tokens, year, out int end) is not { } date)
        {
            return at;
        }

        group++;
        MarkDraft draft = Add(MarkKind.Other, at, end);
        draft.Date = date;
        draft.Reasons.Add(new Reason("marks.since"));
        return end;
    }

    /// <summary>A date without a word of patents, which mostly dates one all the same.</summary>
    private int ReadBareDate(int at)
    {
        StampedDate? date = DateGrammar.Named(tokens, at, out int end);
        bool named = date is not null;
        date ??= DateGrammar.Numeric(tokens, at, out end);
        if (date is null)
        {
            return at;
        }

        DatedReading reading = DateChooser.Choose(date, "US", ofPatent: true);
        bool tuesday = reading.Best is { Day: > 0 } best && IssueDay.KindOf(best.Window.FirstDay) is IssueDayKind.Tuesday or IssueDayKind.DoubtfulTuesday;
        if (!named && (!tuesday || date.Year.Length != 2 && date.Year.Length != 4 || (end - at) < 5))
        {
            return at;
        }

        bool late = !tuesday && reading.Best is { } day && day.Year > LastYearOfDates;
        bool ofPatent = !given && !late && date.Day.Length > 0;
        group++;
        MarkDraft draft = Add(ofPatent ? MarkKind.PatentDate : MarkKind.Other, at, end);
        draft.Date = date;
        if (ofPatent)
        {
            draft.Office = "US";
            draft.IsOfficeAssumed = true;
            draft.Right = "utility";
            draft.IsUncertain = !tuesday;
        }

        draft.Reasons.Add(new Reason(ofPatent ? "marks.bare-date" : given ? "marks.date-of-presentation" : "marks.date-of-something"));
        return end;
    }

    /// <summary>
    /// A number before its claim (<c>No. 987654 PATENTED</c>), numbers of seven digits that stand alone, a number with its year, a
    /// bare year, a model number; other digits stay unread.
    /// </summary>
    private int ReadNumberBefore(int at, int digits, bool named)
    {
        if (NumberGrammar.Read(tokens, digits, out int end) is not { } number)
        {
            return at;
        }

        int size = number.Digits.Length;
        int claimAt = SkipSoft(end);
        if (size >= (named ? 4 : 6) && !number.LooksLikeYear && ClaimAt(claimAt) is { HasPatent: true } claim && !ClaimHasOwn(claim))
        {
            group++;
            AddNumber(claim, number, at, claim.End);
            return claim.End;
        }

        if (number.Year is not null && size is >= 3 and <= 6)
        {
            group++;
            MarkDraft yearly = Add(MarkKind.PatentNumber, at, end);
            yearly.Number = number;
            yearly.Office = "GB";
            yearly.Right = "patent";
            yearly.IsUncertain = true;
            yearly.Reasons.Add(new Reason("marks.number-of-year"));
            return end;
        }

        if (size == 7 && number.Digits[0] != '0' && number.Right is null && !IsNumberOfModel(at))
        {
            group++;
            MarkDraft bare = Add(MarkKind.PatentNumber, at, end);
            bare.Number = number;
            bare.Office = "US";
            bare.IsOfficeAssumed = true;
            bare.Right = "utility";
            bare.IsUncertain = true;
            bare.Reasons.Add(new Reason("marks.bare-number"));
            return end;
        }

        if (named)
        {
            group++;
            MarkDraft model = Add(MarkKind.Other, at, end);
            model.Number = number;
            model.Reasons.Add(new Reason("marks.model-number"));
            return end;
        }

        return BareYear(at);
    }

    /// <summary>Whether a word before the number says what it numbers: a model, a pattern, a telephone.</summary>
    private bool IsNumberOfModel(int at)
    {
        int before = at - 1;
        while (before >= 0 && (tokens[before].Kind == TokenKind.Sign || tokens[before].Is(Term.No)))
        {
            before--;
        }

        return Is(before, "SERIAL");
    }

    private int BareYear(int at)
    {
        if (DateGrammar.YearAlone(tokens, at, out int end) is not { } year || DigitPattern.HasLosses(year.Year)
            || tokens[at].Doubtful || (at > 0 && (tokens[at - 1].IsSign('/') || tokens[at - 1].IsSign('#'))))
        {
            return at;
        }

        group++;
        MarkDraft draft = Add(MarkKind.Other, at, end);
        draft.Date = year;
        draft.Reasons.Add(new Reason("marks.bare-year"));
        return end;
    }

    /// <summary>Whether a claim has dates or numbers of its own behind it, so that a number before it is not its own.</summary>
    private bool ClaimHasOwn(Claim claim)
    {
        int next = SkipSoft(claim.End);
        return next < tokens.Count && (IsDigits(next) || tokens[next].Months != 0 || Is(next, Term.No) || Is(next, Term.Pending)
            || Is(next, Term.Applied));
    }
}
