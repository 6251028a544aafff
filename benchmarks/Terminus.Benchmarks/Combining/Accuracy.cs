using Terminus.Benchmarks.Figures;
using Terminus.Tests;

namespace Terminus.Benchmarks.Combining;

/// <summary>
/// How far each way of combining is from the exact answer: the belief of the shortest window at 0.9 against exact fractions, and the length of the
/// window that a day grid calls its 90 % against the length of that window.
/// </summary>
internal static class Accuracy
{
    internal static IEnumerable<Figure> Measure() => CombinationBenchmarks.Sizes.SelectMany(Measure);

    private static IEnumerable<Figure> Measure(int size)
    {
        var data = new CombinationCase(size);
        var engine = new Combination(data.Days, data.AsOfDay);
        engine.TryShortest(CombinationBenchmarks.Level, int.MinValue, int.MaxValue, out int low, out int high);
        double exact = Exact(data, low, high);
        string items = size + " items";
        yield return new Figure("exact belief", items, exact, "");
        yield return new Figure("exact window", items, high - low + 1, "days");
        yield return new Figure("engine error", items, engine.Belief(low, high) - exact, "");
        yield return new Figure("second differences error", items, new SecondDifferences(data.Days, data.AsOfDay).Belief(low, high) - exact, "");
        yield return new Figure("sampling error", items, data.Sampling().Belief(low, high) - exact, "");
        foreach (int years in new[] { CombinationCase.PeriodYears, 2 * CombinationCase.PeriodYears })
        {
            DayGrid grid = data.Grid(years);
            (int gridLow, int gridHigh) = grid.Shortest(CombinationBenchmarks.Level);
            yield return new Figure($"day grid of {years} years, error", items, grid.Share(low, high) - exact, "");
            yield return new Figure($"day grid of {years} years, window", items, gridHigh - gridLow + 1, "days");
        }
    }

    private static double Exact(CombinationCase data, int low, int high)
    {
        var exact = new ExactBelief(data.Days);
        Rational belief = exact.Of(low, high);
        return data.Days.Items > CombinationBenchmarks.MostItemsToEnumerate || belief.Equals(exact.ByEnumeration(data.AsOfDay, low, high))
            ? belief.ToDouble()
            : throw new InvalidOperationException("The enumeration finds another belief.");
    }
}
