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
    private protected Evidence(string? part, string? source, IEnumerable<string>? entries, IEnumerable<Reason>? reasons)
    {
        Part = part;
        Source = source;
        Entries = ValueList.Of(entries);
        Reasons = ValueList.Of(reasons);
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

    /// <summary>The nested windows that the item states, widest first; none where it says nothing of the date.</summary>
    /// <param name="assumptions">The house defaults, or null for <see cref="Assumptions.House"/>.</param>
    public IReadOnlyList<StatedWindow> StatedWindows(Assumptions? assumptions = null)
    {
        var days = new StatedDays(1);
        StateInto(days, assumptions ?? Assumptions.House);
        return ValueList.Of<StatedWindow>(days.ToWindows(0));
    }

    /// <summary>Adds the item's windows to <paramref name="days"/> and closes the item.</summary>
    internal void StateInto(StatedDays days, Assumptions house)
    {
        var windows = new NestedWindows(days, IsUncertain ? house.UncertainCap : 1);
        State(ref windows, house);
        days.Close();
    }

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
}
