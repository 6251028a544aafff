using BenchmarkDotNet.Attributes;

namespace Terminus.Benchmarks.Combining;

/// <summary>
/// The combination and its shortest window at 0.9: from day numbers and from evidence, against choosing every pattern of windows (few
/// items only) and against sampling. Sampling only finds the belief of the window that is already known, which is less work than finding it.
/// </summary>
[MemoryDiagnoser, MinColumn, MedianColumn]
public class CombinationBenchmarks
{
    private const double Level = 0.9;
    private const int Draws = 100_000;
    private const int MostItemsToEnumerate = 8;

    private CombinationCase data = new(0);
    private (int Low, int High) answer;

    /// <summary>How many items there are.</summary>
    [Params(2, 8, 32, 128, 256)]
    public int Items { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        data = new CombinationCase(Items);
        var exact = new Combination(data.Days, data.AsOfDay);
        exact.TryShortest(Level, int.MinValue, int.MaxValue, out answer.Low, out answer.High);
        double error = new MonteCarlo(data.Days, data.AsOfDay, Draws).Belief(answer.Low, answer.High) - exact.Belief(answer.Low, answer.High);
        Console.WriteLine(FormattableString.Invariant($"// {Items} items: sampled belief less the exact one: {error:+0.00000;-0.00000}"));
        if (Items <= MostItemsToEnumerate && Enumeration() != answer)
        {
            throw new InvalidOperationException("The enumeration finds another window.");
        }
    }

    [Benchmark(Baseline = true)]
    public int DayNumbers()
        => new Combination(data.Days, data.AsOfDay).TryShortest(Level, int.MinValue, int.MaxValue, out int low, out int high) ? high - low : 0;

    [Benchmark]
    public DatedInterval? FromEvidence() => Dating.Of(data.Evidence, data.AsOf).Interval(Level);

    [Benchmark]
    public (int Low, int High) Enumeration()
        => Items <= MostItemsToEnumerate ? new PatternEnumeration(data.Days, data.AsOfDay).Shortest(Level) : default;

    [Benchmark]
    public double Sampling() => new MonteCarlo(data.Days, data.AsOfDay, Draws).Belief(answer.Low, answer.High);
}
