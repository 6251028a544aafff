namespace Terminus;

/// <summary>An entry of a lower layer that a later layer replaced.</summary>
public sealed record ReferenceReplacement
{
    internal ReferenceReplacement(ReferenceEntry replaced, ReferenceEntry by, ReferenceLayer layer)
    {
        Replaced = replaced;
        By = by;
        Layer = layer;
    }

    /// <summary>The kind of the entry.</summary>
    public ReferenceKind Kind => By.Kind;

    /// <summary>The id of the entry, the same in both layers.</summary>
    public string Id => By.Id;

    /// <summary>What was known before, and counts no more.</summary>
    public ReferenceEntry Replaced { get; }

    /// <summary>What is known now.</summary>
    public ReferenceEntry By { get; }

    /// <summary>The layer that replaced it.</summary>
    public ReferenceLayer Layer { get; }
}
