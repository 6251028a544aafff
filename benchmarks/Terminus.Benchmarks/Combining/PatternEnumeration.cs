namespace Terminus.Benchmarks.Combining;

/// <summary>The plain way, for few items: every choice of a window for every item, then the shortest window by trying all ends.</summary>
internal sealed class PatternEnumeration(StatedDays items, int asOf)
{
    private readonly Dictionary<(int Low, int High), double> focal = [];
    private double total;

    internal (int Low, int High) Shortest(double level)
    {
        Choose(0, int.MinValue, asOf, 1);
        return FocalMass.Shortest(focal, total, level);
    }

    private void Choose(int item, int low, int high, double mass)
    {
        if (low > high)
        {
            return;
        }

        if (item == items.Items)
        {
            focal[(low, high)] = focal.GetValueOrDefault((low, high)) + mass;
            total += mass;
            return;
        }

        ReadOnlySpan<StatedDay> windows = items[item];
        Choose(item + 1, low, high, mass * (1 - (windows.Length == 0 ? 0 : windows[0].Confidence)));
        for (int k = 0; k < windows.Length; k++)
        {
            double own = windows[k].Confidence - (k + 1 < windows.Length ? windows[k + 1].Confidence : 0);
            Choose(item + 1, Math.Max(low, windows[k].Low), Math.Min(high, windows[k].High), mass * own);
        }
    }
}

/// <summary>The shortest window that holds a share of masses, by trying every start with every end.</summary>
internal static class FocalMass
{
    internal static (int Low, int High) Shortest(Dictionary<(int Low, int High), double> focal, double total, double level)
    {
        int[] lows = [.. focal.Keys.Select(f => f.Low).Where(l => l != int.MinValue).Distinct().Order()];
        int[] highs = [.. focal.Keys.Select(f => f.High).Distinct().Order()];
        (int Low, int High) best = (int.MinValue, int.MaxValue);
        foreach (int low in lows)
        {
            foreach (int high in highs)
            {
                if (high >= low && (long)high - low < (long)best.High - best.Low && Belief(focal, low, high) / total >= level - 1e-9)
                {
                    best = (low, high);
                }
            }
        }

        return best;
    }

    internal static double Belief(Dictionary<(int Low, int High), double> focal, int low, int high)
        => focal.Where(f => f.Key.Low >= low && f.Key.High <= high).Sum(f => f.Value);
}
