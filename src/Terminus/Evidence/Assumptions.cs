namespace Terminus;

/// <summary>
/// The house defaults: every number that turns the fields of evidence into windows, each standing here once. They are judgements of this house with no
/// published source, argued from a table of imagined pieces in the guide, and can be replaced one by one.
/// </summary>
/// <remarks>Confidences lie in [0, 1]; spans are whole years. Two sets are equal when all their numbers, name and version are.</remarks>
public sealed record Assumptions
{
    /// <summary>The house defaults as shipped.</summary>
    public static Assumptions House { get; } = new();

    /// <summary>The name of the set, said in each result.</summary>
    public string Name { get; init => field = Guard.NotNull(value, nameof(value)); } = "house";

    /// <summary>The version of the set, said in each result.</summary>
    public string Version { get; init => field = Guard.NotNull(value, nameof(value)); } = "1.0.0";

    /// <summary>A widest window stated at this confidence or more is firm, and bounds what is possible.</summary>
    public double FirmAt { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.90;

    /// <summary>Years by which an approximate date (<c>~</c>) is widened on both sides.</summary>
    public int CircaYears { get; init => field = Guard.Span(value, nameof(value)); } = 5;

    /// <summary>The most that an item with an uncertain date (<c>?</c>) may state.</summary>
    public double UncertainCap { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.70;

    /// <summary>The year from which the spread for pictures, medians and advice is drawn.</summary>
    public int SpreadFrom { get; init => field = Guard.Year(value, nameof(value)); } = 1700;

    /// <summary>A piece that bears a granted patent: from its issue.</summary>
    public double PatentIssuedFrom { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.98;

    /// <summary>A piece that bears a granted patent: while it was in force.</summary>
    public double PatentInForce { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.70;

    /// <summary>Years that goods go on bearing a right after its longest term, for stock.</summary>
    public int TermSlackYears { get; init => field = Guard.Span(value, nameof(value)); } = 2;

    /// <summary>Marked as applied for: from the first filing.</summary>
    public double PendingFrom { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.98;

    /// <summary>Marked as applied for: from filing to some years after the issue.</summary>
    public double PendingWithSlack { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.95;

    /// <summary>Marked as applied for: between filing and issue.</summary>
    public double PendingWindow { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.93;

    /// <summary>Years that the pending words run on after the issue, for stock.</summary>
    public int PendingSlackYears { get; init => field = Guard.Span(value, nameof(value)); } = 2;

    /// <summary>Years before the issue that stand for an unknown filing.</summary>
    public int PendencyBeforeIssueYears { get; init => field = Guard.Span(value, nameof(value)); } = 6;

    /// <summary>Years after the filing that stand for an unknown issue.</summary>
    public int PendencyAfterFilingYears { get; init => field = Guard.Span(value, nameof(value)); } = 8;

    /// <summary>The pending words alone, with no patent known: from this year.</summary>
    public int PendingWordingFromYear { get; init => field = Guard.Year(value, nameof(value)); } = 1850;

    /// <summary>The pending words alone, with no patent known.</summary>
    public double PendingWording { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.85;

    /// <summary>A piece that bears a registration: from it.</summary>
    public double RegisteredFrom { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.98;

    /// <summary>A piece that bears a registration: while it was in force.</summary>
    public double RegisteredInForce { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.70;

    /// <summary>A feature whose introduction rests on a patent, a law or an event: the most it states.</summary>
    public double FeatureByFact { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.97;

    /// <summary>A feature whose introduction rests on usage of the trade: the most it states.</summary>
    public double FeatureByTrade { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.85;

    /// <summary>An entry of high grade: the most it states.</summary>
    public double GradeHigh { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.97;

    /// <summary>An entry of medium grade: the most it states.</summary>
    public double GradeMedium { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.92;

    /// <summary>An entry of low grade or from memory: the most it states.</summary>
    public double GradeLow { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.75;

    /// <summary>A feature until it was gone, where a law or an event ended it.</summary>
    public double FeatureEndedByLaw { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.97;

    /// <summary>A feature until it was gone, where it only went out of use.</summary>
    public double FeatureGone { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.80;

    /// <summary>A feature between growing common and fading.</summary>
    public double FeatureCommon { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.70;

    /// <summary>A wording that a law began: from its start.</summary>
    public double MarkByLaw { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.97;

    /// <summary>A wording that custom began: from its start.</summary>
    public double MarkByCustom { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.85;

    /// <summary>A wording until a law forbade or replaced it.</summary>
    public double MarkForbidden { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.93;

    /// <summary>A wording until the right behind it lapsed.</summary>
    public double MarkLapsed { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.75;

    /// <summary>A wording until it went out of custom.</summary>
    public double MarkCustomEnd { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.70;

    /// <summary>A subject shown: from when it first existed.</summary>
    public double SubjectFrom { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.98;

    /// <summary>A presentation date: made by then.</summary>
    public double PresentationUntil { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.93;

    /// <summary>A presentation date: made in the years before it.</summary>
    public double PresentationSpan { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.70;

    /// <summary>Years before a presentation in which the piece was made.</summary>
    public int PresentationYears { get; init => field = Guard.Span(value, nameof(value)); } = 20;

    /// <summary>A date of an event remembered: made by then.</summary>
    public double InscribedUntil { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.75;

    /// <summary>A record of the piece: made by then.</summary>
    public double KnownUntil { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.99;

    /// <summary>Bought new: made in the years before the record.</summary>
    public double BoughtNew { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.80;

    /// <summary>Years before a record of a new purchase in which the piece was made.</summary>
    public int BoughtNewYears { get; init => field = Guard.Span(value, nameof(value)); } = 10;

    /// <summary>A maker's time with some years on either side.</summary>
    public double MakerWide { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.95;

    /// <summary>A maker's time itself.</summary>
    public double MakerSpan { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.85;

    /// <summary>Years on either side of a maker's time.</summary>
    public int MakerYears { get; init => field = Guard.Span(value, nameof(value)); } = 3;

    /// <summary>An advertised model: the wide window.</summary>
    public double AdvertWide { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.93;

    /// <summary>An advertised model: the near window.</summary>
    public double AdvertNear { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.70;

    /// <summary>Years on either side of the advertisements in the wide window.</summary>
    public int AdvertWideYears { get; init => field = Guard.Span(value, nameof(value)); } = 10;

    /// <summary>Years before the first advertisement in the near window.</summary>
    public int AdvertYearsBefore { get; init => field = Guard.Span(value, nameof(value)); } = 3;

    /// <summary>Years after the last advertisement in the near window.</summary>
    public int AdvertYearsAfter { get; init => field = Guard.Span(value, nameof(value)); } = 5;

    /// <summary>A disagreement of at least this mass is said in the statement.</summary>
    public double SaidFrom { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.40;

    /// <summary>Above this conflict the answer is qualified: the statement begins with the contradiction.</summary>
    public double QualifiedAbove { get; init => field = Guard.Confidence(value, nameof(value)); } = 0.95;

    internal double OfBasis(EvidenceBasis basis) => basis == EvidenceBasis.Trade ? FeatureByTrade : FeatureByFact;

    internal double OfGrade(EvidenceGrade grade) => grade switch
    {
        EvidenceGrade.High => GradeHigh,
        EvidenceGrade.Medium => GradeMedium,
        _ => GradeLow,
    };

    internal double OfEnd(MarkEnd end) => end switch
    {
        MarkEnd.ForbiddenOrReplaced => MarkForbidden,
        MarkEnd.Lapsed => MarkLapsed,
        _ => MarkCustomEnd,
    };

    /// <summary>Reads a file that replaces some of the house defaults: an object with a name, a version and the numbers to replace.</summary>
    /// <param name="utf8">The document. Its members are named as the properties here, starting with a small letter.</param>
    /// <param name="fileName">The name to show in problems, or null.</param>
    public static DocumentResult<Assumptions> Read(ReadOnlySpan<byte> utf8, string? fileName = null) => AssumptionsReader.Read(utf8, fileName);

    /// <summary>Reads a file that replaces some of the house defaults: an object with a name, a version and the numbers to replace.</summary>
    /// <param name="json">The document. Its members are named as the properties here, starting with a small letter.</param>
    /// <param name="fileName">The name to show in problems, or null.</param>
    public static DocumentResult<Assumptions> Read(string json, string? fileName = null)
        => Read(System.Text.Encoding.UTF8.GetBytes(Guard.NotNull(json, nameof(json))).AsSpan(), fileName);

    /// <summary>The same set with another name and version.</summary>
    /// <param name="name">The name, said in each result.</param>
    /// <param name="version">The version, said in each result.</param>
    public Assumptions WithName(string name, string version) => this with { Name = name, Version = version };

    /// <summary>The same set with one number replaced, for languages that cannot set the properties.</summary>
    /// <param name="number">The name of the property, such as <c>PendingWindow</c>; the case of its letters does not matter.</param>
    /// <param name="value">The confidence, or the whole number of years.</param>
    /// <exception cref="ArgumentException">No number has the name; the message lists those there are.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number may not have the value.</exception>
    public Assumptions With(string number, double value)
        => AssumedNumber.Find(Guard.NotNull(number, nameof(number)), StringComparison.OrdinalIgnoreCase) is { } found
            ? found.In(this, value)
            : throw new ArgumentException(
                $"No number is named \"{number}\"; there are {string.Join(", ", AssumedNumber.All.Select(n => n.Name))}.", nameof(number));

    /// <summary>The name and version, such as <c>house 1.0.0</c>.</summary>
    public override string ToString() => Name + " " + Version;
}
