using BenchmarkDotNet.Attributes;

namespace Terminus.Benchmarks.Registers;

/// <summary>A patent number to its windows, against a plain binary search over the first numbers of the same table.</summary>
[MemoryDiagnoser]
public class NumberBenchmarks
{
    private const int Number = 2_999_999;

    private readonly Register register = RegisterSet.BuiltIn.Find("US", "utility")!;
    private int[] firsts = [];

    /// <summary>Takes the first numbers out of the table.</summary>
    [GlobalSetup]
    public void Take() => firsts = [.. register.Rows.Select(r => r.First).Order()];

    /// <summary>The row alone.</summary>
    [Benchmark(Baseline = true)]
    public int BinarySearch() => Array.BinarySearch(firsts, Number);

    /// <summary>The number as text, with its windows and reasons.</summary>
    [Benchmark]
    public NumberReading Read() => register.Read("2999999");
}
