namespace Terminus;

/// <summary>The piece bears a registration: a registered design, a utility model, a trade mark, a registry diamond.</summary>
/// <remarks>
/// States: from the registration (<see cref="Assumptions.RegisteredFrom"/>), and from the narrower windows of an estimated day;
/// from it to the end of the longest term plus <see cref="Assumptions.TermSlackYears"/> (<see cref="Assumptions.RegisteredInForce"/>).
/// A trade mark can be renewed for ever, so it has no second window.
/// </remarks>
public sealed record RightRegistered : RightEvidence
{
    /// <summary>States that the piece bears a registration.</summary>
    /// <param name="registered">When the right was registered.</param>
    /// <param name="office">WIPO ST.3 code of the office, or null where unknown.</param>
    /// <param name="right">Such as <c>registered-design</c> or <c>utility-model</c>, or null where unknown.</param>
    /// <param name="number">The number as normalised digits, or null where the piece shows none.</param>
    /// <param name="termYears">The longest term in years, or null for what <see cref="LegalTerms"/> says.</param>
    /// <param name="part">The part that bears it, or null.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="entries">Ids of the reference file on which this rests, or null for none.</param>
    /// <param name="reasons">How this came about, or null for nothing to say.</param>
    /// <exception cref="ArgumentOutOfRangeException">The term is negative or above 1000 years.</exception>
    public RightRegistered(
        EvidenceDate registered,
        string? office = null,
        string? right = null,
        string? number = null,
        int? termYears = null,
        string? part = null,
        string? source = null,
        IEnumerable<string>? entries = null,
        IEnumerable<Reason>? reasons = null)
        : base(office, right, number, part, source, entries, reasons)
    {
        Registered = Guard.NotNull(registered, nameof(registered));
        TermYears = Guard.Years(termYears, nameof(termYears));
    }

    /// <inheritdoc/>
    public override string Kind => "right-registered";

    /// <summary>When the right was registered.</summary>
    public EvidenceDate Registered { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The longest term in years, or null for what the law of the day allowed.</summary>
    public int? TermYears { get; init => field = Guard.Years(value, nameof(value)); }

    private protected override bool IsUncertain => Registered.IsUncertain;

    private protected override void State(ref NestedWindows windows, Assumptions house)
    {
        bool renewable = TermYears is null && string.Equals(Right, "trade-mark", StringComparison.Ordinal);
        int? term = renewable ? null : TermYears ?? LegalTerms.Longest(Office, Right, Registered.Outer);
        StateGrant(ref windows, house, Registered, term, house.RegisteredFrom, house.RegisteredInForce);
    }
}
