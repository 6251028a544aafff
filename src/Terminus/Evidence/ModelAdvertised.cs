namespace Terminus;

/// <summary>The same model stands in dated catalogues or advertisements, first and last.</summary>
/// <remarks>
/// States: <see cref="Assumptions.AdvertWideYears"/> before the first to as many after the last
/// (<see cref="Assumptions.AdvertWide"/>); <see cref="Assumptions.AdvertYearsBefore"/> before the first to
/// <see cref="Assumptions.AdvertYearsAfter"/> after the last (<see cref="Assumptions.AdvertNear"/>).
/// </remarks>
public sealed record ModelAdvertised : Evidence
{
    /// <summary>States that the model was advertised.</summary>
    /// <param name="first">The first dated source.</param>
    /// <param name="last">The last dated source, or null where there is one alone.</param>
    /// <param name="what">What the sources are, or null.</param>
    /// <param name="part">The part it speaks of, or null.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="entries">Ids of the reference file on which this rests, or null for none.</param>
    /// <param name="reasons">How this came about, or null for nothing to say.</param>
    public ModelAdvertised(
        EvidenceDate first,
        EvidenceDate? last = null,
        string? what = null,
        string? part = null,
        string? source = null,
        IEnumerable<string>? entries = null,
        IEnumerable<Reason>? reasons = null)
        : base(part, source, entries, reasons)
    {
        First = Guard.NotNull(first, nameof(first));
        Last = last;
        What = what;
    }

    /// <inheritdoc/>
    public override string Kind => "model-advertised";

    /// <summary>The first dated source.</summary>
    public EvidenceDate First { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The last dated source, or null where there is one alone.</summary>
    public EvidenceDate? Last { get; init; }

    /// <summary>What the sources are, or null.</summary>
    public string? What { get; init; }

    private protected override bool IsUncertain => First.IsUncertain || Last is { IsUncertain: true };

    private protected override void State(ref NestedWindows windows, Assumptions house)
    {
        int first = First.FirstDay(house);
        int last = (Last ?? First).LastDay(house);
        windows.State(DayNumber.PlusYears(first, -house.AdvertWideYears), DayNumber.PlusYears(last, house.AdvertWideYears), house.AdvertWide);
        windows.State(DayNumber.PlusYears(first, -house.AdvertYearsBefore), DayNumber.PlusYears(last, house.AdvertYearsAfter), house.AdvertNear);
    }
}
