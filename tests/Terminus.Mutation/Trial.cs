using System.Collections.Concurrent;
using System.Globalization;

namespace Terminus.Mutation;

/// <summary>What to try, and how.</summary>
internal sealed record TrialOptions(IReadOnlyList<string> Places, int Workers, int? Sample, IReadOnlyList<string> Again, double Slowest)
{
    /// <summary>Reads <c>PLACE… --workers N --sample N --again STATUS --slowest MS</c>.</summary>
    public static TrialOptions Of(string[] words)
    {
        TrialOptions options = new([], 2, null, [], 250);
        for (int i = 0; i < words.Length; i++)
        {
            options = words[i] switch
            {
                "--workers" => options with { Workers = Number(words[++i]) },
                "--sample" => options with { Sample = Number(words[++i]) },
                "--slowest" => options with { Slowest = Number(words[++i]) },
                "--again" => options with { Again = [.. options.Again, words[++i]] },
                string place => options with { Places = [.. options.Places, place] },
            };
        }

        return options;

        static int Number(string word) => int.Parse(word, CultureInfo.InvariantCulture);
    }

    public bool Takes(Mutant mutant) => mutant.Compiled && (Places.Count == 0 || Places.Any(place => mutant.File.StartsWith(place, StringComparison.Ordinal)));
}

/// <summary>Tries mutants in several processes and keeps each outcome as it comes, so that a run can be broken off and taken up again.</summary>
internal sealed class Trial(string folder, TrialOptions options, Coverage coverage)
{
    private readonly Lock writing = new();
    private readonly HashSet<int> reached = [.. coverage.Tests.Where(test => test.Cost <= options.Slowest).SelectMany(test => test.Mutants)];
    private int left;

    public static Task RunAsync(string folder, TrialOptions options)
        => new Trial(folder, options, Coverage.Load(folder)).RunAsync();

    private async Task RunAsync()
    {
        ConcurrentQueue<int> queue = new(Chosen());
        left = queue.Count;
        Console.Error.WriteLine($"{left} mutants to try");
        await Task.WhenAll(Enumerable.Range(0, options.Workers).Select(_ => Task.Run(() => Work(queue)))).ConfigureAwait(false);
    }

    /// <summary>The mutants without an outcome, or whose outcome is asked for again; of a sample, those that a fixed shuffle puts first.</summary>
    private IEnumerable<int> Chosen()
    {
        Dictionary<int, Outcome> known = Outcome.ReadAll(folder);
        List<int> all = [.. Mutant.ReadAll(folder).Where(options.Takes).Select(mutant => mutant.Id)];
        if (options.Sample is { } sample)
        {
            Mutant.Shuffle(all);
            all = all[..Math.Min(sample, all.Count)];
        }

        return all.Where(id => !known.TryGetValue(id, out Outcome? outcome) || options.Again.Contains(outcome.Status));
    }

    private void Work(ConcurrentQueue<int> queue)
    {
        using WorkerProcess worker = new(folder, options.Slowest);
        while (queue.TryDequeue(out int mutant))
        {
            Keep(Try(worker, mutant));
        }
    }

    private Outcome Try(WorkerProcess worker, int mutant)
    {
        if (coverage.Once.Contains(mutant))
        {
            return WorkerProcess.TryFromStart(folder, options.Slowest, mutant);
        }

        if (!reached.Contains(mutant))
        {
            return new Outcome(mutant, Outcome.Uncovered);
        }

        Outcome outcome = worker.Try(mutant);
        if (outcome.Status == Outcome.Unsure)
        {
            // In a new process the first failure is this mutant's own.
            outcome = worker.Try(mutant);
        }

        return outcome.Status == Outcome.Unsure ? outcome with { Status = Outcome.Killed } : outcome;
    }

    private void Keep(Outcome outcome)
    {
        lock (writing)
        {
            File.AppendAllLines(Outcome.Place(folder), [outcome.ToLine()]);
            if (--left % 100 == 0)
            {
                Console.Error.WriteLine($"{left} left");
            }
        }
    }
}
