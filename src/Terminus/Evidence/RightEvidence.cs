namespace Terminus;

/// <summary>A right that a piece speaks of: granted, registered or applied for, with its office, kind and number as far as they are known.</summary>
/// <remarks>The family is closed: <see cref="PatentIssued"/>, <see cref="PatentPending"/> and <see cref="RightRegistered"/>.</remarks>
public abstract record RightEvidence : Evidence
{
    private protected RightEvidence(
        string? office, string? right, string? number, string? part, string? source, IEnumerable<string>? entries, IEnumerable<Reason>? reasons)
        : base(part, source, entries, reasons)
    {
        Office = office;
        Right = right;
        Number = number;
    }

    /// <summary>WIPO ST.3 code of the office, or null where unknown.</summary>
    public string? Office { get; init; }

    /// <summary>The right, such as <c>utility</c>, <c>design</c> or <c>registered-design</c>, or null where unknown.</summary>
    public string? Right { get; init; }

    /// <summary>The number as normalised digits, or null where none is shown or known.</summary>
    public string? Number { get; init; }

    /// <summary>
    /// What a grant or a registration says: from it, from its narrower estimates with what confidence they leave, and from it to the end of
    /// its term where it has one.
    /// </summary>
    private protected static void StateGrant(
        ref NestedWindows windows, Assumptions house, EvidenceDate granted, int? termYears, double from, double inForce)
    {
        int start = granted.FirstDay(house);
        windows.State(start, DayNumber.Open, from);
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
