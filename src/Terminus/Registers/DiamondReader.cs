namespace Terminus;

/// <summary>Reads registry diamonds by the shipped table of letters, with its published exceptions.</summary>
/// <remarks>
/// A letter of one year only stands beside its day span in the table: R for 1 to 19 September 1857, K for December 1860, and G with
/// the year letter W for 1 to 6 March 1878. Where a letter and its exception both fit, both days are kept as alternatives.
/// </remarks>
internal static class DiamondReader
{
    private const string Header = "field,cycle,code,meaning,year,first_day,last_day,origin,source,note";

    private const string Right = "registry-diamond";

    // The letters are drawn and read by hand; no measured share. House estimates, no source.
    private const double YearShare = 0.98;
    private const double MonthShare = 0.96;
    private const double DayShare = 0.95;

    // The Ornamental Designs Act 1842 was in force from 1 September 1842; Rd numbers replaced the diamond from 1 January 1884.
    private static readonly int First = DayNumber.Of(1842, 9, 1);
    private static readonly int Last = DayNumber.Of(1883, 12, 31);
    private static readonly Lazy<List<Row>> Table = new(Load);

    internal static NumberReading Read(RegistryDiamond mark)
    {
        var reasons = new List<Reason>();
        var used = new List<Row>();
        List<Found> found = [.. Find(mark, used)];
        if (found.Count == 0)
        {
            reasons.Add(new Reason("registers.diamond-no-such", "what", mark.ToString()));
            return new NumberReading("GB", Right, mark.ToString(), NumberOutcome.Impossible) { Reasons = reasons };
        }

        if (mark.Cycle is { } cycle)
        {
            reasons.Add(new Reason(
                "registers.diamond-corner",
                "what", cycle == 1 ? "letter" : "figure", "from", cycle == 1 ? "1842" : "1868", "to", cycle == 1 ? "1867" : "1883"));
        }

        foreach (Row row in used.Distinct())
        {
            reasons.Add(row.IsException
                ? new Reason("registers.diamond-exception", "what", row.Note)
                : new Reason("registers.diamond-letter", "letter", row.Code, "what", row.Words));
        }

        AddClass(mark, reasons);
        reasons.Add(new Reason("registers.diamond-registered"));
        return new NumberReading("GB", Right, mark.ToString(), found.Count == 1 ? NumberOutcome.Found : NumberOutcome.Several)
        {
            Windows = Windows(found),
            Best = found.Count == 1 ? found[0].Narrow : null,
            Alternatives = found.Count == 1 ? [] : [.. found.Select(f => f.Narrow)],
            Reasons = reasons,
            Sources = [.. used.Where(r => r.Origin != RowOrigin.Memory).Select(r => r.Source).Distinct()],
            Origin = used.Any(r => r.Origin == RowOrigin.Memory) ? RowOrigin.Memory : RowOrigin.Source,
            Writings = ["Registry mark, " + mark],
        };
    }

    private static IEnumerable<Found> Find(RegistryDiamond mark, List<Row> used)
    {
        if (mark.Day is { } given && given is < 1 or > 31)
        {
            yield break;
        }

        foreach (int cycle in new[] { 1, 2 })
        {
            if (mark.Cycle is { } c && c != cycle)
            {
                continue;
            }

            if (mark.Year is null)
            {
                if (Span(cycle == 1 ? 1842 : 1868, cycle == 1 ? 1867 : 1883, null, null) is { } whole)
                {
                    yield return whole;
                }

                continue;
            }

            foreach (Row year in Rows("year", cycle, mark.Year.Value))
            {
                foreach (Found one in InYear(mark, cycle, year, used))
                {
                    yield return one;
                }
            }
        }
    }

    private static IEnumerable<Found> InYear(RegistryDiamond mark, int cycle, Row year, List<Row> used)
    {
        if (mark.Month is not { } letter)
        {
            used.Add(year);
            if (Span(year.Meaning, year.Meaning, null, null) is { } whole)
            {
                yield return whole;
            }

            yield break;
        }

        foreach (Row month in Rows("month", cycle, letter))
        {
            bool ofYear = month.Year == 0 || month.Year == year.Meaning;
            bool ofDay = month.FirstDay == 0 || mark.Day is not { } day || (day >= month.FirstDay && day <= month.LastDay);
            bool both = !year.IsException || month.IsException;
            bool notOrdinary = !month.IsException || month.Year != 1878 || year.IsException;
            if (ofYear && ofDay && both && notOrdinary && Span(year.Meaning, year.Meaning, month, mark.Day) is { } one)
            {
                used.Add(year);
                used.Add(month);
                yield return one;
            }
        }
    }

    private static Found? Span(int firstYear, int lastYear, Row? month, int? day)
    {
        int low = Math.Max(First, DayNumber.Of(firstYear, 1, 1));
        int high = Math.Min(Last, DayNumber.Of(lastYear, 12, 31));
        DateWindow years = DateWindow.OfDays(low, high);
        if (month is null)
        {
            return new Found(years, years, years);
        }

        int inMonth = NodaTime.CalendarSystem.Iso.GetDaysInMonth(firstYear, month.Meaning);
        if (day > inMonth)
        {
            return null;
        }

        int start = DayNumber.Of(firstYear, month.Meaning, month.FirstDay == 0 ? 1 : month.FirstDay);
        int end = DayNumber.Of(firstYear, month.Meaning, month.LastDay == 0 ? inMonth : month.LastDay);
        DateWindow? months = DateWindow.TryBetweenDays(Math.Max(low, start), Math.Min(high, end));
        if (months is not { } span)
        {
            return null;
        }

        int on = DayNumber.Of(firstYear, month.Meaning, day ?? 1);
        return new Found(years, span, day is null ? span : DateWindow.OfDays(on, on));
    }

    private static List<StatedWindow> Windows(List<Found> found)
    {
        DateWindow years = Hull(found.Select(f => f.Years));
        DateWindow months = Hull(found.Select(f => f.Months));
        DateWindow days = Hull(found.Select(f => f.Narrow));
        var windows = new List<StatedWindow> { new(years, YearShare) };
        if (months != years)
        {
            windows.Add(new StatedWindow(months, MonthShare));
        }

        if (days != months)
        {
            windows.Add(new StatedWindow(days, DayShare));
        }

        return windows;
    }

    private static DateWindow Hull(IEnumerable<DateWindow> windows)
    {
        int low = int.MaxValue;
        int high = int.MinValue;
        foreach (DateWindow window in windows)
        {
            low = Math.Min(low, window.FirstDay);
            high = Math.Max(high, window.LastDay);
        }

        return DateWindow.OfDays(low, high);
    }

    private static void AddClass(RegistryDiamond mark, List<Reason> reasons)
    {
        if (mark.Class is { } code && Table.Value.Find(r => r.Field == "class" && r.Code == code) is { } row)
        {
            reasons.Add(new Reason("registers.diamond-class", "class", code, "material", row.Text));
        }
    }

    private static IEnumerable<Row> Rows(string field, int cycle, char code)
        => Table.Value.Where(r => r.Field == field && r.Cycle == cycle && r.Code.Length == 1 && r.Code[0] == code);

    private static List<Row> Load()
    {
        var rows = new List<Row>();
        RegisterFiles.Lines(RegisterFiles.DiamondFile, Header, f => rows.Add(new Row(f)));
        return rows;
    }

    private sealed record Found(DateWindow Years, DateWindow Months, DateWindow Narrow);

    /// <summary>One letter of the table; a row with a day span or a year of its own is an exception.</summary>
    private sealed class Row(List<string> fields)
    {
        internal string Field { get; } = fields[0];

        internal int Cycle { get; } = Number(fields[1]);

        internal string Code { get; } = fields[2];

        internal string Text { get; } = fields[3];

        internal int Meaning { get; } = fields[0] == "class" ? 0 : Number(fields[3]);

        internal string Words => Field == "month" ? DateText.Month(Meaning) : DateText.Digits(Meaning);

        internal int Year { get; } = Number(fields[4]);

        internal int FirstDay { get; } = Number(fields[5]);

        internal int LastDay { get; } = Number(fields[6]);

        internal RowOrigin Origin { get; } = RegisterFiles.Origin(fields[7]);

        internal string Source { get; } = fields[8];

        internal string Note { get; } = fields[9];

        internal bool IsException => Year != 0 || FirstDay != 0;

        private static int Number(string text)
            => text.Length == 0 ? 0 : int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
    }
}
