using System.Globalization;
using System.Text.Json;

namespace Terminus.Mutation;

/// <summary>One change that Stryker compiled into the library behind a switch.</summary>
internal sealed record Mutant(int Id, string File, (int Line, int Column) Start, (int Line, int Column) End, string Mutator, string Replacement, bool Compiled, bool Filtered)
{
    /// <summary>The folder of the library, or the file for what stands in its root.</summary>
    public string Folder => File.Split('/')[0];

    private bool IsBlock => Mutator.StartsWith("Block", StringComparison.Ordinal);

    /// <summary>The mutants of the report that lies beside the mutated build, those that Stryker itself would not try left out.</summary>
    public static IReadOnlyList<Mutant> ReadAll(string folder)
    {
        using JsonDocument report = JsonDocument.Parse(System.IO.File.ReadAllText(Path.Combine(folder, "mutation-report.json")));
        return [.. from file in report.RootElement.GetProperty("files").EnumerateObject()
                   let name = file.Name.Split("/src/Terminus/")[^1]
                   let mutants = file.Value.GetProperty("mutants").EnumerateArray().Select(mutant => Of(name, mutant)).ToList()
                   from mutant in mutants
                   where !mutant.Filtered && !mutant.IsCoveredIn(mutants)
                   orderby mutant.Id
                   select mutant];
    }

    /// <summary>A whole block that is taken out says nothing new where something inside it is changed too.</summary>
    private bool IsCoveredIn(List<Mutant> mutants)
        => IsBlock && Compiled
            && mutants.Any(other => other != this && other.Compiled && !other.Filtered && other.Start.CompareTo(Start) >= 0 && other.End.CompareTo(End) <= 0);

    /// <summary>Puts numbers into an order that is always the same and follows nothing: the first ones are a random sample.</summary>
    public static void Shuffle(List<int> ids)
    {
        ulong state = 20261125;
        for (int i = ids.Count - 1; i > 0; i--)
        {
            state = (state * 6364136223846793005) + 1442695040888963407;
            int other = (int)((state >> 33) % (ulong)(i + 1));
            (ids[i], ids[other]) = (ids[other], ids[i]);
        }
    }

    private static Mutant Of(string file, JsonElement mutant)
    {
        JsonElement location = mutant.GetProperty("location");
        return new Mutant(
            int.Parse(mutant.GetProperty("id").GetString()!, CultureInfo.InvariantCulture),
            file,
            Place(location.GetProperty("start")),
            Place(location.GetProperty("end")),
            mutant.GetProperty("mutatorName").GetString()!,
            mutant.GetProperty("replacement").GetString() ?? "",
            mutant.GetProperty("status").GetString() != "CompileError",
            mutant.TryGetProperty("statusReason", out JsonElement reason) && reason.GetString() == "Removed by method filter");

        static (int, int) Place(JsonElement end) => (end.GetProperty("line").GetInt32(), end.GetProperty("column").GetInt32());
    }
}
