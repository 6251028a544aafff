using System.Globalization;

namespace Terminus.Mutation;

/// <summary>The shares by folder, and what no test noticed.</summary>
internal static class Summary
{
    public static void Print(string folder, string[] places)
    {
        IReadOnlyList<Mutant> mutants = Mutant.ReadAll(folder);
        Dictionary<int, Outcome> outcomes = Outcome.ReadAll(folder);
        Console.WriteLine("| folder | mutants | no compile | tried | killed | timeout | crashed | survived | uncovered | score |");
        Console.WriteLine("|---|--:|--:|--:|--:|--:|--:|--:|--:|--:|");
        foreach (IGrouping<string, Mutant> group in mutants.GroupBy(mutant => mutant.Folder).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            Row(group.Key, [.. group], outcomes);
        }

        Row("all", mutants, outcomes);
        IEnumerable<Mutant> missed = mutants.Where(mutant => outcomes.TryGetValue(mutant.Id, out Outcome? outcome) && !outcome.IsNoticed
            && places.Any(place => mutant.File.StartsWith(place, StringComparison.Ordinal)));
        foreach (Mutant mutant in missed.OrderBy(mutant => mutant.File, StringComparer.Ordinal).ThenBy(mutant => mutant.Start))
        {
            Console.WriteLine($"{mutant.File}:{mutant.Start.Line}:{mutant.Start.Column} {outcomes[mutant.Id].Status} {mutant.Id} {mutant.Mutator}: {mutant.Replacement.ReplaceLineEndings(" ")}");
        }
    }

    private static void Row(string name, IReadOnlyList<Mutant> mutants, Dictionary<int, Outcome> outcomes)
    {
        List<Outcome> tried = [.. mutants.Where(mutant => mutant.Compiled && outcomes.ContainsKey(mutant.Id)).Select(mutant => outcomes[mutant.Id])];
        int Of(string status) => tried.Count(outcome => outcome.Status == status);
        double score = tried.Count == 0 ? double.NaN : 100.0 * tried.Count(outcome => outcome.IsNoticed) / tried.Count;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"| {name} | {mutants.Count} | {mutants.Count(mutant => !mutant.Compiled)} | {tried.Count} | {Of(Outcome.Killed)} | {Of(Outcome.Timeout)} | {Of(Outcome.Crashed)} | {Of(Outcome.Survived)} | {Of(Outcome.Uncovered)} | {score:0.0} |"));
    }
}
