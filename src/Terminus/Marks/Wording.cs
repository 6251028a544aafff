namespace Terminus;

/// <summary>A wording that law or custom confines to a period: one row of the table of wordings.</summary>
/// <param name="id">The stable id, shared with the reference file where it has the same entry.</param>
/// <param name="kind">The kind of mark that the wording is.</param>
/// <param name="office">The office, or null where any country or none comes into question.</param>
/// <param name="right">The right, or for a metal which metal; null where the wording does not say.</param>
/// <param name="takes">What may stand behind the wording and belongs to it.</param>
/// <param name="period">The period; open where none is known.</param>
/// <param name="isLegal">Whether law set the start of the period; otherwise custom.</param>
/// <param name="end">What ended the period.</param>
/// <param name="source">Where the period was read; empty where there is no source.</param>
/// <param name="isRecalled">Whether the row rests on memory.</param>
/// <param name="name">What the wording is called in a sentence: its usual words, or in brackets what stands there.</param>
internal sealed class Wording(
    string id,
    MarkKind kind,
    string? office,
    string? right,
    WordingTakes takes,
    DateWindow period,
    bool isLegal,
    MarkEnd end,
    string source,
    bool isRecalled,
    string name)
{
    private WordingStatement? statement;

    internal string Id { get; } = id;

    internal MarkKind Kind { get; } = kind;

    internal string? Office { get; } = office;

    internal string? Right { get; } = right;

    internal WordingTakes Takes { get; } = takes;

    internal DateWindow Period { get; } = period;

    internal bool IsLegal { get; } = isLegal;

    internal MarkEnd End { get; } = end;

    internal string Source { get; } = source;

    internal bool IsRecalled { get; } = isRecalled;

    internal string Name { get; } = name;

    /// <summary>The windows of the wording and why they are so, the same for every mark that has it.</summary>
    internal WordingStatement Statement => statement ?? Interlocked.CompareExchange(ref statement, new WordingStatement(this), null) ?? statement;

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
