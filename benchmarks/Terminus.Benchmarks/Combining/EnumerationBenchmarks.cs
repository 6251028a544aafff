using BenchmarkDotNet.Attributes;

namespace Terminus.Benchmarks.Combining;

/// <summary>The combination against choosing every pattern of windows, which is possible for few items only.</summary>
[MemoryDiagnoser]
public class EnumerationBenchmarks
{
    private CombinationCase data = new(0);

    /// <summary>How many items there are.</summary>
    [Params(2, CombinationBenchmarks.MostItemsToEnumerate)]
    public int Items { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        data = new CombinationCase(Items);
        if (Enumeration() is var (low, high) && high - low != DayNumbers())
        {
            throw new InvalidOperationException("The enumeration finds another window.");
        }
    }

    [Benchmark(Baseline = true)]
    public int DayNumbers()
        => new Combination(data.Days, data.AsOfDay).TryShortest(CombinationBenchmarks.Level, int.MinValue, int.MaxValue, out int low, out int high)
            ? high - low
            : 0;

    [Benchmark]
    public (int Low, int High) Enumeration() => new PatternEnumeration(data.Days, data.AsOfDay).Shortest(CombinationBenchmarks.Level);
}
