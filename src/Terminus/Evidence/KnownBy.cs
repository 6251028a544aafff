namespace Terminus;

/// <summary>A record shows that the piece existed: a receipt, a photograph, a probate list, an accession.</summary>
/// <remarks>
/// States: until the date (<see cref="Assumptions.KnownUntil"/>); where it was bought new, the
/// <see cref="Assumptions.BoughtNewYears"/> before the date (<see cref="Assumptions.BoughtNew"/>).
/// </remarks>
public sealed record KnownBy : Evidence
{
    /// <summary>States that a record shows the piece.</summary>
    /// <param name="date">The date of the record.</param>
    /// <param name="what">What the record is, or null.</param>
    /// <param name="boughtNew">Whether it shows that the piece was then sold as new.</param>
    /// <param name="part">The part it speaks of, or null.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="entries">Ids of the reference file on which this rests, or null for none.</param>
    /// <param name="reasons">How this came about, or null for nothing to say.</param>
    public KnownBy(
        EvidenceDate date,
        string? what = null,
        bool boughtNew = false,
        string? part = null,
        string? source = null,
        IEnumerable<string>? entries = null,
        IEnumerable<Reason>? reasons = null)
        : base(part, source, entries, reasons)
    {
        Date = Guard.NotNull(date, nameof(date));
        What = what;
        BoughtNew = boughtNew;
    }

    /// <inheritdoc/>
    public override string Kind => "known-by";

    /// <summary>The date of the record.</summary>
    public EvidenceDate Date { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>What the record is, or null.</summary>
    public string? What { get; init; }

    /// <summary>Whether it shows that the piece was then sold as new.</summary>
    public bool BoughtNew { get; init; }

    private protected override bool IsUncertain => Date.IsUncertain;

    private protected override void State(ref NestedWindows windows, Assumptions house)
    {
        int until = Date.LastDay(house);
        windows.State(DayNumber.Open, until, house.KnownUntil);
        if (BoughtNew)
        {
            windows.State(DayNumber.PlusYears(Date.FirstDay(house), -house.BoughtNewYears), until, house.BoughtNew);
        }
    }
}
