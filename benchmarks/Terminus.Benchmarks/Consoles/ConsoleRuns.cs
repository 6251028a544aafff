using System.Diagnostics;
using System.Globalization;
using Terminus.Benchmarks.Figures;

namespace Terminus.Benchmarks.Consoles;

/// <summary>The console as a process: from start to end with one dated piece, beside a program that greets; and its peak memory over collections.</summary>
internal static class ConsoleRuns
{
    private const int Starts = 20;
    private const string AsOf = "--as-of 2026-11-25";
    private const string Piece =
        """{"id":"first","title":"invented cuff links","marks":[{"text":"PAT. APR. 17-94","part":"back"}],"features":[{"feature":"cuff.snap_apart"}]}""";

    internal static IEnumerable<Figure> StartUp(string console, string hello, string folder)
    {
        string piece = Path.Combine(folder, "piece.json");
        File.WriteAllText(piece, Piece);
        return new Passes(Starts)
            .Add("a program that greets", () => Run($"'{hello}'"))
            .Add("console, one piece dated", () => Run($"'{console}' date '{piece}' {AsOf}"))
            .Measure("start to end");
    }

    internal static IEnumerable<Figure> Memory(string console, string lines, string reference, string pieces)
    {
        var watch = Stopwatch.StartNew();
        long peak = Run($"'{console}' inventory '{lines}' --reference '{reference}' {AsOf}");
        yield return new Figure("console, peak memory", pieces + " pieces", peak * 1024 / 1e6, "MB");
        yield return new Figure("console, whole run", pieces + " pieces", watch.Elapsed.TotalSeconds, "s");
    }

    /// <summary>Runs a command without its output, to its end; the most memory it held at once, in KiB, as Linux counts it.</summary>
    private static long Run(string command)
    {
        using Process process = Process.Start("/bin/sh", ["-c", "exec " + command + " > /dev/null 2>&1"]);
        long peak = 0;
        while (!process.WaitForExit(peak == 0 ? 1 : 5))
        {
            peak = Math.Max(peak, Peak(process.Id));
        }

        // 1 says that data had problems, which the generated collections have by design.
        return process.ExitCode is 0 or 1 ? peak : throw new InvalidOperationException(command + " ended with " + process.ExitCode + ".");
    }

    // The kernel keeps the peak itself, so that looking now and then misses only what comes after the last look.
    private static long Peak(int process)
    {
        try
        {
            string line = File.ReadLines($"/proc/{process}/status").First(l => l.StartsWith("VmHWM:", StringComparison.Ordinal));
            return long.Parse(line["VmHWM:".Length..^" kB".Length], NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture);
        }
        catch (Exception e) when (e is IOException or InvalidOperationException or UnauthorizedAccessException)
        {
            return 0;
        }
    }
}
