namespace Terminus;

/// <summary>
/// One item of dating evidence. The family is closed; <see cref="Opinion"/> is the door for everything that has no kind of its own.
/// </summary>
/// <remarks>
/// An item is immutable and equal to another when every field is, source and part included. It states nested windows, widest
/// first, from its own fields and from the house defaults (<see cref="Assumptions"/>). An item without a window says nothing of
/// the date, and is kept all the same.
/// </remarks>
public abstract record Evidence
{
    // What the item states under the assumptions last asked for; the same items come again and again. No part of the item's value.
    private KeptWindows? kept;

    private protected Evidence(string? part, string? source, IEnumerable<string>? entries, IEnumerable<Reason>? reasons)
    {
        Part = part;
        Source = source;
        Entries = ValueList.Of(entries);
        Reasons = ValueList.Of(reasons);
    }

    /// <summary>The same item, to be changed.</summary>
    /// <param name="original">The item.</param>
    protected Evidence(Evidence original)
    {
        Part = original.Part;
        Source = original.Source;
        Entries = original.Entries;
        Reasons = original.Reasons;
    }

    /// <summary>The stable name of the kind, such as <c>patent-issued</c>.</summary>
    public abstract string Kind { get; }

    /// <summary>The part that shows it ("back", "pin", "box"), or null where it speaks for the whole piece.</summary>
    public string? Part { get; init; }

    /// <summary>Where the item comes from, or null. Two witnesses differ in their source.</summary>
    public string? Source { get; init; }

    /// <summary>The ids of the entries of the reference file on which the item rests; none where it rests on the piece alone.</summary>
    public IReadOnlyList<string> Entries { get; init => field = ValueList.Of(value); } = ValueList<string>.Empty;

    /// <summary>How the item came about: older patents that it stands for, readings set aside, warnings. May be empty.</summary>
    public IReadOnlyList<Reason> Reasons { get; init => field = ValueList.Of(value); } = ValueList<Reason>.Empty;

    /// <summary>Whether another item is of the same kind and every field is equal.</summary>
    /// <param name="other">The other item, or null.</param>
    public virtual bool Equals(Evidence? other)
        => ReferenceEquals(this, other)
            || (other is not null && EqualityContract == other.EqualityContract
                && string.Equals(Part, other.Part, StringComparison.Ordinal) && string.Equals(Source, other.Source, StringComparison.Ordinal)
                && Entries.Equals(other.Entries) && Reasons.Equals(other.Reasons));

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        int part = Part is null ? 0 : StringComparer.Ordinal.GetHashCode(Part);
        int source = Source is null ? 0 : StringComparer.Ordinal.GetHashCode(Source);
        return unchecked((((((((EqualityContract.GetHashCode() * 31) + part) * 31) + source) * 31) + Entries.GetHashCode()) * 31) + Reasons.GetHashCode());
    }

    /// <summary>The nested windows that the item states, widest first; none where it says nothing of the date.</summary>
    /// <param name="assumptions">The house defaults, or null for <see cref="Assumptions.House"/>.</param>
    public IReadOnlyList<StatedWindow> StatedWindows(Assumptions? assumptions = null) => StatedDay.ToWindows(WindowsUnder(assumptions ?? Assumptions.House));

    /// <summary>The nested windows that the item states, widest first, in day numbers.</summary>
    internal ReadOnlySpan<StatedDay> WindowsUnder(Assumptions house)
    {
        KeptWindows? known = kept;
        if (known is null || !ReferenceEquals(known.House, house))
        {
            var windows = new NestedWindows(IsUncertain ? house.UncertainCap : 1);
            State(ref windows, house);
            kept = known = new KeptWindows(house, windows.ToArray());
        }

        return known.Windows;
    }

    /// <summary>Adds the item with its windows to <paramref name="days"/>.</summary>
    internal void StateInto(StatedDays days, Assumptions house) => days.AddItem(WindowsUnder(house));

    /// <summary>Whether a date in the item is uncertain (<c>?</c>), which caps the whole item.</summary>
    private protected abstract bool IsUncertain { get; }

    private protected abstract void State(ref NestedWindows windows, Assumptions house);

    /// <summary>Whether even the widest window is only what is usual, as where a feature has no first date.</summary>
    internal virtual bool IsUsageOnly => false;

    /// <summary>
    /// The day before which the law of the mark allows no piece, or <see cref="DayNumber.Open"/>: a patent's issue date is the
    /// earliest date of a piece that bears it.
    /// </summary>
    internal virtual int Floor(Assumptions house) => DayNumber.Open;

    private sealed class KeptWindows(Assumptions house, StatedDay[] windows)
    {
        internal Assumptions House { get; } = house;

        internal StatedDay[] Windows { get; } = windows;
    }
}
