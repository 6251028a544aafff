namespace Terminus.Benchmarks.Combining;

/// <summary>
/// The mass of every window between two ends as a second difference of P(start at most a, end at least b), which is a product over the items: exact, and
/// cubic in their number.
/// </summary>
internal sealed class SecondDifferences
{
    private readonly int[] starts;
    private readonly int[] ends;

    // Beside [start, end] the mass of the windows inside it, neither normalised.
    private readonly double[,] inside;

    internal SecondDifferences(StatedDays items, int asOf)
    {
        var lows = new SortedSet<int> { int.MinValue };
        var highs = new SortedSet<int> { asOf };
        for (int item = 0; item < items.Items; item++)
        {
            foreach (StatedDay window in items[item])
            {
                lows.Add(Math.Min(window.Low, asOf + 1));
                highs.Add(Math.Min(window.High, asOf));
            }
        }

        (starts, ends) = ([.. lows], [.. highs]);
        inside = new double[starts.Length + 1, ends.Length + 1];
        var joint = new double[starts.Length + 1, ends.Length + 1];
        for (int start = 0; start < starts.Length; start++)
        {
            for (int end = 0; end < ends.Length; end++)
            {
                joint[start + 1, end] = Joint(items, starts[start], ends[end]);
            }
        }

        for (int start = starts.Length - 1; start >= 0; start--)
        {
            double row = 0;
            for (int end = 0; end < ends.Length; end++)
            {
                row += starts[start] <= ends[end]
                    ? joint[start + 1, end] - joint[start, end] - joint[start + 1, end + 1] + joint[start, end + 1]
                    : 0;
                inside[start, end + 1] = inside[start + 1, end + 1] + row;
            }
        }
    }

    /// <summary>1 - K.</summary>
    private double Total => inside[0, ends.Length];

    internal double Belief(int low, int high) => inside[FirstNotBefore(starts, low), FirstNotBefore(ends, high + 1)] / Total;

    /// <summary>The shortest bounded window whose belief reaches a level: two pointers, as the end never falls while the start rises.</summary>
    internal (int Low, int High) Shortest(double level)
    {
        (int Low, int High) best = (int.MinValue, int.MaxValue);
        for (int start = 1, end = 0; start < starts.Length; start++)
        {
            while (end < ends.Length && inside[start, end + 1] < (level - Combination.Tolerance) * Total)
            {
                end++;
            }

            if (end == ends.Length)
            {
                break;
            }

            if ((long)ends[end] - starts[start] < (long)best.High - best.Low)
            {
                best = (starts[start], ends[end]);
            }
        }

        return best;
    }

    private static double Joint(StatedDays items, int start, int end)
    {
        double product = 1;
        for (int item = 0; item < items.Items; item++)
        {
            double missing = 0;
            foreach (StatedDay window in items[item])
            {
                if (window.Low > start || window.High < end)
                {
                    missing = window.Confidence;
                    break;
                }
            }

            product *= 1 - missing;
        }

        return product;
    }

    private static int FirstNotBefore(int[] days, int day)
    {
        int index = Array.BinarySearch(days, day);
        return index < 0 ? ~index : index;
    }
}
