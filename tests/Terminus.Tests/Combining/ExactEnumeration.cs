namespace Terminus.Tests.Combining;

/// <summary>A window of an item with its confidence as a fraction of 100.</summary>
internal sealed record ExactWindow(int Low, int High, int Hundredths);

/// <summary>
/// The oracle: every choice of a level for every item, one by one, in exact fractions. It shares nothing with the engine but the
/// definition: an item draws window k with c(k) - c(k+1), or any date with 1 - c(1); windows drawn intersect, with asOf as an end.
/// </summary>
internal sealed class ExactEnumeration
{
    private readonly Dictionary<(int Low, int High), Rational> focal = [];

    internal ExactEnumeration(IReadOnlyList<IReadOnlyList<ExactWindow>> items, int asOf)
    {
        AsOf = asOf;
        Conflict = Rational.Zero;
        Choose(items, 0, int.MinValue, asOf, Rational.One);
    }

    internal int AsOf { get; }

    internal Rational Conflict { get; private set; }

    internal Rational Total => Rational.One - Conflict;

    internal Rational Belief(int low, int high) => Sum((l, h) => l >= low && h <= high);

    internal Rational Plausibility(int low, int high) => Sum((l, h) => l <= high && h >= low);

    /// <summary>The plausibility of all days outside a window, which is no window itself.</summary>
    internal Rational PlausibilityOutside(int low, int high) => Sum((l, h) => l < low || h > high);

    /// <summary>The shortest window with ends among the focal ends that reaches a level, by trying them all.</summary>
    internal (int Low, int High)? Shortest(Rational level, int lowest, int highest)
    {
        highest = Math.Min(highest, AsOf);
        (int Low, int High)? best = null;
        List<int> lows = [.. focal.Keys.Select(f => f.Low).Where(l => l != int.MinValue && l >= lowest).Distinct().Order()];
        List<int> highs = [.. focal.Keys.Select(f => f.High).Where(h => h <= highest).Distinct().Order()];
        foreach (int low in lows)
        {
            foreach (int high in highs.Where(h => h >= low))
            {
                if (Belief(low, high) >= level && (best is null || (long)high - low < (long)best.Value.High - best.Value.Low))
                {
                    best = (low, high);
                }
            }
        }

        if (best is null && lowest == int.MinValue)
        {
            foreach (int high in highs.Where(h => Belief(int.MinValue, h) >= level))
            {
                return (int.MinValue, high);
            }
        }

        return best;
    }

    private Rational Sum(Func<int, int, bool> counts)
    {
        Rational sum = Rational.Zero;
        foreach (KeyValuePair<(int Low, int High), Rational> entry in focal)
        {
            if (counts(entry.Key.Low, entry.Key.High))
            {
                sum += entry.Value;
            }
        }

        return sum / Total;
    }

    private void Choose(IReadOnlyList<IReadOnlyList<ExactWindow>> items, int item, int low, int high, Rational mass)
    {
        if (mass.Equals(Rational.Zero))
        {
            return;
        }

        if (item == items.Count)
        {
            if (low > high)
            {
                Conflict += mass;
            }
            else
            {
                focal[(low, high)] = focal.GetValueOrDefault((low, high), Rational.Zero) + mass;
            }

            return;
        }

        IReadOnlyList<ExactWindow> windows = items[item];
        Choose(items, item + 1, low, high, mass * new Rational(100 - (windows.Count == 0 ? 0 : windows[0].Hundredths), 100));
        for (int k = 0; k < windows.Count; k++)
        {
            int next = k + 1 < windows.Count ? windows[k + 1].Hundredths : 0;
            Choose(
                items, item + 1, Math.Max(low, windows[k].Low), Math.Min(high, windows[k].High), mass * new Rational(windows[k].Hundredths - next, 100));
        }
    }
}
