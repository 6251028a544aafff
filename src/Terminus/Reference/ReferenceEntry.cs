namespace Terminus;

/// <summary>
/// One entry of a reference file: something known for good under a stable id, with where it comes from.
/// </summary>
/// <remarks>
/// A closed family: <see cref="FeatureEntry"/>, <see cref="QuestionEntry"/>, <see cref="PatentEntry"/>, <see cref="MakerEntry"/>,
/// <see cref="AdvertEntry"/> and <see cref="MarkEntry"/>. Two entries are equal when their content is, wherever they stand.
/// </remarks>
public abstract record ReferenceEntry
{
    private protected ReferenceEntry(string id, string? source, ReferenceOrigin origin, string? note)
    {
        Id = id;
        Source = source;
        Origin = origin;
        Note = note;
    }

    /// <summary>Which kind of entry this is.</summary>
    public abstract ReferenceKind Kind { get; }

    /// <summary>The stable id, unique among the entries of its kind. Case counts.</summary>
    public string Id { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The publication or record it rests on, or null where none is named.</summary>
    public string? Source { get; init; }

    /// <summary>Whether it was read there, recalled, or made up.</summary>
    public ReferenceOrigin Origin { get; init; }

    /// <summary>What else is to be known: disagreements of sources, how a date was chosen. Null for nothing.</summary>
    public string? Note { get; init; }

    /// <summary>Where the entry stands in the document it was read from, or null; no part of its content.</summary>
    internal DocumentPlace? Place { get; init; }

    /// <summary>Whether the other entry has the same content. The document it stands in does not count.</summary>
    /// <param name="other">The other entry, or null.</param>
    public virtual bool Equals(ReferenceEntry? other)
        => ReferenceEquals(this, other)
            || (other is not null && EqualityContract == other.EqualityContract
                && Id == other.Id && Source == other.Source && Origin == other.Origin && Note == other.Note);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Id);
}
