namespace Terminus;

/// <summary>An item of evidence that differs between two results, with the entries that moved it.</summary>
public sealed record ChangesCause
{
    internal ChangesCause(ChangesItem? before, ChangesItem? after, IEnumerable<string> entries)
    {
        Before = before;
        After = after;
        Entries = ValueList.Of(entries);
    }

    /// <summary>The item before, or null where it is new.</summary>
    public ChangesItem? Before { get; }

    /// <summary>The item after, or null where it is gone.</summary>
    public ChangesItem? After { get; }

    /// <summary>The kind of the item.</summary>
    public string Kind => (After ?? Before)!.Kind;

    /// <summary>The part of the item, or null for the whole piece.</summary>
    public string? Part => (After ?? Before)!.Part;

    /// <summary>
    /// The ids of the reference file that moved the item: those that it gained or lost, else all that it rests on. Empty where the
    /// description of the piece itself changed.
    /// </summary>
    public IReadOnlyList<string> Entries { get; internal init => field = ValueList.Of(value); } = ValueList<string>.Empty;

    /// <summary>Whether this item alone moves the dates; false where only several together do.</summary>
    public bool Alone { get; internal init; }
}
