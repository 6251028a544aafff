using BenchmarkDotNet.Attributes;

namespace Terminus.Benchmarks.Combining;

/// <summary>
/// The combination and its shortest window at 0.9, from day numbers and from evidence, against other ways: the product on a grid of days with
/// vector instructions, second differences, and sampling. Sampling only finds the belief of the window that is already known, which is less work
/// than finding it.
/// </summary>
[MemoryDiagnoser, MinColumn, MedianColumn]
public class CombinationBenchmarks
{
    internal const double Level = 0.9;
    internal const int MostItemsToEnumerate = 8;

    private CombinationCase data = new(0);
    private (int Low, int High) answer;

    internal static int[] Sizes { get; } = [2, 8, 32, 256];

    /// <summary>How many items there are.</summary>
    [Params(2, 8, 32, 256)]
    public int Items { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        data = new CombinationCase(Items);
        new Combination(data.Days, data.AsOfDay).TryShortest(Level, int.MinValue, int.MaxValue, out answer.Low, out answer.High);
        if (Differences() != answer)
        {
            throw new InvalidOperationException("The second differences find another window.");
        }
    }

    [Benchmark(Baseline = true)]
    public int DayNumbers()
        => new Combination(data.Days, data.AsOfDay).TryShortest(Level, int.MinValue, int.MaxValue, out int low, out int high) ? high - low : 0;

    [Benchmark]
    public DatedInterval? FromEvidence() => Dating.Of(data.Evidence, data.AsOf).Interval(Level);

    [Benchmark]
    public (int Low, int High) Grid() => data.Grid(CombinationCase.PeriodYears).Shortest(Level);

    [Benchmark]
    public (int Low, int High) Differences() => new SecondDifferences(data.Days, data.AsOfDay).Shortest(Level);

    [Benchmark]
    public double Sampling() => data.Sampling().Belief(answer.Low, answer.High);
}
