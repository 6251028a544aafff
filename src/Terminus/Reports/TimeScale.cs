namespace Terminus;

/// <summary>
/// Days as shares of a picture's width. It reaches from a little before the first known end of any window to a little after the last, and to the day
/// of the opinion where an answer is open.
/// </summary>
internal sealed class TimeScale
{
    private const int FewestYears = 10;
    private const int MostTicks = 6;
    private static readonly int[] Steps = [1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500, 1000, 2000, 5000];

    private readonly int first;
    private readonly int last;

    private TimeScale(int first, int last)
    {
        this.first = first;
        this.last = last;
    }

    /// <summary>The scale on which these windows can be drawn.</summary>
    internal static TimeScale Over(IEnumerable<DateWindow> windows, int asOf)
    {
        int low = int.MaxValue;
        int high = int.MinValue;
        foreach (DateWindow window in windows)
        {
            foreach (int day in new[] { window.FirstDay, window.LastDay })
            {
                (low, high) = day == DayNumber.Open ? (low, high) : (Math.Min(low, day), Math.Max(high, Math.Min(day, asOf)));
            }
        }

        (low, high) = low > high ? (DayNumber.PlusYears(asOf, -100), asOf) : (low, high);
        int margin = Math.Max(FewestYears * 366, high - low) / 12;
        return new TimeScale(Math.Max(DayNumber.First, low - margin), Math.Min(DayNumber.Last, Math.Max(low + (FewestYears * 366), high + margin)));
    }

    /// <summary>Where a day stands, from 0 at the left to 1 at the right.</summary>
    internal double At(int day) => Math.Min(1, Math.Max(0, (day - (double)first) / (last - first)));

    /// <summary>Where a window starts; an open start stands at the left edge.</summary>
    internal double Start(DateWindow window) => window.FirstDay == DayNumber.Open ? 0 : At(window.FirstDay);

    /// <summary>Where a window ends, its last day included; an open end stands at the right edge.</summary>
    internal double End(DateWindow window) => window.LastDay == DayNumber.Open ? 1 : At(window.LastDay + 1);

    /// <summary>Round years inside the scale, at most six.</summary>
    internal IEnumerable<(int Year, double At)> Ticks()
    {
        int from = DayNumber.Year(first);
        int until = DayNumber.Year(last);
        int step = Steps.FirstOrDefault(s => (until - from) / s <= MostTicks - 1) is > 0 and var found ? found : Steps[Steps.Length - 1];
        for (int year = (int)Math.Ceiling(from / (double)step) * step; year <= until; year += step)
        {
            int day = year is >= -9998 and <= 9999 ? DayNumber.Of(year, 1, 1) : DayNumber.Open;
            if (day >= first && day <= last)
            {
                yield return (year, At(day));
            }
        }
    }
}
