namespace Terminus;

/// <summary>
/// For a series that issued on Tuesdays: the estimated first number of each weekly issue, and the weeks that the dated numbers leave
/// possible for any number.
/// </summary>
/// <remarks>
/// What is known of the first number of an issue is a tube: it is above every number dated earlier and at or below every number
/// dated in that week or later, and fixed at the start of a year. The taut string through the tube is the evenest output that
/// agrees with all of it.
/// Dated numbers that contradict their year, or each other, are left out; a recalled year start that contradicts dated numbers too.
/// </remarks>
internal sealed class IssueCurve
{
    private readonly int firstWeek;
    private readonly int[] estimate;
    private readonly int[] lower;
    private readonly int[] upper;

    private IssueCurve(int firstWeek, int[] estimate, int[] lower, int[] upper)
    {
        this.firstWeek = firstWeek;
        this.estimate = estimate;
        this.lower = lower;
        this.upper = upper;
    }

    /// <summary>The curve of a series, or null where fewer than two of its years have a known start.</summary>
    /// <param name="table">The rows of years.</param>
    /// <param name="dated">The dated numbers, in any order.</param>
    internal static IssueCurve? Of(NumberSeries table, IEnumerable<RegisterRow> dated)
    {
        List<Knot> knots = IssueKnots.Sound(table, dated);
        List<Knot> starts = IssueKnots.Starts(table, knots);
        if (starts.Count < 2)
        {
            return null;
        }

        int first = starts[0].Week;
        int length = starts[starts.Count - 1].Week - first + 1;
        int[] low = new int[length];
        int[] high = new int[length];
        for (int i = 0; i < length; i++)
        {
            low[i] = starts[0].Number;
            high[i] = starts[starts.Count - 1].Number;
        }

        foreach (Knot start in starts)
        {
            low[start.Week - first] = high[start.Week - first] = start.Number;
        }

        foreach (Knot knot in knots)
        {
            int week = knot.Week - first;
            if (week >= 0 && week < length - 1)
            {
                high[week] = Math.Min(high[week], knot.Number);
                low[week + 1] = Math.Max(low[week + 1], knot.Number + 1);
            }
        }

        for (int i = 1; i < length; i++)
        {
            low[i] = Math.Max(low[i], low[i - 1]);
        }

        for (int i = length - 2; i >= 0; i--)
        {
            high[i] = Math.Min(high[i], high[i + 1]);
        }

        return new IssueCurve(first, Estimate(starts, first, low, high), low, high);
    }

    /// <summary>Finds the week of a number: the estimated one, and the first and last that the dated numbers leave possible.</summary>
    /// <returns>False where the number lies outside the curve.</returns>
    internal bool TryLocate(int number, out IssueWeeks weeks)
    {
        weeks = default;
        if (number < estimate[0] || number >= estimate[estimate.Length - 1])
        {
            return false;
        }

        int earliest = LastUpTo(upper, number);
        int latest = Math.Max(earliest, LastUpTo(lower, number));
        int likeliest = Math.Min(latest, Math.Max(earliest, LastUpTo(estimate, number)));
        weeks = new IssueWeeks(firstWeek + earliest, firstWeek + likeliest, firstWeek + latest);
        return true;
    }

    /// <summary>
    /// The lowest and the highest number that the dated numbers allow in the issues of a window; false where no issue of the curve
    /// lies in it.
    /// </summary>
    internal bool TryNumbers(DateWindow dates, out int lowest, out int highest)
    {
        int weeks = estimate.Length - 1;
        int from = dates.Low < IssueDay.DayOf(firstWeek) ? 0 : IssueDay.IndexOf(IssueDay.OnOrAfter(dates.Low)) - firstWeek;
        int to = dates.High >= IssueDay.DayOf(firstWeek + weeks) ? weeks - 1 : IssueDay.IndexOf(dates.High) - firstWeek;
        bool some = from <= to;
        lowest = some ? lower[from] : 0;
        highest = some ? upper[to + 1] - 1 : 0;
        return some && lowest <= highest;
    }

    private static int[] Estimate(List<Knot> starts, int first, int[] low, int[] high)
    {
        double[] path = new double[low.Length];
        for (int i = 1; i < starts.Count; i++)
        {
            TautString.Pull(low, high, starts[i - 1].Week - first, starts[i].Week - first, path);
        }

        int[] whole = new int[path.Length];
        for (int i = 0; i < path.Length; i++)
        {
            whole[i] = (int)Math.Ceiling(path[i] - 1e-9);
        }

        return whole;
    }

    // The last week whose first number is at or below a number.
    private static int LastUpTo(int[] firsts, int number)
    {
        int low = 0;
        int high = firsts.Length;
        while (high - low > 1)
        {
            int middle = low + ((high - low) / 2);
            if (firsts[middle] <= number)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }
}
