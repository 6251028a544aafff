namespace Terminus;

/// <summary>The piece depicts something that first existed at a known time, so it is not older.</summary>
/// <remarks>States: from that time (<see cref="Assumptions.SubjectFrom"/>, or what its grade allows).</remarks>
public sealed record SubjectShown : Evidence
{
    /// <summary>States that the piece depicts a subject.</summary>
    /// <param name="subject">The id or name of the subject.</param>
    /// <param name="firstExisted">When it first existed.</param>
    /// <param name="grade">How well that is founded, or null for a plain fact.</param>
    /// <param name="part">The part that shows it, or null.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="entries">Ids of the reference file on which this rests, or null for none.</param>
    /// <param name="reasons">How this came about, or null for nothing to say.</param>
    public SubjectShown(
        string subject,
        EvidenceDate firstExisted,
        EvidenceGrade? grade = null,
        string? part = null,
        string? source = null,
        IEnumerable<string>? entries = null,
        IEnumerable<Reason>? reasons = null)
        : base(part, source, entries, reasons)
    {
        Subject = Guard.NotNull(subject, nameof(subject));
        FirstExisted = Guard.NotNull(firstExisted, nameof(firstExisted));
        Grade = grade;
    }

    /// <inheritdoc/>
    public override string Kind => "subject-shown";

    /// <summary>The id or name of the subject.</summary>
    public string Subject { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>When it first existed.</summary>
    public EvidenceDate FirstExisted { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>How well that is founded, or null for a plain fact.</summary>
    public EvidenceGrade? Grade { get; init; }

    private protected override bool IsUncertain => FirstExisted.IsUncertain;

    private protected override void State(ref NestedWindows windows, Assumptions house)
        => windows.State(
            FirstExisted.FirstDay(house), DayNumber.Open, Grade is { } grade ? Math.Min(house.SubjectFrom, house.OfGrade(grade)) : house.SubjectFrom);
}
