using System.Text.Json;
using Xunit.Abstractions;

namespace Terminus.Mutation;

/// <summary>One test: what it costs once warm, in milliseconds of work, and the mutants it reaches.</summary>
internal sealed record CoveredTest(string Id, string Name, double Cost, HashSet<int> Mutants);

/// <summary>Which test reaches which mutant.</summary>
/// <param name="Tests">The tests that pass, cheapest first.</param>
/// <param name="Once">The mutants reached the first time only: static tables and what is worked out when first needed.</param>
/// <param name="Opening">The tests that reached one of those.</param>
internal sealed record Coverage(IReadOnlyList<CoveredTest> Tests, HashSet<int> Once, IReadOnlyList<string> Opening)
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    /// <summary>Runs every test twice: the second run counts, and tells what only the first could reach.</summary>
    public static Coverage Measure(string folder)
    {
        Suite suite = new(folder);
        suite.Switch.Turn(null);
        Dictionary<string, ITestCase> all = suite.Discover();
        HashSet<int> first = suite.Switch.TakeReached();
        Dictionary<string, HashSet<int>> opened = [];
        foreach ((string id, ITestCase test) in all)
        {
            suite.Start(test).Wait(Patience);
            opened[id] = suite.Switch.TakeReached();
            first.UnionWith(opened[id]);
        }

        List<CoveredTest> tests = [];
        foreach ((string id, ITestCase test) in all)
        {
            Suite.Run run = suite.Start(test);
            bool passed = run.Wait(Patience) is true;
            HashSet<int> reached = suite.Switch.TakeReached();
            if (passed)
            {
                tests.Add(new CoveredTest(id, test.DisplayName, run.Cost.TotalMilliseconds, reached));
            }
            else
            {
                Console.Error.WriteLine($"left out, as it fails here without any mutant: {test.DisplayName}");
            }
        }

        first.ExceptWith(tests.SelectMany(test => test.Mutants));
        return new Coverage(
            [.. tests.OrderBy(test => test.Cost)],
            first,
            [.. from test in tests where opened[test.Id].Except(test.Mutants).Any() select test.Id]);
    }

    public void Save(string folder) => File.WriteAllText(Place(folder), JsonSerializer.Serialize(this));

    public static Coverage Load(string folder) => JsonSerializer.Deserialize<Coverage>(File.ReadAllText(Place(folder)))!;

    private static string Place(string folder) => Path.Combine(folder, "coverage.json");
}
