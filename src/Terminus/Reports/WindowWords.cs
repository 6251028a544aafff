namespace Terminus;

/// <summary>Windows in English words, to the day or to the year.</summary>
internal static class WindowWords
{
    /// <summary>To the day: <c>from 11 July 1961</c>, <c>until 14 June 1962</c>, <c>6 March 1956 to 11 July 1961</c>, <c>any date</c>.</summary>
    internal static string Days(DateWindow window)
        => window.IsAny ? "any date"
            : window.FirstDay == DayNumber.Open ? "until " + DateText.Words(window.LastDay)
            : window.LastDay == DayNumber.Open ? "from " + DateText.Words(window.FirstDay)
            : window.FirstDay == window.LastDay ? DateText.Words(window.FirstDay)
            : DateText.Words(window.FirstDay) + " to " + DateText.Words(window.LastDay);

    /// <summary>To the year: <c>1961 or later</c>, <c>1962 or earlier</c>, <c>1956–1961</c>, <c>1961</c>, <c>any date</c>.</summary>
    internal static string Years(DateWindow window)
        => window.IsAny ? "any date"
            : window.FirstDay == DayNumber.Open ? YearOf(window.LastDay) + " or earlier"
            : window.LastDay == DayNumber.Open ? YearOf(window.FirstDay) + " or later"
            : YearOf(window.FirstDay) is var first && YearOf(window.LastDay) is var last && first == last ? first
            : first + "–" + last;

    /// <summary>An answer to the year, with "or later" where its end is only the day of the opinion.</summary>
    internal static string Years(DatedInterval interval)
        => Years(interval.EndsToday ? DateWindow.OfDays(interval.Window.FirstDay, DayNumber.Open) : interval.Window);

    /// <summary>A day number's year; years before 1 as written by astronomers (0 is 1 BCE).</summary>
    internal static string YearOf(int day) => DateText.Digits(DayNumber.Year(day));

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

    private static string? End(string name, int? days)
        => days is null or 0 ? null : name + " " + Span(Math.Abs(days.Value)) + (days > 0 ? " later" : " earlier");

    /// <summary>A confidence or a mass with at most two decimals.</summary>
    internal static string Share(double value) => value.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);
}
