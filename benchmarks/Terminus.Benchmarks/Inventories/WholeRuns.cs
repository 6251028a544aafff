using Terminus.Benchmarks.Figures;
using Terminus.Tests.Inventories;

namespace Terminus.Benchmarks.Inventories;

/// <summary>
/// A collection in a file, end to end: the floor, the library with one batch in work and with two, in turn. Nothing but a buffer is held in memory.
/// Beside them, what two threads gain on this machine in plain arithmetic that touches no memory.
/// </summary>
internal static class WholeRuns
{
    private const int Ready = 2000;
    private const int Steps = 400_000_000;

    internal static IEnumerable<Figure> Measure(string lines, int passes)
    {
        var options = new InventoryOptions(new NodaTime.LocalDate(2026, 11, 25), GeneratedReference.Set);
        using var answers = new MemoryStream();
        Inventory.WriteAsync(new MemoryStream(InventoryGenerator.Utf8(InventoryBenchmarks.Seed, Ready)), answers, options).GetAwaiter().GetResult();
        var floor = new Floor(answers.ToArray());
        int pieces = Run(lines, floor.Run);
        return new Passes(passes)
            .Add("floor", () => Run(lines, floor.Run))
            .Add("one worker", () => Run(lines, Library(options, 1)))
            .Add("two workers", () => Run(lines, Library(options, 2)))
            .Add("arithmetic on one thread", () => Arithmetic())
            .Add("arithmetic on two threads", () => Parallel.Invoke(Arithmetic, Arithmetic))
            .Measure(pieces + " pieces");
    }

    private static Func<Stream, Stream, int> Library(InventoryOptions options, int atOnce)
        => (lines, results) => Inventory.WriteAsync(lines, results, options with { BatchesAtOnce = atOnce }).GetAwaiter().GetResult().Lines;

    private static int Run(string path, Func<Stream, Stream, int> run)
    {
        using FileStream lines = File.OpenRead(path);
        return run(lines, Stream.Null);
    }

    private static void Arithmetic()
    {
        ulong state = 88172645463325252;
        for (int i = 0; i < Steps; i++)
        {
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
        }

        if (state == 0)
        {
            throw new InvalidOperationException("The state of such a generator is never 0.");
        }
    }
}
