namespace Terminus;

/// <summary>How many lines of an inventory came to what. Each line is dated, open-ended, undatable or refused; the other counts overlap with these.</summary>
public sealed record InventorySummary
{
    /// <summary>The summary of nothing.</summary>
    public static InventorySummary None { get; } = new();

    private InventorySummary()
    {
    }

    internal InventorySummary(InventoryTally tally)
    {
        Lines = tally.Lines;
        Dated = tally.Dated;
        OpenEnded = tally.OpenEnded;
        Undatable = tally.Undatable;
        Refused = tally.Refused;
        Disagreeing = tally.Disagreeing;
        WithProblems = tally.WithProblems;
    }

    /// <summary>All lines that were answered; blank ones are not.</summary>
    public int Lines { get; private init; }

    /// <summary>Pieces whose interval has a start, and an end before the day of the opinion.</summary>
    public int Dated { get; private init; }

    /// <summary>Pieces whose interval lacks one of the two.</summary>
    public int OpenEnded { get; private init; }

    /// <summary>Pieces of which only "any date" can be said, or whose evidence contradicts itself totally.</summary>
    public int Undatable { get; private init; }

    /// <summary>Lines that hold no piece.</summary>
    public int Refused { get; private init; }

    /// <summary>Pieces of which the statement says that two items disagree.</summary>
    public int Disagreeing { get; private init; }

    /// <summary>Pieces in whose description something was wrong, and the rest was dated.</summary>
    public int WithProblems { get; private init; }

    /// <summary>The summary of one answer.</summary>
    /// <param name="result">The answer.</param>
    public static InventorySummary Of(InventoryResult result)
    {
        var tally = new InventoryTally();
        tally.Add(Guard.NotNull(result, nameof(result)));
        return new InventorySummary(tally);
    }

    /// <summary>This summary and another together.</summary>
    /// <param name="other">The other.</param>
    public InventorySummary Plus(InventorySummary other)
    {
        Guard.NotNull(other, nameof(other));
        return new InventorySummary
        {
            Lines = Lines + other.Lines,
            Dated = Dated + other.Dated,
            OpenEnded = OpenEnded + other.OpenEnded,
            Undatable = Undatable + other.Undatable,
            Refused = Refused + other.Refused,
            Disagreeing = Disagreeing + other.Disagreeing,
            WithProblems = WithProblems + other.WithProblems,
        };
    }

    /// <summary>Such as <c>1000 lines: 612 dated, 311 open-ended, 75 undatable, 2 refused; 45 disagree, 3 with problems</c>.</summary>
    public override string ToString()
        => FormattableString.Invariant(
            $"{Lines} {(Lines == 1 ? "line" : "lines")}: {Dated} dated, {OpenEnded} open-ended, {Undatable} undatable, {Refused} refused; {Disagreeing} disagree, {WithProblems} with problems");
}
