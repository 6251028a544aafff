namespace Terminus;

/// <summary>The piece names a firm, a form of its name or an address that was in use for a known time.</summary>
/// <remarks>
/// States: the time with <see cref="Assumptions.MakerYears"/> on either side (<see cref="Assumptions.MakerWide"/>); the time itself
/// (<see cref="Assumptions.MakerSpan"/>). A start or an end that is missing leaves its side open.
/// </remarks>
public sealed record MakerActive : Evidence
{
    /// <summary>States that the piece names a maker.</summary>
    /// <param name="maker">The id or name of the maker.</param>
    /// <param name="from">When the firm, name form or address began, or null.</param>
    /// <param name="until">When it ended, or null.</param>
    /// <param name="part">The part that names it, or null.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="entries">Ids of the reference file on which this rests, or null for none.</param>
    /// <param name="reasons">How this came about, or null for nothing to say.</param>
    public MakerActive(
        string maker,
        EvidenceDate? from = null,
        EvidenceDate? until = null,
        string? part = null,
        string? source = null,
        IEnumerable<string>? entries = null,
        IEnumerable<Reason>? reasons = null)
        : base(part, source, entries, reasons)
    {
        Maker = Guard.NotNull(maker, nameof(maker));
        From = from;
        Until = until;
    }

    /// <inheritdoc/>
    public override string Kind => "maker-active";

    /// <summary>The id or name of the maker.</summary>
    public string Maker { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>When the firm, name form or address began, or null.</summary>
    public EvidenceDate? From { get; init; }

    /// <summary>When it ended, or null.</summary>
    public EvidenceDate? Until { get; init; }

    private protected override bool IsUncertain => From is { IsUncertain: true } || Until is { IsUncertain: true };

    private protected override void State(ref NestedWindows windows, Assumptions house)
    {
        int from = From?.FirstDay(house) ?? DayNumber.Open;
        int until = Until?.LastDay(house) ?? DayNumber.Open;
        windows.State(DayNumber.PlusYears(from, -house.MakerYears), DayNumber.PlusYears(until, house.MakerYears), house.MakerWide);
        windows.State(from, until, house.MakerSpan);
    }
}
