namespace Terminus;

/// <content>Dates, numbers and years that stand without a wording, and numbers before their claim.</content>
internal sealed partial class InscriptionReader
{
    /// <summary>The last year in which a patent was marked by its date (44 Stat. 1058, from 1 April 1927 by its number).</summary>
    private const int LastYearOfDates = 1927;

    // Figures alone are a date where something stands between them.
    private const int LeastTokensOfFigures = 5;

    private int ReadBare(int at)
    {
        ref readonly Token token = ref tokens[at];
        if (token.Is(Terms.Since | Terms.Established))
        {
            return ReadSince(at);
        }

        if (token.Is(Terms.Given))
        {
            given = true;
            return at;
        }

        if (token.Is(Terms.No))
        {
            int digits = SkipSoft(at + 1);
            return tokens[digits].IsDigits ? ReadNumberBefore(at, digits, named: true) : at;
        }

        if (token.Months != 0 || token.IsDigits)
        {
            int end = ReadBareDate(at);
            if (end > at)
            {
                return end;
            }
        }

        return token.IsDigits ? ReadNumberBefore(at, at, named: false) : at;
    }

    private static readonly Reason SinceYear = new("marks.since");
    private static readonly Reason BareDate = new("marks.bare-date");
    private static readonly Reason DateOfPresentation = new("marks.date-of-presentation");
    private static readonly Reason DateOfSomething = new("marks.date-of-something");
    private static readonly Reason BareNumber = new("marks.bare-number");
    private static readonly Reason ModelNumber = new("marks.model-number");
    private static readonly Reason BareYearAlone = new("marks.bare-year");

    private int ReadSince(int at)
    {
        int year = SkipSoft(at + 1);
        if (DateGrammar.YearAlone(tokens, year, out int end) is not { } date)
        {
            return at;
        }

        group++;
        MarkDraft draft = Add(MarkKind.Other, at, end);
        draft.Date = date;
        draft.Because(SinceYear);
        return end;
    }

    /// <summary>A date without a word of patents, which mostly dates one all the same.</summary>
    private int ReadBareDate(int at)
    {
        StampedDate? named = DateGrammar.Named(tokens, at, out int end);
        if ((named ?? DateGrammar.Numeric(tokens, at, out end)) is not { } date)
        {
            return at;
        }

        var choice = new DateChoice(date, "US", ofPatent: true, stackalloc CalendarReading[ReadingList.Usual]);
        bool tuesday = choice.Best is { Day: > 0 } best && IssueDay.KindOf(best.FirstDay) is IssueDayKind.Tuesday or IssueDayKind.DoubtfulTuesday;
        if (named is null && (!tuesday || end - at < LeastTokensOfFigures))
        {
            return at;
        }

        bool late = !tuesday && choice.Best is { } day && day.Year > LastYearOfDates;
        bool ofPatent = !given && !late && !date.Day.IsEmpty;
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

        draft.Because(ofPatent ? BareDate : given ? DateOfPresentation : DateOfSomething);
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
        if (size >= (named ? 4 : 6) && !number.LooksLikeYear && TryClaimAt(claimAt, out Claim claim) && claim.HasPatent && !ClaimHasOwn(claim))
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
            yearly.Because(NumberOfYear);
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
            bare.Because(BareNumber);
            return end;
        }

        if (named)
        {
            group++;
            MarkDraft model = Add(MarkKind.Other, at, end);
            model.Number = number;
            model.Because(ModelNumber);
            return end;
        }

        return BareYear(at);
    }

    /// <summary>Whether a word before the number says what it numbers: a model, a pattern, a telephone.</summary>
    private bool IsNumberOfModel(int at)
    {
        int before = at - 1;
        while (tokens[before].Kind == TokenKind.Sign || tokens[before].Is(Terms.No))
        {
            before--;
        }

        return tokens[before].Is(Terms.Serial);
    }

    private int BareYear(int at)
    {
        if (DateGrammar.YearAlone(tokens, at, out int end) is not { } year || year.Year.HasLosses
            || tokens[at].Doubtful || tokens[at - 1].IsSign('/') || tokens[at - 1].IsSign('#'))
        {
            return at;
        }

        group++;
        MarkDraft draft = Add(MarkKind.Other, at, end);
        draft.Date = year;
        draft.Because(BareYearAlone);
        return end;
    }

    /// <summary>Whether a claim has dates or numbers of its own behind it, so that a number before it is not its own.</summary>
    private bool ClaimHasOwn(in Claim claim)
    {
        ref readonly Token next = ref tokens[SkipSoft(claim.End)];
        return next.IsDigits || next.Months != 0 || next.Is(Terms.No | Terms.Pending | Terms.Applied);
    }
}
