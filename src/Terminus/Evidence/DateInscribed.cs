namespace Terminus;

/// <summary>What an inscribed date is the date of.</summary>
public enum InscriptionPurpose
{
    /// <summary>A presentation: the piece was given on that day, so it is not younger and seldom much older.</summary>
    Presentation,

    /// <summary>An event remembered. The piece is usually not younger, but old dates are put on new pieces.</summary>
    Commemorative,

    /// <summary>"Since" or "established": a firm's age, which says nothing of the piece.</summary>
    Since,
}

/// <summary>The piece carries an engraved or printed date that is not a patent's.</summary>
/// <remarks>
/// States for a presentation: until the date (<see cref="Assumptions.PresentationUntil"/>), and the
/// <see cref="Assumptions.PresentationYears"/> before it (<see cref="Assumptions.PresentationSpan"/>). For an event remembered: until
/// the date (<see cref="Assumptions.InscribedUntil"/>). For "since": nothing.
/// </remarks>
public sealed record DateInscribed : Evidence
{
    /// <summary>States that the piece carries a date.</summary>
    /// <param name="date">The date inscribed.</param>
    /// <param name="purpose">What it is the date of.</param>
    /// <param name="text">The words, or null.</param>
    /// <param name="part">The part that carries it, or null.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="entries">Ids of the reference file on which this rests, or null for none.</param>
    /// <param name="reasons">How this came about, or null for nothing to say.</param>
    public DateInscribed(
        EvidenceDate date,
        InscriptionPurpose purpose = InscriptionPurpose.Presentation,
        string? text = null,
        string? part = null,
        string? source = null,
        IEnumerable<string>? entries = null,
        IEnumerable<Reason>? reasons = null)
        : base(part, source, entries, reasons)
    {
        Date = Guard.NotNull(date, nameof(date));
        Purpose = purpose;
        Text = text;
    }

    /// <inheritdoc/>
    public override string Kind => "date-inscribed";

    /// <summary>The date inscribed.</summary>
    public EvidenceDate Date { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>What it is the date of.</summary>
    public InscriptionPurpose Purpose { get; init; }

    /// <summary>The words, or null.</summary>
    public string? Text { get; init; }

    private protected override bool IsUncertain => Date.IsUncertain;

    private protected override void State(ref NestedWindows windows, Assumptions house)
    {
        if (Purpose == InscriptionPurpose.Since)
        {
            return;
        }

        bool presented = Purpose == InscriptionPurpose.Presentation;
        int until = Date.LastDay(house);
        windows.State(DayNumber.Open, until, presented ? house.PresentationUntil : house.InscribedUntil);
        if (presented)
        {
            windows.State(DayNumber.PlusYears(Date.FirstDay(house), -house.PresentationYears), until, house.PresentationSpan);
        }
    }
}
