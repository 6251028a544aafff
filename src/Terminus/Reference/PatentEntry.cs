namespace Terminus;

/// <summary>
/// A patent, utility model or registered design that was looked up. What it says of its number beats the registers.
/// </summary>
/// <remarks>The id is office, right and number with single spaces: <c>US utility 2999999</c>. <see cref="PatentId"/> makes and reads it.</remarks>
public sealed record PatentEntry : ReferenceEntry
{
    /// <summary>States what is known of a patent.</summary>
    /// <param name="id">Office, right and number, such as <c>US utility 2999999</c>.</param>
    /// <param name="filed">When it was first filed anywhere, or null.</param>
    /// <param name="issued">When it was issued, granted or registered, or null.</param>
    /// <param name="title">What it is for, or null.</param>
    /// <param name="assignee">To whom it was assigned, or null.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="origin">Whether it was read there, recalled or made up.</param>
    /// <param name="note">What else is to be known, or null.</param>
    /// <exception cref="ArgumentException">The id is not an office, a right and a number.</exception>
    public PatentEntry(
        string id,
        EdtfDate? filed = null,
        EdtfDate? issued = null,
        string? title = null,
        string? assignee = null,
        string? source = null,
        ReferenceOrigin origin = ReferenceOrigin.Source,
        string? note = null)
        : base(id, source, origin, note)
    {
        if (!PatentId.TryParse(id, out PatentId parsed))
        {
            throw new ArgumentException(PatentId.Wanted, nameof(id));
        }

        (Office, Right, Number) = (parsed.Office, parsed.Right, parsed.Number);
        Filed = filed;
        Issued = issued;
        Title = title;
        Assignee = assignee;
    }

    /// <inheritdoc/>
    public override ReferenceKind Kind => ReferenceKind.Patent;

    /// <summary>The office, as a WIPO ST.3 code: <c>US</c>.</summary>
    public string Office { get; }

    /// <summary>The right, such as <c>utility</c>, <c>design</c> or <c>registered-design</c>.</summary>
    public string Right { get; }

    /// <summary>The number as the office writes it, without separators: <c>2999999</c>, <c>10811/97</c>.</summary>
    public string Number { get; }

    /// <summary>When it was first filed anywhere, or null where not known.</summary>
    public EdtfDate? Filed { get; init; }

    /// <summary>When it was issued, granted or registered: the earliest date of a piece that bears it. Null where not known.</summary>
    public EdtfDate? Issued { get; init; }

    /// <summary>What it is for, or null.</summary>
    public string? Title { get; init; }

    /// <summary>To whom it was assigned, or null.</summary>
    public string? Assignee { get; init; }
}
