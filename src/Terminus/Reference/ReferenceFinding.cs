namespace Terminus;

/// <summary>An entry of a reference file that makes no sense, with its place and the reason.</summary>
public sealed record ReferenceFinding
{
    internal ReferenceFinding(ReferenceEntry entry, Reason reason, string below)
    {
        Kind = entry.Kind;
        Id = entry.Id;
        Reason = reason;
        File = entry.Place?.File;
        Line = entry.Place?.Line;
        Path = (entry.Place?.Path ?? "") + below;
    }

    /// <summary>The kind of the entry.</summary>
    public ReferenceKind Kind { get; }

    /// <summary>The id of the entry.</summary>
    public string Id { get; }

    /// <summary>What makes no sense, as a rule id (<c>reference.…</c>) with its parameters; <see cref="Rule"/> is the id alone.</summary>
    public Reason Reason { get; }

    /// <summary>The stable id of the rule.</summary>
    public string Rule => Reason.Rule;

    /// <summary>The file the entry was read from, or null.</summary>
    public string? File { get; }

    /// <summary>The line on which the entry starts, from 1, or null for an entry that was not read from a document.</summary>
    public int? Line { get; }

    /// <summary>The JSON path of the member concerned, such as <c>$.patents[3].filed</c>; without a document only its end, <c>.filed</c>.</summary>
    public string Path { get; }
}
