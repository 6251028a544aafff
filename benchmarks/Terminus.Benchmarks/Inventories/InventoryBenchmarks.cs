using BenchmarkDotNet.Attributes;
using NodaTime;
using Terminus.Tests.Inventories;

namespace Terminus.Benchmarks.Inventories;

/// <summary>A generated inventory end to end, against the floor in the same run: from bytes to bytes, nothing kept.</summary>
[MemoryDiagnoser]
public class InventoryBenchmarks
{
    /// <summary>The seed of the pieces in every benchmark.</summary>
    internal const ulong Seed = 20260101;

    private static readonly InventoryOptions Options = new(new LocalDate(2026, 11, 25), GeneratedReference.Set);

    private byte[] lines = [];
    private Floor? floor;

    /// <summary>How many pieces.</summary>
    [Params(100_000)]
    public int Pieces { get; set; }

    /// <summary>Generates the lines, and the ready results of the floor.</summary>
    [GlobalSetup]
    public void Generate()
    {
        lines = InventoryGenerator.Utf8(Seed, Pieces);
        using var answers = new MemoryStream();
        using var first = new MemoryStream(InventoryGenerator.Utf8(Seed, 2000));
        Inventory.WriteAsync(first, answers, Options).GetAwaiter().GetResult();
        floor = new Floor(answers.ToArray());
    }

    /// <summary>One thread: a strict read with the platform's serializer, and ready results written.</summary>
    [Benchmark(Baseline = true)]
    public int ReadAndWriteOnly() => floor!.Run(new MemoryStream(lines), Stream.Null);

    /// <summary>The library with one batch in work.</summary>
    [Benchmark]
    public int OneBatchAtOnce() => Run(1);

    /// <summary>The library with two batches in work.</summary>
    [Benchmark]
    public int TwoBatchesAtOnce() => Run(2);

    /// <summary>The library as it comes.</summary>
    [Benchmark]
    public int AllCores() => Run(InventoryOptions.UsualBatchesAtOnce);

    private int Run(int atOnce)
        => Inventory.WriteAsync(new MemoryStream(lines), Stream.Null, Options with { BatchesAtOnce = atOnce }).GetAwaiter().GetResult().Lines;
}
