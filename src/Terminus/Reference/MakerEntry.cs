namespace Terminus;

/// <summary>A maker: when it was active, the forms of its name and its addresses, each with its time.</summary>
public sealed record MakerEntry : ReferenceEntry
{
    /// <summary>States what is known of a maker.</summary>
    /// <param name="id">The stable id.</param>
    /// <param name="name">The usual name.</param>
    /// <param name="from">When it began, or null.</param>
    /// <param name="until">When it ended, or null.</param>
    /// <param name="forms">The forms of its name, or null for none.</param>
    /// <param name="addresses">Its addresses, or null for none.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="origin">Whether it was read there, recalled or made up.</param>
    /// <param name="note">What else is to be known, or null.</param>
    public MakerEntry(
        string id,
        string name,
        EdtfDate? from = null,
        EdtfDate? until = null,
        IEnumerable<MakerDetail>? forms = null,
        IEnumerable<MakerDetail>? addresses = null,
        string? source = null,
        ReferenceOrigin origin = ReferenceOrigin.Source,
        string? note = null)
        : base(id, source, origin, note)
    {
        Name = name;
        From = from;
        Until = until;
        Forms = ValueList.Of(forms);
        Addresses = ValueList.Of(addresses);
    }

    /// <inheritdoc/>
    public override ReferenceKind Kind => ReferenceKind.Maker;

    /// <summary>The usual name.</summary>
    public string Name { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>When it began, or null where not known.</summary>
    public EdtfDate? From { get; init; }

    /// <summary>When it ended, or null where it did not or it is not known.</summary>
    public EdtfDate? Until { get; init; }

    /// <summary>The forms of its name as they stand on goods, each with its time.</summary>
    public IReadOnlyList<MakerDetail> Forms { get; init => field = ValueList.Of(value); } = ValueList<MakerDetail>.Empty;

    /// <summary>Its addresses as they stand on goods and boxes, each with its time.</summary>
    public IReadOnlyList<MakerDetail> Addresses { get; init => field = ValueList.Of(value); } = ValueList<MakerDetail>.Empty;
}

/// <summary>A form of a maker's name, or an address of it, with the time in which it was used.</summary>
public sealed record MakerDetail
{
    /// <summary>States a form of name or an address.</summary>
    /// <param name="text">The name or address as it stands on goods.</param>
    /// <param name="from">When its use began, or null.</param>
    /// <param name="until">When its use ended, or null.</param>
    public MakerDetail(string text, EdtfDate? from = null, EdtfDate? until = null)
    {
        Text = text;
        From = from;
        Until = until;
    }

    /// <summary>The name or address as it stands on goods.</summary>
    public string Text { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>When its use began, or null where not known.</summary>
    public EdtfDate? From { get; init; }

    /// <summary>When its use ended, or null where it did not or it is not known.</summary>
    public EdtfDate? Until { get; init; }
}
