namespace Terminus;

/// <summary>One item of evidence as a result keeps it: its kind, its part, its windows and the entries it rests on.</summary>
public sealed record ChangesItem
{
    internal ChangesItem(string kind, string? part, IEnumerable<StatedWindow> windows, IEnumerable<string> entries)
    {
        Kind = kind;
        Part = part;
        Windows = ValueList.Of(windows.Select(w => w.WithConfidence(DocumentWriting.Round(w.Confidence))));
        Entries = ValueList.Of(entries);
    }

    /// <summary>The kind, such as <c>feature-seen</c>.</summary>
    public string Kind { get; }

    /// <summary>The part, or null for the whole piece.</summary>
    public string? Part { get; }

    /// <summary>The windows it states, widest first, not cut to the day of the opinion; confidences to 12 decimals, as results have them.</summary>
    public IReadOnlyList<StatedWindow> Windows { get; }

    /// <summary>The ids of the reference file on which it rests; empty where it rests on the piece alone.</summary>
    public IReadOnlyList<string> Entries { get; }
}
