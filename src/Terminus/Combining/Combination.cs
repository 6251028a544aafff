namespace Terminus;

/// <summary>
/// Dempster's rule for independent items of nested windows, exact, by two sweeps over their ends.
/// </summary>
/// <remarks>
/// <para>Each item draws one of its windows, or any date: window k with probability c(k) - c(k+1). The combined window starts at the latest
/// start drawn and ends at the earliest end, asOf included. For days a and b, P(start &lt;= a, end &gt;= b) is the product over the items of
/// 1 - c[min(started by a, not ended before b)], with c past the last window 0; on a = b this is the contour, the plausibility of a day.</para>
/// <para>The contour's upward steps add up to the mass that is not empty, 1 - K. With startedBefore(x) = P(start &lt; x) and endedBy(y) =
/// P(end &lt;= y), both over non-empty windows: (1 - K) Bel[x, y] = endedBy(y) - startedBefore(x) + P(start &lt; x, end &gt; y), and
/// (1 - K) Pl[x, y] = startedBefore(y + 1) - endedBy(x - 1).</para>
/// <para>The smallest y that reaches a level never falls as x rises, so two pointers find the shortest window, and the last term moves
/// along their path. Sources: Shafer, A Mathematical Theory of Evidence (1976), for the rule; the sweep is derived here.</para>
/// </remarks>
internal sealed class Combination
{
    /// <summary>The one tolerance, on normalised belief, wherever a belief meets a level.</summary>
    internal const double Tolerance = 1e-9;

    private const int OnStack = 64;

    private readonly StatedDays items;
    private readonly int asOf;
    private readonly WindowEnds ends;

    // Beside each start P(start < its day), beside each end P(end <= its day), neither normalised.
    private readonly double[] masses;

    internal Combination(StatedDays items, int asOf)
    {
        this.items = items;
        this.asOf = asOf;
        ends = new WindowEnds(items, asOf);
        masses = new double[ends.Count];
        Total = SweepContour();
        (AllMeet, bool certainlyEmpty) = Agreement();
        IsContradiction = certainlyEmpty || Total < Tolerance;
        Conflict = AllMeet ? 0 : IsContradiction ? 1 : Unit(1 - Total);
    }

    /// <summary>K, the mass on the empty set: 0 exactly when all windows that carry mass meet.</summary>
    internal double Conflict { get; }

    /// <summary>Whether all windows meet, so that no two items disagree.</summary>
    internal bool AllMeet { get; }

    /// <summary>Whether K counts as 1, so that nothing is believed but any date.</summary>
    internal bool IsContradiction { get; }

    /// <summary>The mass that is not empty, 1 - K.</summary>
    internal double Total { get; }

    /// <summary>The ends in day order, for the spread.</summary>
    internal WindowEnds Ends => ends;

    /// <summary>The lower probability of a window in comparing numbers.</summary>
    internal double Belief(int low, int high)
        => IsContradiction
            ? (low == int.MinValue && high == int.MaxValue ? 1 : 0)
            : Unit((EndedBy(high) - StartedBefore(low) + (low == int.MinValue || high >= asOf ? 0 : Joint(low - 1, high + 1))) / Total);

    /// <summary>The upper probability of a window in comparing numbers.</summary>
    internal double Plausibility(int low, int high)
        => IsContradiction
            ? 1
            : Unit((StartedBefore(high < asOf ? high + 1 : int.MaxValue) - (low == int.MinValue ? 0 : EndedBy(low - 1))) / Total);

    /// <summary>P(start &lt;= a, end &gt;= b), not normalised, with 0 for an end after asOf.</summary>
    internal double Joint(int a, int b)
    {
        double product = b > asOf ? 0 : 1;
        for (int item = 0; item < items.Items && product > 0; item++)
        {
            ReadOnlySpan<StatedDay> windows = items[item];
            int open = 0;
            while (open < windows.Length && windows[open].Low <= a && windows[open].High >= b)
            {
                open++;
            }

            product *= open == windows.Length ? 1 : 1 - windows[open].Confidence;
        }

        return product;
    }

    /// <summary>
    /// The shortest window between two bounds whose belief reaches a level. Ties go to the earlier start; a window open at the start is
    /// taken only where no bounded one reaches, and then the earliest end wins.
    /// </summary>
    internal bool TryShortest(double level, int lowest, int highest, out int low, out int high)
    {
        (low, high) = (int.MinValue, int.MaxValue);
        double needed = (level - Tolerance) * Total;
        highest = Math.Min(highest, asOf);
        return !IsContradiction
            && (TryShortestBounded(needed, lowest, highest, ref low, ref high)
                || (lowest == int.MinValue && TryEarliestEnd(needed, highest, ref high)));
    }

    private bool TryShortestBounded(double needed, int lowest, int highest, ref int low, ref int high)
    {
        int count = items.Items;
        Span<double> products = count <= OnStack ? stackalloc double[2 * count] : new double[2 * count];
        Span<int> counters = count <= OnStack ? stackalloc int[2 * count] : new int[2 * count];
        var tree = new ProductTree(items, products, counters);
        long shortest = long.MaxValue;
        (int end, int y, double ended) = (ends.Starts, int.MinValue, 0);
        for (int start = 0; start < ends.Starts;)
        {
            int x = ends.Day(start);
            if (x >= lowest)
            {
                while (y < x || ended - masses[start] + (y == asOf ? 0 : tree.Value) < needed)
                {
                    int next = end < ends.Count ? ends.Day(end) : asOf;
                    if (y == asOf || next > highest)
                    {
                        return shortest != long.MaxValue;
                    }

                    for (y = next; end < ends.Count && ends.Day(end) == y; end++)
                    {
                        tree.End(ends.Item(end));
                    }

                    ended = y == asOf ? Total : masses[end - 1];
                }

                if ((long)y - x < shortest)
                {
                    (shortest, low, high) = ((long)y - x, x, y);
                }
            }

            for (; start < ends.Starts && ends.Day(start) == x; start++)
            {
                tree.Start(ends.Item(start));
            }
        }

        return shortest != long.MaxValue;
    }

    private bool TryEarliestEnd(double needed, int highest, ref int high)
    {
        int end = ends.Starts;
        while (end < ends.Count && ends.Day(end) <= highest && masses[end] < needed)
        {
            end++;
        }

        high = end < ends.Count ? ends.Day(end) : asOf;
        return high <= highest;
    }

    // Walks all ends in day order, starts before ends on a day, and notes the mass started before and ended by each.
    private double SweepContour()
    {
        int count = items.Items;
        Span<double> products = count <= OnStack ? stackalloc double[2 * count] : new double[2 * count];
        Span<int> counters = count <= OnStack ? stackalloc int[2 * count] : new int[2 * count];
        var tree = new ProductTree(items, products, counters);
        double height = tree.Value;
        double steps = height;
        for (int start = 0, end = ends.Starts; start < ends.Starts || end < ends.Count;)
        {
            if (start < ends.Starts && (end == ends.Count || ends.Day(start) <= ends.Day(end)))
            {
                masses[start] = steps;
                tree.Start(ends.Item(start++));
                steps += tree.Value - height;
            }
            else
            {
                tree.End(ends.Item(end));
                masses[end++] = steps - tree.Value;
            }

            height = tree.Value;
        }

        return steps;
    }

    private double StartedBefore(int day)
    {
        int index = ends.FirstStart(day);
        return day == int.MinValue ? 0 : index == ends.Starts ? Total : masses[index];
    }

    private double EndedBy(int day)
    {
        int index = day >= asOf ? ends.Count : ends.FirstEndAfter(day);
        return day >= asOf ? Total : index == ends.Starts ? 0 : masses[index - 1];
    }

    // All windows that carry mass meet when the innermost do; certain windows are those of confidence 1, and asOf.
    private (bool AllMeet, bool CertainlyEmpty) Agreement()
    {
        (int low, int high, int certainLow, int certainHigh) = (int.MinValue, asOf, int.MinValue, asOf);
        for (int item = 0; item < items.Items; item++)
        {
            foreach (StatedDay window in items[item])
            {
                (low, high) = (Math.Max(low, window.Low), Math.Min(high, window.High));
                if (window.Confidence >= 1)
                {
                    (certainLow, certainHigh) = (Math.Max(certainLow, window.Low), Math.Min(certainHigh, window.High));
                }
            }
        }

        return (low <= high, certainLow > certainHigh);
    }

    private static double Unit(double value) => value < 0 ? 0 : value > 1 ? 1 : value;
}
