using BenchmarkDotNet.Attributes;

namespace Terminus.Benchmarks.Combining;

/// <summary>
/// What firm windows have in common, against a loop over two arrays of whole numbers that a programmer would write by hand. Windows alone are
/// intersected by <see cref="DateWindow.Intersect"/>; <see cref="Dating.Possible"/> comes with everything else that a dating is.
/// </summary>
[MemoryDiagnoser]
public class PossibleBenchmarks
{
    private CombinationCase data = new(0);
    private int[] lows = [];
    private int[] highs = [];
    private DateWindow[] windows = [];

    /// <summary>How many windows there are.</summary>
    [Params(8, 256)]
    public int Items { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        data = new CombinationCase(Items);
        windows = [.. Enumerable.Range(0, Items).Select(i => data.Days[i][0]).Select(w => DateWindow.OfBounds(w.Low, w.High))];
        lows = [.. windows.Select(w => w.Low)];
        highs = [.. windows.Select(w => w.High)];
        if (Loop() is var (low, high) && Intersect() != DateWindow.OfBounds(low, high))
        {
            throw new InvalidOperationException("The loop and the windows have other days in common.");
        }
    }

    [Benchmark(Baseline = true)]
    public (int Low, int High) Loop()
    {
        (int low, int high) = (int.MinValue, int.MaxValue);
        for (int i = 0; i < lows.Length; i++)
        {
            low = Math.Max(low, lows[i]);
            high = Math.Min(high, highs[i]);
        }

        return (low, high);
    }

    [Benchmark]
    public DateWindow? Intersect()
    {
        DateWindow common = DateWindow.Any;
        foreach (DateWindow window in windows)
        {
            if (common.Intersect(window) is not { } both)
            {
                return null;
            }

            common = both;
        }

        return common;
    }

    [Benchmark]
    public DateWindow? WholeDating() => Dating.Of(data.Evidence, data.AsOf).Possible;
}
