namespace Terminus;

/// <summary>The counts of a comparison, and under what the two runs were dated. It is filled as the pieces go by.</summary>
internal sealed class ChangesSummary
{
    private readonly List<string> before = [];
    private readonly List<string> after = [];

    internal int Compared { get; private set; }

    internal int Moved { get; private set; }

    internal int OnlyBefore { get; private set; }

    internal int OnlyAfter { get; private set; }

    /// <summary>The references and assumptions of the first run, almost always one.</summary>
    internal IReadOnlyList<string> TermsBefore => before;

    /// <summary>The references and assumptions of the second run.</summary>
    internal IReadOnlyList<string> TermsAfter => after;

    internal ChangesPiece Add(ChangesPiece change)
    {
        Compared += change.IsInBoth ? 1 : 0;
        Moved += change.HasMoved ? 1 : 0;
        OnlyBefore += change.After is null ? 1 : 0;
        OnlyAfter += change.Before is null ? 1 : 0;
        Note(before, change.Before);
        Note(after, change.After);
        return change;
    }

    private static void Note(List<string> terms, ChangesRecord? record)
    {
        if (record is not null && TermsOf(record) is var said && !terms.Contains(said))
        {
            terms.Add(said);
        }
    }

    private static string TermsOf(ChangesRecord record)
        => "reference " + string.Join(", ", record.Layers) + "; assumptions " + record.Assumptions
            + (record.AsOf is { } day ? "; as of " + DateText.Iso(day) : "");
}
