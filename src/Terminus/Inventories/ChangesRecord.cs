using NodaTime;

namespace Terminus;

/// <summary>
/// What a result says of a piece, as far as two results are compared: its dates, the items that they rest on, and under what it was dated.
/// </summary>
/// <remarks>An end that is only the day of the opinion is open here, so that a later opinion alone moves nothing.</remarks>
public sealed record ChangesRecord
{
    internal ChangesRecord(string id, LocalDate? asOf, double confidence)
    {
        Id = id;
        AsOf = asOf;
        Confidence = DocumentWriting.Round(confidence);
    }

    /// <summary>The id of the piece.</summary>
    public string Id { get; }

    /// <summary>The day of the opinion, or null where the result does not say.</summary>
    public LocalDate? AsOf { get; }

    /// <summary>The level of <see cref="Interval"/>.</summary>
    public double Confidence { get; }

    /// <summary>The layers of the reference, lowest first.</summary>
    public IReadOnlyList<ReferenceLayer> Layers { get; internal init => field = ValueList.Of(value); } = ValueList<ReferenceLayer>.Empty;

    /// <summary>The name and version of the assumptions.</summary>
    public string Assumptions { get; internal init; } = "";

    /// <summary>What firm evidence leaves, or null where it excludes itself.</summary>
    public DateWindow? Possible { get; internal init; }

    /// <summary>The interval at the level asked for, or null where there is none.</summary>
    public DateWindow? Interval { get; internal init; }

    /// <summary>The likely interval, or null where there is none.</summary>
    public DateWindow? Likely { get; internal init; }

    /// <summary>The items of the whole, in order; those of parts that are not original are left out.</summary>
    public IReadOnlyList<ChangesItem> Items { get; internal init => field = ValueList.Of(value); } = ValueList<ChangesItem>.Empty;

    /// <summary>What is compared of a dated piece.</summary>
    /// <param name="dating">The dated piece.</param>
    public static ChangesRecord Of(PieceDating dating)
    {
        Guard.NotNull(dating, nameof(dating));
        Dating whole = dating.Dating;
        return new ChangesRecord(dating.Piece.Id, whole.AsOf, dating.Confidence)
        {
            Layers = dating.Reference.Layers,
            Assumptions = whole.Assumptions.ToString(),
            Possible = OpenAt(whole.AsOfDay, whole.Possible),
            Interval = OpenAt(whole.AsOfDay, dating.Interval?.Window),
            Likely = OpenAt(whole.AsOfDay, dating.Likely?.Window),
            Items = ValueList.Of(whole.Evidence.Select(e => new ChangesItem(e.Kind, e.Part, e.StatedWindows(whole.Assumptions), e.Entries))),
        };
    }

    /// <summary>Reads the results of a file: one a line, one document, or a list of them. Lines are read as they are asked for.</summary>
    /// <param name="text">The file.</param>
    /// <param name="fileName">The name to show in problems, or null.</param>
    /// <returns>For each result what it says, or the problem for which it cannot be compared.</returns>
    public static IEnumerable<DocumentResult<ChangesRecord>> ReadAll(TextReader text, string? fileName = null)
        => ChangesReader.ReadAll(Guard.NotNull(text, nameof(text)), fileName);

    /// <summary>Such as <c>QH-014: 1956-03-06/1961-07-11</c>.</summary>
    public override string ToString() => Id + ": " + (Interval?.ToString() ?? "no answer");

    internal static DateWindow? OpenAt(int asOf, DateWindow? window)
        => window is { } known && known.LastDay == asOf ? DateWindow.OfDays(known.FirstDay, DayNumber.Open) : window;
}
