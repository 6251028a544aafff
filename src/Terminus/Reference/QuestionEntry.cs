namespace Terminus;

/// <summary>
/// A question to put to a piece, such as "which catch?", whose answers are the features that name it. The answers exclude each other
/// on one part.
/// </summary>
public sealed record QuestionEntry : ReferenceEntry
{
    /// <summary>States a question.</summary>
    /// <param name="id">The stable id.</param>
    /// <param name="text">The question as it is put to people.</param>
    /// <param name="objects">The kinds of object it can be asked about, or null for all.</param>
    /// <param name="part">The part to look at, or null for the whole piece.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="origin">Whether it was read there, recalled or made up.</param>
    /// <param name="note">What else is to be known, or null.</param>
    public QuestionEntry(
        string id,
        string text,
        IEnumerable<string>? objects = null,
        string? part = null,
        string? source = null,
        ReferenceOrigin origin = ReferenceOrigin.Source,
        string? note = null)
        : base(id, source, origin, note)
    {
        Text = text;
        Objects = ValueList.Of(objects);
        Part = part;
    }

    /// <inheritdoc/>
    public override ReferenceKind Kind => ReferenceKind.Question;

    /// <summary>The question as it is put to people.</summary>
    public string Text { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The kinds of object it can be asked about, such as "brooch"; empty for all.</summary>
    public IReadOnlyList<string> Objects { get; init => field = ValueList.Of(value); } = ValueList<string>.Empty;

    /// <summary>The part to look at, such as "catch", or null for the whole piece.</summary>
    public string? Part { get; init; }

    /// <summary>Whether it can be asked about a kind of object. A piece that names none is asked everything.</summary>
    /// <param name="objectKind">The kind of object, or null where it is not stated. Case does not count.</param>
    public bool AppliesTo(string? objectKind)
        => objectKind is null || Objects.Count == 0 || Objects.Contains(objectKind, StringComparer.OrdinalIgnoreCase);
}
