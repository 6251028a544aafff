namespace Terminus;

/// <summary>Windows and shares in English words.</summary>
internal static class WindowWords
{
    /// <summary>What is said where the conflict is total.</summary>
    internal const string NoDate = "no single date";

    private const int Thousandths = 1000;

    // "28 September 1956 to 28 September 1961", and room to spare.
    private const int LongestDays = 48;

    // A window of more days reads as its years.
    private const int WholeYear = 360;

    /// <summary>To the day: <c>from 11 July 1961</c>, <c>until 14 June 1962</c>, <c>6 March 1956 to 11 July 1961</c>, <c>any date</c>.</summary>
    internal static string Days(DateWindow window) => new TextBuffer(LongestDays).AddDays(window).ToString();

    /// <summary>Adds a window to the day, in the same words.</summary>
    internal static TextBuffer AddDays(this TextBuffer text, DateWindow window)
        => window.IsAny ? text.Add("any date")
            : window.FirstDay == DayNumber.Open ? text.Add("until ").AddWords(window.LastDay)
            : window.LastDay == DayNumber.Open ? text.Add("from ").AddWords(window.FirstDay)
            : window.FirstDay == window.LastDay ? text.AddWords(window.FirstDay)
            : text.AddWords(window.FirstDay).Add(" to ").AddWords(window.LastDay);

    /// <summary>Adds a date: <c>11 July 1961</c>, <c>about 1955</c>, <c>1950–1959 (uncertain)</c>, <c>unknown</c>. A whole year or decade reads as its years.</summary>
    internal static TextBuffer AddWords(this TextBuffer text, EvidenceDate? date)
    {
        if (date is null)
        {
            return text.Add("unknown");
        }

        text.Add(date.IsApproximate ? "about " : "");
        _ = date.Outer.Days is > WholeYear ? text.AddYears(date.Outer) : text.AddDays(date.Outer);
        return text.Add(date.IsUncertain ? " (uncertain)" : "");
    }

    /// <summary>To the day, with "or later" where the end is only the day of the opinion.</summary>
    internal static string DaysUpTo(DateWindow window, int asOf)
        => window.LastDay != asOf ? Days(window)
            : window.FirstDay == DayNumber.Open ? "any date"
            : DateText.Words(window.FirstDay) + " or later";

    /// <summary>To the year, with "or later" where the end is only the day of the opinion.</summary>
    internal static string YearsUpTo(DateWindow window, int asOf)
        => DateText.Years(window.LastDay == asOf ? DateWindow.OfDays(window.FirstDay, DayNumber.Open) : window);

    /// <summary>To the year: <c>1961 or later</c>, <c>1956–1961</c>.</summary>
    internal static string Years(DateWindow window) => DateText.Years(window);

    /// <summary>An answer to the year; where the conflict is total there is none.</summary>
    internal static string Years(DatedInterval? interval) => interval is null ? NoDate : DateText.Years(interval.Said);

    /// <summary>A span of days in words: <c>26 years</c>, <c>5 months</c>, <c>12 days</c>.</summary>
    internal static string Span(int days)
        => days >= 730 ? DateText.Digits((long)Math.Round(days / 365.2425)) + " years"
            : days >= 60 ? DateText.Digits((long)Math.Round(days / 30.436875)) + " months"
            : days == 1 ? "1 day"
            : DateText.Digits(days) + " days";

    /// <summary>How the ends of a window moved, in brackets after a space: <c> (start 7 years earlier)</c>; nothing where none did by a count of days.</summary>
    internal static string Ends(WindowMove move)
    {
        string[] ends = [.. new[] { End("start", move.StartDays), End("end", move.EndDays) }.OfType<string>()];
        return ends.Length == 0 ? "" : " (" + string.Join(", ", ends) + ")";
    }

    /// <summary>A stated confidence or level, with at most three decimals.</summary>
    internal static string Share(double value) => new TextBuffer(FixedPoint.Longest).AddShare(value).ToString();

    /// <summary>Adds a stated confidence or level, with at most three decimals. As a decimal it is rounded as it is printed, half away from zero.</summary>
    internal static TextBuffer AddShare(this TextBuffer text, double value)
    {
        // A whole count of thousandths is seen to be one without a decimal.
        long units = (long)(value * Thousandths + 0.5);
        return text.AddFixedPoint(
            (double)units / Thousandths == value ? units : (long)Math.Round((decimal)value * Thousandths, MidpointRounding.AwayFromZero), 3);
    }

    /// <summary>
    /// A lower probability with at most three decimals, rounded down, so that 0.8996 is never shown as a level that it does not reach.
    /// </summary>
    internal static string Lower(double value) => Share(RoundedDown(value));

    /// <summary>A lower probability as it is shown.</summary>
    internal static double RoundedDown(double value) => Math.Floor((value + Combination.Tolerance) * Thousandths) / Thousandths;

    /// <summary>An upper probability or a mass of conflict with at most three decimals, rounded up, so that little is never shown as nothing.</summary>
    internal static string Upper(double value) => Share(RoundedUp(value));

    /// <summary>An upper probability as it is shown.</summary>
    internal static double RoundedUp(double value) => Math.Ceiling((value - Combination.Tolerance) * Thousandths) / Thousandths;

    private static string? End(string name, int? days)
        => days is null or 0 ? null : name + " " + Span(Math.Abs(days.Value)) + (days > 0 ? " later" : " earlier");
}
