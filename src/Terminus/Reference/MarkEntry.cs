namespace Terminus;

/// <summary>A wording or mark that a law or custom confines to a period, such as a maker's own mark.</summary>
public sealed record MarkEntry : ReferenceEntry
{
    /// <summary>States what is known of a mark.</summary>
    /// <param name="id">The stable id.</param>
    /// <param name="text">The mark as it stands on goods.</param>
    /// <param name="office">The country whose law or custom it is, as a WIPO ST.3 code, or null.</param>
    /// <param name="maker">The id of the maker whose mark it is, or null.</param>
    /// <param name="from">When its use began, or null.</param>
    /// <param name="until">When its use ended, or null.</param>
    /// <param name="byLaw">Whether a law began it; otherwise custom did.</param>
    /// <param name="ended">What ended it.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="origin">Whether it was read there, recalled or made up.</param>
    /// <param name="note">What else is to be known, or null.</param>
    public MarkEntry(
        string id,
        string text,
        string? office = null,
        string? maker = null,
        EdtfDate? from = null,
        EdtfDate? until = null,
        bool byLaw = false,
        MarkEnd ended = MarkEnd.Custom,
        string? source = null,
        ReferenceOrigin origin = ReferenceOrigin.Source,
        string? note = null)
        : base(id, source, origin, note)
    {
        Text = text;
        Office = office;
        Maker = maker;
        From = from;
        Until = until;
        ByLaw = byLaw;
        Ended = ended;
    }

    /// <inheritdoc/>
    public override ReferenceKind Kind => ReferenceKind.Mark;

    /// <summary>The mark as it stands on goods. Case, spaces and points do not count when it is looked for.</summary>
    public string Text { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The country whose law or custom it is, as a WIPO ST.3 code, or null.</summary>
    public string? Office { get; init; }

    /// <summary>The id of the maker whose mark it is, or null.</summary>
    public string? Maker { get; init; }

    /// <summary>When its use began, or null where not known.</summary>
    public EdtfDate? From { get; init; }

    /// <summary>When its use ended, or null where it did not or it is not known.</summary>
    public EdtfDate? Until { get; init; }

    /// <summary>Whether a law began it; otherwise custom did.</summary>
    public bool ByLaw { get; init; }

    /// <summary>What ended it.</summary>
    public MarkEnd Ended { get; init; }
}
