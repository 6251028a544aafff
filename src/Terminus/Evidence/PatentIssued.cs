namespace Terminus;

/// <summary>
/// The piece bears one or more patents, the newest granted on a known day or in a known window. The issue date is the earliest
/// date of such a piece, never the date of the piece.
/// </summary>
/// <remarks>
/// States: from the issue (<see cref="Assumptions.PatentIssuedFrom"/>), and from the narrower windows of an estimated issue
/// day with what confidence they leave; from the issue to the end of the longest term the law of that day allowed plus
/// <see cref="Assumptions.TermSlackYears"/> (<see cref="Assumptions.PatentInForce"/>).
/// </remarks>
public sealed record PatentIssued : RightEvidence
{
    /// <summary>States that the piece bears a granted patent.</summary>
    /// <param name="issued">When the newest patent was granted.</param>
    /// <param name="office">WIPO ST.3 code of the office, or null where unknown.</param>
    /// <param name="right">Such as <c>utility</c>, <c>design</c>, <c>patent</c>, or null where unknown.</param>
    /// <param name="number">The number as normalised digits, or null where the piece shows none.</param>
    /// <param name="termYears">The longest term in years, or null for what <see cref="LegalTerms"/> says of the office, right and day.</param>
    /// <param name="part">The part that bears it, or null.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="entries">Ids of the reference file on which this rests, or null for none.</param>
    /// <param name="reasons">How this came about, or null for nothing to say.</param>
    /// <exception cref="ArgumentOutOfRangeException">The term is negative or above 1000 years.</exception>
    public PatentIssued(
        EvidenceDate issued,
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
        Issued = Guard.NotNull(issued, nameof(issued));
        TermYears = Guard.Years(termYears, nameof(termYears));
    }

    /// <inheritdoc/>
    public override string Kind => "patent-issued";

    /// <summary>When the newest patent was granted.</summary>
    public EvidenceDate Issued { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The longest term in years, or null for what the law of the day allowed.</summary>
    public int? TermYears { get; init => field = Guard.Years(value, nameof(value)); }

    private protected override bool IsUncertain => Issued.IsUncertain;

    private protected override void State(ref NestedWindows windows, Assumptions house)
        => StateGrant(ref windows, house, Issued, TermYears ?? LegalTerms.Longest(Office, Right, Issued.Outer),
            house.PatentIssuedFrom, house.PatentInForce);

    internal override int Floor(Assumptions house)
        => Math.Min(house.PatentIssuedFrom, IsUncertain ? house.UncertainCap : 1) >= house.FirmAt ? Issued.FirstDay(house) : DayNumber.Open;
}
