using System.Diagnostics;
using Terminus.Fuzz.Targets;

namespace Terminus.Fuzz;

/// <summary>Checks the inputs of files and folders without a fuzzer.</summary>
internal static class CheckRun
{
    /// <summary>Checks every input, prints those that break something, and closes with the counts. The exit code is 1 where one did.</summary>
    /// <param name="target">The target.</param>
    /// <param name="paths">Files, folders and corpora.</param>
    /// <param name="least">Inputs are repeated until they have so many bytes, so that work that grows faster than its input is seen.</param>
    internal static int Over(FuzzTarget target, IEnumerable<string> paths, int least = 0)
    {
        (int inputs, int broken) = (0, 0);
        Allocation most = default;
        (long Ticks, string Name) slowest = default;
        foreach ((string name, byte[] input) in paths.SelectMany(Inputs).Select(i => (i.Name, Repeated(i.Input, least))))
        {
            inputs++;
            long started = Stopwatch.GetTimestamp();
            try
            {
                Allocation allocation = target.Check(input);
                most = allocation.Second > most.Second ? allocation : most;
            }
#pragma warning disable CA1031 // Whatever is thrown is what is looked for.
            catch (Exception wrong)
#pragma warning restore CA1031
            {
                broken++;
                Console.WriteLine(name + ": " + wrong);
            }

            long ticks = Stopwatch.GetTimestamp() - started;
            slowest = ticks > slowest.Ticks ? (ticks, name) : slowest;
        }

        Console.WriteLine($"{inputs} inputs, {broken} broken; the most: {most}; the slowest, {Stopwatch.GetElapsedTime(0, slowest.Ticks).TotalMilliseconds:0} ms: {slowest.Name}");
        return broken == 0 ? 0 : 1;
    }

    private static byte[] Repeated(byte[] input, int least)
        => input.Length == 0 || input.Length >= least ? input : [.. Enumerable.Repeat(input, (least / input.Length) + 1).SelectMany(i => i)];

    private static IEnumerable<(string Name, byte[] Input)> Inputs(string path)
        => Directory.Exists(path) ? Directory.EnumerateFiles(path).Order(StringComparer.Ordinal).Select(f => (f, File.ReadAllBytes(f)))
            : path.EndsWith(".txt", StringComparison.Ordinal) ? CorpusFile.Read(path).Select((input, i) => ($"{path}:{i + 1}", input))
            : [(path, File.ReadAllBytes(path))];
}
