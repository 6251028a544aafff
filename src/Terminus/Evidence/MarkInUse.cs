namespace Terminus;

/// <summary>What ended the use of a mark, and so how far its last date is to be trusted.</summary>
public enum MarkEnd
{
    /// <summary>Custom: it went out of use.</summary>
    Custom,

    /// <summary>The right behind it lapsed; old dies live on.</summary>
    Lapsed,

    /// <summary>A law forbade or replaced it.</summary>
    ForbiddenOrReplaced,
}

/// <summary>The piece bears a wording that law or custom confines to a period.</summary>
/// <remarks>
/// States: from its start (<see cref="Assumptions.MarkByLaw"/> or <see cref="Assumptions.MarkByCustom"/>); from start to end
/// (<see cref="Assumptions.MarkForbidden"/>, <see cref="Assumptions.MarkLapsed"/> or <see cref="Assumptions.MarkCustomEnd"/>).
/// </remarks>
public sealed record MarkInUse : Evidence
{
    /// <summary>States that the piece bears a wording of a known period.</summary>
    /// <param name="wording">The wording, or its id.</param>
    /// <param name="from">When its use began, or null.</param>
    /// <param name="until">When its use ended, or null.</param>
    /// <param name="byLaw">Whether a law began it; otherwise custom did.</param>
    /// <param name="end">What ended it.</param>
    /// <param name="part">The part that bears it, or null.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="entries">Ids of the reference file on which this rests, or null for none.</param>
    /// <param name="reasons">How this came about, or null for nothing to say.</param>
    public MarkInUse(
        string wording,
        EvidenceDate? from = null,
        EvidenceDate? until = null,
        bool byLaw = false,
        MarkEnd end = MarkEnd.Custom,
        string? part = null,
        string? source = null,
        IEnumerable<string>? entries = null,
        IEnumerable<Reason>? reasons = null)
        : base(part, source, entries, reasons)
    {
        Wording = Guard.NotNull(wording, nameof(wording));
        From = from;
        Until = until;
        ByLaw = byLaw;
        End = end;
    }

    /// <inheritdoc/>
    public override string Kind => "mark-in-use";

    /// <summary>The wording, or its id.</summary>
    public string Wording { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>When its use began, or null.</summary>
    public EvidenceDate? From { get; init; }

    /// <summary>When its use ended, or null.</summary>
    public EvidenceDate? Until { get; init; }

    /// <summary>Whether a law began it; otherwise custom did.</summary>
    public bool ByLaw { get; init; }

    /// <summary>What ended it.</summary>
    public MarkEnd End { get; init; }

    private protected override bool IsUncertain => From is { IsUncertain: true } || Until is { IsUncertain: true };

    private protected override void State(ref NestedWindows windows, Assumptions house)
    {
        int from = From?.FirstDay(house) ?? DayNumber.Open;
        windows.State(from, DayNumber.Open, ByLaw ? house.MarkByLaw : house.MarkByCustom);
        if (Until is not null)
        {
            windows.State(from, Until.LastDay(house), house.OfEnd(End));
        }
    }
}
