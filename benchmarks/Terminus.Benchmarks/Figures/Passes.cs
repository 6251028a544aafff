using System.Diagnostics;

namespace Terminus.Benchmarks.Figures;

/// <summary>
/// Times whole runs that are too long for many iterations: several passes over all of them in turn, so that a machine that grows slower or
/// faster meets all alike.
/// </summary>
internal sealed class Passes(int passes)
{
    private readonly List<(string Name, Action Run)> runs = [];

    internal Passes Add(string name, Action run)
    {
        runs.Add((name, run));
        return this;
    }

    /// <summary>The fastest and the median pass of each, in seconds.</summary>
    internal IEnumerable<Figure> Measure(string of)
    {
        double[][] seconds = [.. runs.Select(_ => new double[passes])];
        for (int pass = 0; pass < passes; pass++)
        {
            for (int run = 0; run < runs.Count; run++)
            {
                GC.Collect();
                long start = Stopwatch.GetTimestamp();
                runs[run].Run();
                seconds[run][pass] = Stopwatch.GetElapsedTime(start).TotalSeconds;
            }
        }

        for (int run = 0; run < runs.Count; run++)
        {
            Array.Sort(seconds[run]);
            yield return new Figure(runs[run].Name + ", fastest", of, seconds[run][0], "s");
            yield return new Figure(runs[run].Name + ", median", of, seconds[run][passes / 2], "s");
        }
    }
}
