namespace Terminus;

/// <summary>Somebody's windows and confidences, with who says so and what it rests on: the door for evidence of no other kind.</summary>
/// <remarks>
/// States its windows as given: each is cut to the one before it, a window for which nothing is left is dropped, and a
/// confidence never rises as they narrow.
/// </remarks>
public sealed record Opinion : Evidence
{
    /// <summary>States an opinion.</summary>
    /// <param name="windows">Nested windows, widest first.</param>
    /// <param name="by">Who says so, or null.</param>
    /// <param name="restsOn">What it rests on; opinions that rest on the same thing are not two witnesses. Null for nothing named.</param>
    /// <param name="label">What kind of opinion it is, in a word or two, or null.</param>
    /// <param name="part">The part it speaks of, or null.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="entries">Ids of the reference file on which this rests, or null for none.</param>
    /// <param name="reasons">How this came about, or null for nothing to say.</param>
    public Opinion(
        IEnumerable<StatedWindow> windows,
        string? by = null,
        IEnumerable<string>? restsOn = null,
        string? label = null,
        string? part = null,
        string? source = null,
        IEnumerable<string>? entries = null,
        IEnumerable<Reason>? reasons = null)
        : base(part, source, entries, reasons)
    {
        Windows = ValueList.Of(Guard.NotNull(windows, nameof(windows)));
        By = by;
        RestsOn = ValueList.Of(restsOn);
        Label = label;
    }

    /// <summary>States an opinion of one window.</summary>
    /// <param name="window">The window.</param>
    /// <param name="confidence">From 0 to 1.</param>
    /// <param name="by">Who says so, or null.</param>
    /// <param name="part">The part it speaks of, or null.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence lies outside [0, 1].</exception>
    public Opinion(DateWindow window, double confidence, string? by = null, string? part = null)
        : this([new StatedWindow(window, confidence)], by, part: part)
    {
    }

    /// <inheritdoc/>
    public override string Kind => "opinion";

    /// <summary>The windows as given, widest first.</summary>
    public IReadOnlyList<StatedWindow> Windows { get; init => field = ValueList.Of(value); } = ValueList<StatedWindow>.Empty;

    /// <summary>Who says so, or null.</summary>
    public string? By { get; init; }

    /// <summary>What it rests on; may be empty.</summary>
    public IReadOnlyList<string> RestsOn { get; init => field = ValueList.Of(value); } = ValueList<string>.Empty;

    /// <summary>What kind of opinion it is, or null.</summary>
    public string? Label { get; init; }

    private protected override bool IsUncertain => false;

    private protected override void State(ref NestedWindows windows, Assumptions house)
    {
        for (int i = 0; i < Windows.Count; i++)
        {
            StatedWindow stated = Windows[i];
            windows.State(stated.Window.FirstDay, stated.Window.LastDay, stated.Confidence);
        }
    }
}
