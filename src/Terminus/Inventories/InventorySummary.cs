namespace Terminus;

/// <summary>How many lines of an inventory came to what. Each line is dated, open-ended, undatable or refused; the other counts overlap with these.</summary>
public sealed record InventorySummary
{
    private readonly InventoryTally tally;

    internal InventorySummary(InventoryTally tally) => this.tally = tally;

    /// <summary>The summary of nothing.</summary>
    public static InventorySummary None { get; } = new(default(InventoryTally));

    /// <summary>All lines that were answered; blank ones are not.</summary>
    public int Lines => tally.Lines;

    /// <summary>Pieces whose interval has a start, and an end before the day of the opinion.</summary>
    public int Dated => tally.Dated;

    /// <summary>Pieces whose interval lacks one of the two.</summary>
    public int OpenEnded => tally.OpenEnded;

    /// <summary>Pieces of which only "any date" can be said, or whose evidence contradicts itself totally.</summary>
    public int Undatable => tally.Undatable;

    /// <summary>Lines that hold no piece.</summary>
    public int Refused => tally.Refused;

    /// <summary>Pieces of which the statement says that two items disagree.</summary>
    public int Disagreeing => tally.Disagreeing;

    /// <summary>Pieces in whose description something was wrong, and the rest was dated.</summary>
    public int WithProblems => tally.WithProblems;

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
        InventoryTally sum = tally;
        sum.Add(Guard.NotNull(other, nameof(other)).tally);
        return new InventorySummary(sum);
    }

    /// <summary>Such as <c>1000 lines: 612 dated, 311 open-ended, 75 undatable, 2 refused; 45 disagree, 3 with problems</c>.</summary>
    public override string ToString()
        => FormattableString.Invariant(
            $"{Lines} {(Lines == 1 ? "line" : "lines")}: {Dated} dated, {OpenEnded} open-ended, {Undatable} undatable, {Refused} refused; {Disagreeing} disagree, {WithProblems} with problems");
}
