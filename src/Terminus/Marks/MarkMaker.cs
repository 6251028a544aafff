namespace Terminus;

/// <summary>Turns what the grammar found into marks with windows, reasons and alternatives.</summary>
internal sealed class MarkMaker
{
    // A date is stamped right as often as this, by the house's judgement: no published source.
    private const double DateAsStamped = 0.98;

    // The likelier of several readings, or a stamp put right, is trusted like an uncertain date: the house's judgement.
    private const double DateAsCorrected = 0.70;

    private readonly string text;
    private readonly Lexicon lexicon;
    private readonly RegisterSet registers;

    internal MarkMaker(string text, Lexicon lexicon, RegisterSet registers)
    {
        this.text = text;
        this.lexicon = lexicon;
        this.registers = registers;
    }

    internal Mark Make(MarkDraft draft)
    {
        var mark = new Mark(draft.Kind, draft.Start, draft.End - draft.Start, text.Substring(draft.Start, draft.End - draft.Start))
        {
            Office = draft.Office,
            Right = draft.Right,
            Group = draft.Group,
            IsUncertain = draft.IsUncertain || draft.Number is { Doubtful: true } || draft.Date is { Doubtful: true },
            Reasons = draft.Reasons,
        };
        return draft.Diamond is not null ? WithDiamond(mark, draft.Diamond, draft.Wording!)
            : draft.Date is not null ? WithDate(mark, draft, draft.Date)
            : draft.Number is not null ? WithNumber(mark, draft, draft.Number)
            : WithWording(mark, draft.Wording ?? WordingOfClaim(draft));
    }

    private Wording? WordingOfClaim(MarkDraft draft)
        => draft.Kind == MarkKind.PatentWord && draft.Office == "US" ? lexicon[draft.Right == "reissue" ? "mk.us_reissue" : "mk.us_patent_number"] : null;

    private static Mark WithWording(Mark mark, Wording? wording)
    {
        if (wording is null)
        {
            return mark;
        }

        return mark with
        {
            WordingId = wording.Id,
            Windows = wording.ToEvidence().StatedWindows(),
            Reasons = [.. mark.Reasons, WordingReason(wording)],
        };
    }

    private static Mark WithDiamond(Mark mark, RegistryDiamond diamond, Wording wording)
    {
        NumberReading reading = diamond.Read();
        return reading.Windows.Count == 0
            ? WithWording(mark, wording)
            : mark with { Windows = reading.Windows, Reasons = [.. mark.Reasons, .. reading.Reasons] };
    }

    private static Reason WordingReason(Wording wording)
    {
        string from = EndOf(wording.Period.FirstDay, isWholeYear: d => d is (_, 1, 1));
        string to = EndOf(wording.Period.LastDay, isWholeYear: d => d is (_, 12, 31));
        string rule = from.Length == 0 ? "marks.wording-undated"
            : "marks.wording-" + (wording.IsLegal ? "legal" : "customary") + (to.Length == 0 ? "-from" : "-between");
        return new Reason(
            rule, "wording", wording.Id, "from", from, "to", to, "source", wording.Source.Length == 0 ? "recalled, no source" : wording.Source);
    }

    private static Mark WithDate(Mark mark, MarkDraft draft, StampedDate date)
    {
        bool ofPatent = draft.Kind == MarkKind.PatentDate;
        DatedReading reading = DateChooser.Choose(date, draft.Office, ofPatent);
        DateWindow window = reading.Window;
        var windows = new List<StatedWindow>();
        if (!window.IsAny && draft.Kind is MarkKind.PatentDate)
        {
            windows.Add(new StatedWindow(window, reading.IsUncertain ? DateAsCorrected : DateAsStamped));
            if (reading is { IsSettled: true, Best: { } best } && best.Window != window)
            {
                windows.Add(new StatedWindow(best.Window, DateAsCorrected));
            }
        }

        Mark dated = mark with
        {
            Date = reading.IsSettled || reading.Best is null || !date.HasLosses ? reading.Best?.ToEdtf() : Masked(reading),
            Windows = windows,
            Reasons = [.. mark.Reasons, .. reading.Reasons],
            IsUncertain = mark.IsUncertain || reading.IsUncertain || reading.Best is null,
        };
        IEnumerable<Mark> canadian = draft is { IsOfficeAssumed: true, Kind: MarkKind.PatentDate } && date.Months == 0 && date.MonthDigits.Length == 0 && dated.Date is not null
            ? [mark with { Office = "CA", Right = "patent", Date = dated.Date, Windows = windows, Reasons = [new Reason("marks.year-is-canadian")] }]
            : [];
        return dated with
        {
            Alternatives = [.. canadian, .. reading.Others.Select(o => mark with
            {
                Date = o.ToEdtf(),
                Windows = draft.Kind == MarkKind.PatentDate ? [new StatedWindow(o.Window, DateAsStamped)] : [],
                Reasons = o.Day > 0 && ofPatent && draft.Office is "US" ? [DateChooser.WeekdayReason(o)] : [],
            })],
        };
    }

    /// <summary>Several readings as one EDTF date with <c>X</c> for what they differ in, from the right; the first where they differ more.</summary>
    private static string Masked(DatedReading reading)
    {
        char[] mask = reading.Fitting[0].ToEdtf().ToCharArray();
        foreach (CalendarReading other in reading.Fitting)
        {
            string edtf = other.ToEdtf();
            for (int i = 0; i < mask.Length; i++)
            {
                mask[i] = i < edtf.Length && edtf[i] == mask[i] ? mask[i] : 'X';
            }
        }

        return new string(mask);
    }

    private Mark WithNumber(Mark mark, MarkDraft draft, StampedNumber number)
    {
        string? year = number.Year is null ? null : FullYear(number.Year, draft.Office);
        Mark numbered = mark with { Number = number.Digits, Date = year };
        if (number.Doubtful)
        {
            numbered = numbered with { Reasons = [.. numbered.Reasons, new Reason("marks.worn-letters")] };
        }

        if (draft.Kind == MarkKind.Pending)
        {
            return WithWording(numbered, draft.Wording);
        }

        if (draft.Kind == MarkKind.Other || draft.Office is null || draft.Right is null)
        {
            return draft.Wording is null ? numbered : WithWording(numbered, draft.Wording);
        }

        Mark read = Registered(numbered, draft.Office, draft.Right, number, year);
        if (read.Windows.Count == 0 && draft.Wording is not null)
        {
            read = WithWording(read, draft.Wording);
        }

        return read with { Alternatives = Alternatives(read, draft, number) };
    }

    private Mark Registered(Mark mark, string office, string right, StampedNumber number, string? year)
    {
        NumberReading reading = registers.Read(office, right, year is null ? number.Digits : number.Digits + "/" + year);
        return mark with { Windows = reading.Windows, Reasons = [.. mark.Reasons, .. reading.Reasons] };
    }

    /// <summary>
    /// On jewellery the D of a design is often left off, so a number below the last design is read both ways; a registration without
    /// a right can be a mark or a design.
    /// </summary>
    private List<Mark> Alternatives(Mark mark, MarkDraft draft, StampedNumber number)
    {
        var alternatives = new List<Mark>();
        Mark bare = mark with { Windows = [], Reasons = [] };
        if (draft.OtherOffice is { } other)
        {
            string right = other == "US" ? "utility" : "patent";
            Mark elsewhere = bare with { Office = other, Right = right, Reasons = [new Reason("marks.other-office", "office", other)] };
            alternatives.Add(Registered(elsewhere, other, right, number, null));
        }

        if (draft is { Kind: MarkKind.PatentNumber, Office: "US", Right: "utility" } && number.Digits.Length is 5 or 6)
        {
            Mark design = bare with { Kind = MarkKind.DesignNumber, Right = "design", Reasons = [new Reason("marks.design-letter-left-off")] };
            alternatives.Add(Registered(design, "US", "design", number, null));
        }

        if (draft.Wording?.Id == "mk.registration_number")
        {
            Mark design = bare with
            {
                Kind = MarkKind.RegisteredDesign,
                Office = "GB",
                Right = "registered-design",
                Reasons = [new Reason("marks.registration-of-design")],
            };
            alternatives.Add(Registered(design, "GB", "registered-design", number, null));
        }

        return alternatives;
    }

    /// <summary>Two digits of a year behind a number: the British yearly series ran from 1852 to 1915, later ones are applications.</summary>
    private static string FullYear(string year, string? office)
    {
        if (year.Length == 4)
        {
            return year;
        }

        int value = int.Parse(year, System.Globalization.CultureInfo.InvariantCulture);
        return DateText.Digits(value + (value >= 52 && office is "GB" ? 1800 : 1900));
    }

    /// <summary>The end of a period as it was stated: a year where the period starts or ends with one, otherwise the day; empty where open.</summary>
    private static string EndOf(int day, Func<(int Year, int Month, int Day), bool> isWholeYear)
        => day == DayNumber.Open ? string.Empty
            : isWholeYear(DayNumber.Parts(day)) ? DateText.Digits(DayNumber.Year(day))
            : DateText.Iso(day);
}
