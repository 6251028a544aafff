using System.Globalization;
using Xunit.Abstractions;

namespace Terminus.Mutation;

/// <summary>One process that tries mutants, one after another, as it is told their numbers.</summary>
/// <remarks>
/// Many mutants share a process, so one that spoils what the process keeps could make the next look noticed. Tables are therefore filled
/// before the first mutant acts, and a test that failed is run again without the mutant: it must pass, or the process is given up.
/// </remarks>
internal sealed class Worker(Suite suite, Dictionary<string, ITestCase> cases, Coverage coverage, double slowest)
{
    private bool usable = true;

    /// <summary>Answers each number on the standard input by a line of status and test.</summary>
    /// <param name="folder">The mutated build.</param>
    /// <param name="slowest">The cost of a test above which it is left out, in milliseconds.</param>
    /// <param name="fromStart">The one mutant that acts from the first instruction, for what is reached the first time only.</param>
    public static void Serve(string folder, double slowest, int? fromStart)
    {
        TextReader orders = Console.In;
        TextWriter answers = Console.Out;
        Console.SetOut(TextWriter.Null);
        Suite suite = new(folder);
        suite.Switch.Turn(fromStart);
        Worker worker = new(suite, suite.Discover(), Coverage.Load(folder), slowest);
        if (fromStart is { } mutant)
        {
            Say(answers, worker.TryFromStart(mutant));
            return;
        }

        worker.Open();
        Say(answers, new Outcome(0, Outcome.Ready));
        while (worker.usable && orders.ReadLine() is { } order)
        {
            Say(answers, worker.Try(int.Parse(order, CultureInfo.InvariantCulture)));
        }

        Environment.Exit(0);
    }

    private static void Say(TextWriter answers, Outcome outcome)
    {
        answers.WriteLine(outcome.ToLine());
        answers.Flush();
    }

    private void Open()
    {
        foreach (string id in coverage.Tests.Where(test => test.Cost < 100).Select(test => test.Id).Intersect(coverage.Opening))
        {
            suite.Start(cases[id]).Wait(TimeSpan.FromMinutes(5));
        }
    }

    private Outcome Try(int mutant)
    {
        foreach (CoveredTest test in coverage.Tests)
        {
            if (test.Cost > slowest || !test.Mutants.Contains(mutant))
            {
                continue;
            }

            suite.Switch.Turn(mutant);
            Suite.Run run = suite.Start(cases[test.Id]);
            bool? passed = run.Wait(Limit(test));
            suite.Switch.Turn(null);
            if (passed is true)
            {
                continue;
            }

            // Without the mutant a loop that it made endless mostly ends.
            usable = (passed is false || run.Wait(TimeSpan.FromSeconds(1)) is not null)
                && suite.Start(cases[test.Id]).Wait(Limit(test)) is true;
            return new Outcome(mutant, passed is null ? Outcome.Timeout : usable ? Outcome.Killed : Outcome.Unsure, test.Name);
        }

        return new Outcome(mutant, Outcome.Survived);
    }

    private Outcome TryFromStart(int mutant)
    {
        foreach (CoveredTest test in coverage.Tests.Where(test => test.Cost <= slowest))
        {
            if (!cases.TryGetValue(test.Id, out ITestCase? found))
            {
                return new Outcome(mutant, Outcome.Killed, test.Name);
            }

            bool? passed = suite.Start(found).Wait(Limit(test));
            if (passed is not true)
            {
                return new Outcome(mutant, passed is null ? Outcome.Timeout : Outcome.Killed, test.Name);
            }
        }

        return new Outcome(mutant, Outcome.Survived);
    }

    /// <summary>Far above what the test costs by itself.</summary>
    private static TimeSpan Limit(CoveredTest test) => TimeSpan.FromMilliseconds(2_000 + (20 * test.Cost));
}
