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
public sealed record PatentIssued : Evidence
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
        : base(part, source, entries, reasons)
    {
        Issued = Guard.NotNull(issued, nameof(issued));
        Office = office;
        Right = right;
        Number = number;
        TermYears = Guard.Years(termYears, nameof(termYears));
    }

    /// <inheritdoc/>
    public override string Kind => "patent-issued";

    /// <summary>When the newest patent was granted.</summary>
    public EvidenceDate Issued { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>WIPO ST.3 code of the office, or null.</summary>
    public string? Office { get; init; }

    /// <summary>The right, such as <c>utility</c>, or null.</summary>
    public string? Right { get; init; }

    /// <summary>The number, or null.</summary>
    public string? Number { get; init; }

    /// <summary>The longest term in years, or null for what the law of the day allowed.</summary>
    public int? TermYears { get; init => field = Guard.Years(value, nameof(value)); }

    private protected override bool IsUncertain => Issued.IsUncertain;

    private protected override void State(ref NestedWindows windows, Assumptions house)
        => StateGrant(ref windows, house, Issued, TermYears ?? LegalTerms.Longest(Office, Right, Issued.Outer),
            house.PatentIssuedFrom, house.PatentInForce);

    internal override int Floor(Assumptions house)
        => Math.Min(house.PatentIssuedFrom, IsUncertain ? house.UncertainCap : 1) >= house.FirmAt ? Issued.FirstDay(house) : DayNumber.Open;

    /// <summary>What a grant or a registration says: from it, from its narrower estimates, and from it to the end of its term, if it has one.</summary>
    internal static void StateGrant(
        ref NestedWindows windows, Assumptions house, EvidenceDate granted, int? termYears, double from, double inForce)
    {
        windows.State(granted.FirstDay(house), DayNumber.Open, from);
        int start = granted.FirstDay(house);
        for (int i = 1; i < granted.Windows.Count; i++)
        {
            // Of two statements that hold with from and with c, both hold with at least from + c - 1 (no independence needed).
            double both = from + granted.Windows[i].Confidence - 1;
            if (both < inForce)
            {
                break;
            }

            start = granted.FirstDay(granted.Windows[i].Window, house);
            windows.State(start, DayNumber.Open, both);
        }

        if (termYears is { } term)
        {
            windows.State(start, DayNumber.PlusYears(granted.LastDay(house), term + house.TermSlackYears), inForce);
        }
    }
}
