namespace Terminus;

/// <summary>What a date of the reference file rests on.</summary>
public enum EvidenceBasis
{
    /// <summary>Usage of the trade: handbooks, dealers, collectors; or one patent of a wider class.</summary>
    Trade,

    /// <summary>A patent that covers it.</summary>
    Patent,

    /// <summary>A law that required, allowed or ended it.</summary>
    Law,

    /// <summary>A dated event.</summary>
    Event,
}

/// <summary>How well an entry of the reference file is founded.</summary>
public enum EvidenceGrade
{
    /// <summary>Weak, or from memory.</summary>
    Low,

    /// <summary>One fair source.</summary>
    Medium,

    /// <summary>Good sources that agree.</summary>
    High,
}

/// <summary>The piece shows a feature that came in, grew common, faded and went.</summary>
/// <remarks>
/// States: from its introduction, at the lower of basis and grade; from introduction to gone-by
/// (<see cref="Assumptions.FeatureEndedByLaw"/> or <see cref="Assumptions.FeatureGone"/>); from common to fading
/// (<see cref="Assumptions.FeatureCommon"/>). A date that is missing leaves its side open.
/// </remarks>
public sealed record FeatureSeen : Evidence
{
    /// <summary>States that the piece shows a feature.</summary>
    /// <param name="feature">The id or name of the feature.</param>
    /// <param name="introduced">When it came in, or null. A feature that a patent introduced counts from its filing where known.</param>
    /// <param name="common">When it grew common, or null.</param>
    /// <param name="fading">When it began to fade, or null.</param>
    /// <param name="gone">By when it was gone, or null.</param>
    /// <param name="basis">What the introduction rests on.</param>
    /// <param name="grade">How well it is founded.</param>
    /// <param name="endedByLaw">Whether a law or an event ended it.</param>
    /// <param name="part">The part that shows it, or null.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="entries">Ids of the reference file on which this rests, or null for none.</param>
    /// <param name="reasons">How this came about, or null for nothing to say.</param>
    public FeatureSeen(
        string feature,
        EvidenceDate? introduced = null,
        EvidenceDate? common = null,
        EvidenceDate? fading = null,
        EvidenceDate? gone = null,
        EvidenceBasis basis = EvidenceBasis.Trade,
        EvidenceGrade grade = EvidenceGrade.Medium,
        bool endedByLaw = false,
        string? part = null,
        string? source = null,
        IEnumerable<string>? entries = null,
        IEnumerable<Reason>? reasons = null)
        : base(part, source, entries, reasons)
    {
        Feature = Guard.NotNull(feature, nameof(feature));
        Introduced = introduced;
        Common = common;
        Fading = fading;
        Gone = gone;
        Basis = basis;
        Grade = grade;
        EndedByLaw = endedByLaw;
    }

    /// <inheritdoc/>
    public override string Kind => "feature-seen";

    /// <summary>The id or name of the feature.</summary>
    public string Feature { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>When it came in, or null.</summary>
    public EvidenceDate? Introduced { get; init; }

    /// <summary>When it grew common, or null.</summary>
    public EvidenceDate? Common { get; init; }

    /// <summary>When it began to fade, or null.</summary>
    public EvidenceDate? Fading { get; init; }

    /// <summary>By when it was gone, or null.</summary>
    public EvidenceDate? Gone { get; init; }

    /// <summary>What the introduction rests on.</summary>
    public EvidenceBasis Basis { get; init; }

    /// <summary>How well it is founded.</summary>
    public EvidenceGrade Grade { get; init; }

    /// <summary>Whether a law or an event ended it.</summary>
    public bool EndedByLaw { get; init; }

    /// <summary>Whether any of its dates is known.</summary>
    internal bool StatesSomething => Introduced is not null || Common is not null || Fading is not null || Gone is not null;

    internal override bool IsUsageOnly => Introduced is null && !(Gone is not null && EndedByLaw);

    private protected override bool IsUncertain
        => Introduced is { IsUncertain: true } || Common is { IsUncertain: true } || Fading is { IsUncertain: true } || Gone is { IsUncertain: true };

    private protected override void State(ref NestedWindows windows, Assumptions house)
    {
        int introduced = Introduced?.FirstDay(house) ?? DayNumber.Open;
        windows.State(introduced, DayNumber.Open, Math.Min(house.OfBasis(Basis), house.OfGrade(Grade)));
        if (Gone is not null)
        {
            windows.State(introduced, Gone.LastDay(house), EndedByLaw ? house.FeatureEndedByLaw : house.FeatureGone);
        }

        windows.State(
            Common?.FirstDay(house) ?? DayNumber.Open, Fading?.LastDay(house) ?? DayNumber.Open, house.FeatureCommon);
    }
}
