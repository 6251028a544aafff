namespace Terminus;

/// <summary>
/// Sightings as the estimators want them: one for each source, in days that rise away from the end that is sought. For the last end
/// time is turned round, so that each estimator knows one direction only.
/// </summary>
/// <remarks>
/// A sighting known to a window, such as a year, may lie anywhere in it. Bounds take the placing of all of them that puts the bound
/// farthest out, so that they hold wherever the sightings lie. The origin is the extreme day itself: moving all the sightings
/// changes no digit.
/// </remarks>
internal sealed class SightingRecord
{
    private readonly SightingEnd end;
    private readonly int origin;
    private readonly double[] low;
    private readonly double[] high;

    private SightingRecord(SightingEnd end, int origin, double[] low, double[] high)
    {
        this.end = end;
        this.origin = origin;
        this.low = low;
        this.high = high;
        Earliest = Sorted(low);
        Latest = Sorted(high);
        WidestGap = low.Select((_, i) => GapAfter(i)).DefaultIfEmpty(0).Max();
    }

    /// <summary>The number of independent sources.</summary>
    internal int Sources => low.Length;

    /// <summary>The times in order, each sighting as near to the end as it can be.</summary>
    internal double[] Earliest { get; }

    /// <summary>The times in order, each sighting as far from the end as it can be.</summary>
    internal double[] Latest { get; }

    internal double EarliestOfFirst => Earliest[0];

    internal double LatestOfLast => Latest[Latest.Length - 1];

    /// <summary>The longest time that can lie between the first two sightings.</summary>
    internal double WidestGap { get; }

    /// <summary>The window of the extreme sighting.</summary>
    internal DateWindow Extreme => WindowOf(Earliest[0], Latest[0])!.Value;

    /// <summary>Takes the sightings of one feature, all of them with two closed ends, by source.</summary>
    internal static SightingRecord Of(IReadOnlyList<Sighting> sightings, SightingEnd end)
    {
        bool first = end == SightingEnd.First;
        int origin = first ? sightings.Min(s => s.Date.FirstDay) : sightings.Max(s => s.Date.LastDay);

        // The extreme sighting of a source lies between the extremes of its windows' near and far ends.
        var sources = sightings
            .Select(s => first
                ? (s.Source, Low: s.Date.FirstDay - origin, High: s.Date.LastDay - origin)
                : (s.Source, Low: origin - s.Date.LastDay, High: origin - s.Date.FirstDay))
            .GroupBy(s => s.Source, StringComparer.OrdinalIgnoreCase)
            .Select(g => (Low: (double)g.Min(s => s.Low), High: (double)g.Min(s => s.High)))
            .OrderBy(s => s.Low).ThenBy(s => s.High)
            .ToArray();
        return new SightingRecord(end, origin, [.. sources.Select(s => s.Low)], [.. sources.Select(s => s.High)]);
    }

    /// <summary>The earliest that a bound of this many gaps before the first sighting can be.</summary>
    internal double EarliestByGap(double gaps)
    {
        double bound = double.PositiveInfinity;
        for (int i = 0; i < low.Length; i++)
        {
            bound = Math.Min(bound, low[i] - (gaps * GapAfter(i)));
        }

        return bound;
    }

    /// <summary>The time of a day.</summary>
    internal double TimeOf(int day) => end == SightingEnd.First ? day - origin : origin - day;

    /// <summary>The day of a bound, rounded outwards, as a day number; <see cref="DayNumber.Open"/> outside the calendar.</summary>
    internal int DayOf(double time)
    {
        // A millionth of a day is the noise of the arithmetic: a bound of exactly 900 days stays at 900.
        double offset = Math.Floor(time + 1e-6);
        double day = end == SightingEnd.First ? origin + offset : origin - offset;
        return day is >= DayNumber.First and <= DayNumber.Last ? (int)day : DayNumber.Open;
    }

    /// <summary>The window from a bound on, or up to it; null outside the calendar.</summary>
    internal DateWindow? WindowFrom(double bound)
        => DayOf(bound) is var day && day == DayNumber.Open ? null
            : end == SightingEnd.First ? DateWindow.OfDays(day, DayNumber.Open) : DateWindow.OfDays(DayNumber.Open, day);

    /// <summary>The window between two times in either order; null where one is outside the calendar.</summary>
    internal DateWindow? WindowOf(double one, double other)
    {
        int a = DayOf(one);
        int b = DayOf(other);
        return a == DayNumber.Open || b == DayNumber.Open ? null : DateWindow.OfDays(Math.Min(a, b), Math.Max(a, b));
    }

    /// <summary>
    /// The longest gap where source <paramref name="i"/> holds the first sighting: up to the first of the others, placed late.
    /// </summary>
    private double GapAfter(int i)
    {
        if (Latest.Length < 2)
        {
            return 0;
        }

        double firstOfOthers = high[i] == Latest[0] ? Latest[1] : Latest[0];
        return firstOfOthers - low[i];
    }

    private static double[] Sorted(double[] times)
    {
        double[] sorted = [.. times];
        Array.Sort(sorted);
        return sorted;
    }
}
