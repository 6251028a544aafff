namespace Terminus;

/// <summary>The piece is marked as applied for. The words fit the time between filing and grant, if the maker changed the die.</summary>
/// <remarks>
/// With F the first filing anywhere and I the issue: from F (<see cref="Assumptions.PendingFrom"/>); F to I plus
/// <see cref="Assumptions.PendingSlackYears"/> (<see cref="Assumptions.PendingWithSlack"/>); F to I
/// (<see cref="Assumptions.PendingWindow"/>). F unknown: I less <see cref="Assumptions.PendencyBeforeIssueYears"/>. I unknown: F plus
/// <see cref="Assumptions.PendencyAfterFilingYears"/>. Both unknown: the wording alone, from
/// <see cref="Assumptions.PendingWordingFromYear"/> (<see cref="Assumptions.PendingWording"/>).
/// </remarks>
public sealed record PatentPending : RightEvidence
{
    /// <summary>States that the piece is marked as applied for.</summary>
    /// <param name="filed">When the patent was first filed anywhere, or null where unknown.</param>
    /// <param name="issued">When it was issued, or null where unknown or never.</param>
    /// <param name="office">WIPO ST.3 code of the office, or null.</param>
    /// <param name="right">The right applied for, or null.</param>
    /// <param name="number">The number later granted, or null.</param>
    /// <param name="part">The part that bears it, or null.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="entries">Ids of the reference file on which this rests, or null for none.</param>
    /// <param name="reasons">How this came about, or null for nothing to say.</param>
    public PatentPending(
        EvidenceDate? filed = null,
        EvidenceDate? issued = null,
        string? office = null,
        string? right = null,
        string? number = null,
        string? part = null,
        string? source = null,
        IEnumerable<string>? entries = null,
        IEnumerable<Reason>? reasons = null)
        : base(office, right, number, part, source, entries, reasons)
    {
        Filed = filed;
        Issued = issued;
    }

    /// <inheritdoc/>
    public override string Kind => "patent-pending";

    /// <summary>When the patent was first filed anywhere, or null.</summary>
    public EvidenceDate? Filed { get; init; }

    /// <summary>When it was issued, or null.</summary>
    public EvidenceDate? Issued { get; init; }

    private protected override bool IsUncertain => Filed is { IsUncertain: true } || Issued is { IsUncertain: true };

    private protected override void State(ref NestedWindows windows, Assumptions house)
    {
        if (Filed is null && Issued is null)
        {
            windows.State(DayNumber.Of(house.PendingWordingFromYear, 1, 1), DayNumber.Open, house.PendingWording);
            return;
        }

        int from = Filed?.FirstDay(house) ?? DayNumber.PlusYears(Issued!.FirstDay(house), -house.PendencyBeforeIssueYears);
        int issued = Issued?.LastDay(house) ?? DayNumber.PlusYears(Filed!.LastDay(house), house.PendencyAfterFilingYears);
        windows.State(from, DayNumber.Open, house.PendingFrom);
        windows.State(from, DayNumber.PlusYears(issued, house.PendingSlackYears), house.PendingWithSlack);
        windows.State(from, issued, house.PendingWindow);
    }
}
