namespace Terminus;

/// <summary>A wording that law or custom confines to a period: one row of the table of wordings.</summary>
/// <param name="Id">The stable id, shared with the reference file where it has the same entry.</param>
/// <param name="Kind">The kind of mark that the wording is.</param>
/// <param name="Office">The office, or null where any country or none comes into question.</param>
/// <param name="Right">The right, or for a metal which metal; null where the wording does not say.</param>
/// <param name="Takes">What may stand behind the wording and belongs to it.</param>
/// <param name="Period">The period; open where none is known.</param>
/// <param name="IsLegal">Whether law set the start of the period; otherwise custom.</param>
/// <param name="End">What ended the period.</param>
/// <param name="Source">Where the period was read; empty where there is no source.</param>
/// <param name="IsRecalled">Whether the row rests on memory.</param>
/// <param name="Name">What the wording is called in a sentence: its usual words, or in brackets what stands there.</param>
internal sealed record Wording(
    string Id,
    MarkKind Kind,
    string? Office,
    string? Right,
    WordingTakes Takes,
    DateWindow Period,
    bool IsLegal,
    MarkEnd End,
    string Source,
    bool IsRecalled,
    string Name)
{
    /// <summary>What the wording says of the piece that bears it.</summary>
    internal MarkInUse ToEvidence(string? part = null, string? source = null, IEnumerable<Reason>? reasons = null) => new(
        Id, Edge(Period.FirstDay, start: true), Edge(Period.LastDay, start: false), IsLegal, End, part, source, [Id], reasons);

    // A period that starts or ends with a year is known to the year, and said so.
    private static EvidenceDate? Edge(int day, bool start)
    {
        if (day == DayNumber.Open)
        {
            return null;
        }

        (int year, int month, int dayOfMonth) = DayNumber.Parts(day);
        return (month, dayOfMonth) == (start ? (1, 1) : (12, 31)) ? EvidenceDate.InYear(year) : EvidenceDate.In(DateWindow.OfDays(day, day));
    }
}

/// <summary>What may stand behind a wording and belongs to it.</summary>
internal enum WordingTakes
{
    /// <summary>Nothing.</summary>
    Nothing,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A number, without which the words do not count.</summary>
    NumberAlways,

    /// <summary>A year.</summary>
    Year,

    /// <summary>A measure of gold before it.</summary>
    Karat,
}
