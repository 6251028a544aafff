using Terminus.Tests;
using Terminus.Tests.Combining;

namespace Terminus.Benchmarks.Combining;

/// <summary>
/// The belief of a closed window in exact fractions, for items whose windows all meet and a window that ends before the day of the opinion. No
/// draw is empty then, so the belief is 1 - P(start before it) - P(end after it) + P(both), and each of these is one product over the items.
/// </summary>
internal sealed class ExactBelief
{
    private readonly ExactWindow[][] items;

    internal ExactBelief(StatedDays stated)
    {
        items = [.. Enumerable.Range(0, stated.Items).Select(i => Windows(stated[i]))];
    }

    internal Rational Of(int low, int high)
        => Rational.One - Outside(low, int.MinValue) - Outside(int.MaxValue, high) + Outside(low, high);

    /// <summary>The same by every choice of a window for every item, for few items.</summary>
    internal Rational ByEnumeration(int asOf, int low, int high) => new ExactEnumeration(items, asOf).Belief(low, high);

    // P(start before low, end after high), where an open end is before or after any day.
    private Rational Outside(int low, int high)
    {
        Rational product = Rational.One;
        foreach (ExactWindow[] windows in items)
        {
            // Nested windows: those that reach out on both sides are the first so many; the mass of the rest is the confidence of the next.
            ExactWindow? next = Array.Find(windows, w => w.Low >= low || w.High <= high);
            product *= new Rational(100 - (next?.Hundredths ?? 0), 100);
        }

        return product;
    }

    private static ExactWindow[] Windows(ReadOnlySpan<StatedDay> windows)
    {
        var result = new ExactWindow[windows.Length];
        for (int i = 0; i < result.Length; i++)
        {
            result[i] = new ExactWindow(windows[i].Low, windows[i].High, (int)Math.Round(windows[i].Confidence * 100));
        }

        return result;
    }
}
