namespace Terminus;

/// <summary>What a number of a register says: its windows, widest first, and why. An outcome, never an exception.</summary>
/// <remarks>
/// The windows are those of the date in the register (issue, registration, or application where the register numbers
/// applications), not of the making of a thing. Two readings are equal when all their members are.
/// </remarks>
public sealed record NumberReading
{
    internal NumberReading(string office, string right, string number, NumberOutcome outcome)
    {
        Office = office;
        Right = right;
        Number = number;
        Outcome = outcome;
    }

    /// <summary>The office as a code of WIPO standard ST.3, such as <c>US</c>.</summary>
    public string Office { get; }

    /// <summary>The right, such as <c>utility</c> or <c>registered-design</c>.</summary>
    public string Right { get; }

    /// <summary>
    /// The number in plain digits, with <c>?</c> for a lost digit, <c>*</c> for lost leading digits, and <c>/1897</c> behind it where the
    /// year belongs to it; the text as given where no number could be read.
    /// </summary>
    public string Number { get; }

    /// <summary>How the reading ended.</summary>
    public NumberOutcome Outcome { get; }

    /// <summary>The nested windows, widest first, with confidences that never rise; empty where the number has no date.</summary>
    public IReadOnlyList<StatedWindow> Windows { get; internal init => field = ValueList.Of(value); } = ValueList<StatedWindow>.Empty;

    /// <summary>The single likeliest day or span, or null where there is none.</summary>
    public DateWindow? Best { get; internal init; }

    /// <summary>The separate spans that come into question where the number leaves several; otherwise empty.</summary>
    public IReadOnlyList<DateWindow> Alternatives { get; internal init => field = ValueList.Of(value); } = ValueList<DateWindow>.Empty;

    /// <summary>Why, in the order of the reading.</summary>
    public IReadOnlyList<Reason> Reasons { get; internal init => field = ValueList.Of(value); } = ValueList<Reason>.Empty;

    /// <summary>The sources of the rows that the windows rest on; empty where they rest on memory alone.</summary>
    public IReadOnlyList<string> Sources { get; internal init => field = ValueList.Of(value); } = ValueList<string>.Empty;

    /// <summary>The standing of the rows that the outer window rests on: the weakest of them.</summary>
    public RowOrigin Origin { get; internal init; }

    /// <summary>
    /// The identifiers of the document in the form of WIPO standards ST.3 and ST.16, such as <c>US2474442A</c>, the likeliest first.
    /// Empty where the number is not fully legible or the right has no document.
    /// </summary>
    public IReadOnlyList<string> DocumentIds { get; internal init => field = ValueList.Of(value); } = ValueList<string>.Empty;

    /// <summary>The likeliest identifier of the document, or null where there is none.</summary>
    public string? DocumentId => DocumentIds.Count == 0 ? null : DocumentIds[0];

    /// <summary>The ways in which records write this number, such as <c>US 2,474,442</c>.</summary>
    public IReadOnlyList<string> Writings { get; internal init => field = ValueList.Of(value); } = ValueList<string>.Empty;

    /// <summary>The widest window, or any date where the number has none.</summary>
    public DateWindow Outer => Windows.Count == 0 ? DateWindow.Any : Windows[0].Window;

    /// <summary>Such as <c>US utility 223898: 1880-01-01/1880-12-31</c>.</summary>
    public override string ToString()
        => Office + " " + Right + " " + Number + ": " + (Windows.Count == 0 ? Outcome.ToString() : Outer.ToString());
}
