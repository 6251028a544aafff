namespace Terminus;

/// <summary>A dated piece's date as it is shown to people, in years and at the strength that the evidence bears.</summary>
/// <remarks>
/// <para>"Circa" is written in one case alone: the evidence that sets an end of the answer is a date that somebody wrote as approximate (<c>~</c>).
/// The year shown is then the one written, and the widened year stands in the index. It never means "we are not sure": for that
/// there are "likely" and "or later".</para>
/// <para>Below a level of 0.90 the word of the scale of <see cref="Likelihood"/> stands before the date.</para>
/// </remarks>
internal static class DisplayDate
{
    private const double PlainFrom = 0.90;

    /// <summary>Such as <c>1956–1961</c>, <c>1949 or later, likely 1949–1968</c>, <c>circa 1955</c>, <c>undated</c>.</summary>
    /// <param name="dating">The dated piece.</param>
    /// <param name="brief">Whether a range within a century is shortened, as <c>1956–61</c>.</param>
    internal static string Of(PieceDating dating, bool brief = false)
    {
        if (dating.Dating.Qualified)
        {
            IEnumerable<string> readings = dating.Dating.Readings.Take(2).Select(r => WindowWords.YearsUpTo(r.Window, dating.Dating.AsOfDay));
            return "date in doubt: " + string.Join(", or ", readings);
        }

        if (dating.Interval is not { } interval || dating.Likely is not { } likely || likely.IsAnyDate)
        {
            return dating.Interval is { IsAnyDate: false } only ? Prefix(dating) + Years(dating, only, brief) : "undated";
        }

        string narrower = Years(dating, likely, brief);
        if (interval.IsAnyDate)
        {
            return "no firm date, " + Likelihood.Of(Dating.LikelyLevel) + " " + narrower;
        }

        string wide = Prefix(dating) + Years(dating, interval, brief);
        return Closes(interval, likely) ? wide + ", " + Likelihood.Of(Dating.LikelyLevel) + " " + narrower : wide;
    }

    // A likely answer is shown where it closes a side that is open; one that is open on the same side would read as a fact of its own.
    private static bool Closes(DatedInterval interval, DatedInterval likely)
        => (interval.EndsToday && !likely.EndsToday) || (interval.EarliestYear is null && likely.EarliestYear is not null);

    private static string Prefix(PieceDating dating)
        => dating.Confidence >= PlainFrom - Combination.Tolerance ? "" : Likelihood.Of(dating.Confidence) + " ";

    private static string Years(PieceDating dating, DatedInterval interval, bool brief)
    {
        EvidenceDate? start = Approximate(dating, d => d.FirstDay(dating.Dating.Assumptions) == interval.Window.FirstDay);
        EvidenceDate? end = interval.EndsToday ? null : Approximate(dating, d => d.LastDay(dating.Dating.Assumptions) == interval.Window.LastDay);
        if (start is not null && start == end)
        {
            return "circa " + DateText.Years(start.Outer);
        }

        string? first = interval.Window.FirstDay == DayNumber.Open ? null
            : start is null ? DateText.YearOf(interval.Window.FirstDay)
            : "circa " + DateText.YearOf(start.Outer.FirstDay);
        string? last = interval.EndsToday ? null
            : end is null ? DateText.YearOf(interval.Window.LastDay)
            : "circa " + DateText.YearOf(end.Outer.LastDay);
        return first is null ? (last is null ? "any date" : last + " or earlier")
            : last is null ? first + " or later"
            : first == last ? first
            : first + "–" + (brief ? Shortened(first, last) : last);
    }

    private static EvidenceDate? Approximate(PieceDating dating, Func<EvidenceDate, bool> sets)
        => dating.Dating.Evidence.SelectMany(EvidenceDates.Of).FirstOrDefault(d => d.IsApproximate && sets(d));

    // 1956–61, but 1898–1902 and 1900–1905: only plain four-digit years of one century, and none that ends in 00.
    private static string Shortened(string first, string last)
        => first.Length == 4 && last.Length == 4 && string.CompareOrdinal(first, 0, last, 0, 2) == 0
            && !first.EndsWith("00", StringComparison.Ordinal)
            ? last.Substring(2)
            : last;
}
