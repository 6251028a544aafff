namespace Terminus;

/// <summary>Forms that came and went within a few years, by the dates of their entries.</summary>
internal static class ShortLived
{
    // A house choice with no source: long enough that most entries are not remarked on.
    private const int MostYears = 15;

    internal static IEnumerable<Reason> Of(PieceDating dating)
    {
        foreach (FeatureSeen feature in dating.Dating.Evidence.Concat(dating.LeftOut).OfType<FeatureSeen>())
        {
            if (feature is { Introduced.Outer.FirstDay: not DayNumber.Open and var first, Gone.Outer.LastDay: not DayNumber.Open and var last }
                && DayNumber.Year(last) - DayNumber.Year(first) is >= 0 and <= MostYears)
            {
                yield return new Reason(
                    "remark.short-lived",
                    "feature", EvidenceName.Thing(feature, dating.Reference),
                    "introduced", DateText.YearOf(first),
                    "gone", DateText.YearOf(last));
            }
        }
    }
}
