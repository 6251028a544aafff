using System.Globalization;

namespace Terminus.Mutation;

/// <summary>What became of one mutant, and by which test.</summary>
internal sealed record Outcome(int Mutant, string Status, string By = "")
{
    public const string Killed = "Killed";
    public const string Timeout = "Timeout";

    /// <summary>The process ended: the stack or the memory ran out.</summary>
    public const string Crashed = "Crashed";

    public const string Survived = "Survived";
    public const string Uncovered = "Uncovered";

    /// <summary>A test failed, and went on failing without the mutant: to be tried again in a new process.</summary>
    public const string Unsure = "Unsure";

    public const string Ready = "Ready";

    public bool IsNoticed => Status is Killed or Timeout or Crashed;

    public string ToLine() => string.Create(CultureInfo.InvariantCulture, $"{Mutant}\t{Status}\t{By.ReplaceLineEndings(" ").Replace('\t', ' ')}");

    public static Outcome OfLine(string line)
        => line.Split('\t') is [var mutant, var status, var by]
            ? new Outcome(int.Parse(mutant, CultureInfo.InvariantCulture), status, by)
            : throw new FormatException($"not an outcome: {line}");

    /// <summary>The outcomes so far: the last one of a mutant counts.</summary>
    public static Dictionary<int, Outcome> ReadAll(string folder)
    {
        string place = Place(folder);
        Dictionary<int, Outcome> read = [];
        foreach (string line in File.Exists(place) ? File.ReadLines(place) : [])
        {
            Outcome outcome = OfLine(line);
            read[outcome.Mutant] = outcome;
        }

        return read;
    }

    public static string Place(string folder) => Path.Combine(folder, "outcomes.tsv");
}
