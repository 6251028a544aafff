namespace Terminus;

/// <summary>A number of the house defaults that can be replaced by its name, and what it may be.</summary>
internal sealed class AssumedNumber
{
    private readonly Replace with;

    private AssumedNumber(string name, NumberKind kind, Replace with) => (Name, Kind, this.with) = (name, kind, with);

    private delegate Assumptions Replace(Assumptions assumptions, double value);

    /// <summary>What a number measures, and so what it may be.</summary>
    internal enum NumberKind
    {
        /// <summary>A confidence from 0 to 1.</summary>
        Confidence,

        /// <summary>A whole number of years from 0 to 1000.</summary>
        Span,

        /// <summary>A year of the ISO calendar.</summary>
        Year,
    }

    /// <summary>All numbers, in the order of <see cref="Assumptions"/>.</summary>
    internal static IReadOnlyList<AssumedNumber> All { get; } =
    [
        new("firmAt", NumberKind.Confidence, (a, v) => a with { FirmAt = v }),
        new("circaYears", NumberKind.Span, (a, v) => a with { CircaYears = (int)v }),
        new("uncertainCap", NumberKind.Confidence, (a, v) => a with { UncertainCap = v }),
        new("spreadFrom", NumberKind.Year, (a, v) => a with { SpreadFrom = (int)v }),
        new("patentIssuedFrom", NumberKind.Confidence, (a, v) => a with { PatentIssuedFrom = v }),
        new("patentInForce", NumberKind.Confidence, (a, v) => a with { PatentInForce = v }),
        new("termSlackYears", NumberKind.Span, (a, v) => a with { TermSlackYears = (int)v }),
        new("pendingFrom", NumberKind.Confidence, (a, v) => a with { PendingFrom = v }),
        new("pendingWithSlack", NumberKind.Confidence, (a, v) => a with { PendingWithSlack = v }),
        new("pendingWindow", NumberKind.Confidence, (a, v) => a with { PendingWindow = v }),
        new("pendingSlackYears", NumberKind.Span, (a, v) => a with { PendingSlackYears = (int)v }),
        new("pendencyBeforeIssueYears", NumberKind.Span, (a, v) => a with { PendencyBeforeIssueYears = (int)v }),
        new("pendencyAfterFilingYears", NumberKind.Span, (a, v) => a with { PendencyAfterFilingYears = (int)v }),
        new("pendingWordingFromYear", NumberKind.Year, (a, v) => a with { PendingWordingFromYear = (int)v }),
        new("pendingWording", NumberKind.Confidence, (a, v) => a with { PendingWording = v }),
        new("registeredFrom", NumberKind.Confidence, (a, v) => a with { RegisteredFrom = v }),
        new("registeredInForce", NumberKind.Confidence, (a, v) => a with { RegisteredInForce = v }),
        new("featureByFact", NumberKind.Confidence, (a, v) => a with { FeatureByFact = v }),
        new("featureByTrade", NumberKind.Confidence, (a, v) => a with { FeatureByTrade = v }),
        new("gradeHigh", NumberKind.Confidence, (a, v) => a with { GradeHigh = v }),
        new("gradeMedium", NumberKind.Confidence, (a, v) => a with { GradeMedium = v }),
        new("gradeLow", NumberKind.Confidence, (a, v) => a with { GradeLow = v }),
        new("featureEndedByLaw", NumberKind.Confidence, (a, v) => a with { FeatureEndedByLaw = v }),
        new("featureGone", NumberKind.Confidence, (a, v) => a with { FeatureGone = v }),
        new("featureCommon", NumberKind.Confidence, (a, v) => a with { FeatureCommon = v }),
        new("markByLaw", NumberKind.Confidence, (a, v) => a with { MarkByLaw = v }),
        new("markByCustom", NumberKind.Confidence, (a, v) => a with { MarkByCustom = v }),
        new("markForbidden", NumberKind.Confidence, (a, v) => a with { MarkForbidden = v }),
        new("markLapsed", NumberKind.Confidence, (a, v) => a with { MarkLapsed = v }),
        new("markCustomEnd", NumberKind.Confidence, (a, v) => a with { MarkCustomEnd = v }),
        new("subjectFrom", NumberKind.Confidence, (a, v) => a with { SubjectFrom = v }),
        new("presentationUntil", NumberKind.Confidence, (a, v) => a with { PresentationUntil = v }),
        new("presentationSpan", NumberKind.Confidence, (a, v) => a with { PresentationSpan = v }),
        new("presentationYears", NumberKind.Span, (a, v) => a with { PresentationYears = (int)v }),
        new("inscribedUntil", NumberKind.Confidence, (a, v) => a with { InscribedUntil = v }),
        new("knownUntil", NumberKind.Confidence, (a, v) => a with { KnownUntil = v }),
        new("boughtNew", NumberKind.Confidence, (a, v) => a with { BoughtNew = v }),
        new("boughtNewYears", NumberKind.Span, (a, v) => a with { BoughtNewYears = (int)v }),
        new("makerWide", NumberKind.Confidence, (a, v) => a with { MakerWide = v }),
        new("makerSpan", NumberKind.Confidence, (a, v) => a with { MakerSpan = v }),
        new("makerYears", NumberKind.Span, (a, v) => a with { MakerYears = (int)v }),
        new("advertWide", NumberKind.Confidence, (a, v) => a with { AdvertWide = v }),
        new("advertNear", NumberKind.Confidence, (a, v) => a with { AdvertNear = v }),
        new("advertWideYears", NumberKind.Span, (a, v) => a with { AdvertWideYears = (int)v }),
        new("advertYearsBefore", NumberKind.Span, (a, v) => a with { AdvertYearsBefore = (int)v }),
        new("advertYearsAfter", NumberKind.Span, (a, v) => a with { AdvertYearsAfter = (int)v }),
        new("saidFrom", NumberKind.Confidence, (a, v) => a with { SaidFrom = v }),
        new("qualifiedAbove", NumberKind.Confidence, (a, v) => a with { QualifiedAbove = v }),
    ];

    /// <summary>The name of the property, starting with a small letter.</summary>
    internal string Name { get; }

    internal NumberKind Kind { get; }

    /// <summary>The number of a name, or null where there is none.</summary>
    internal static AssumedNumber? Find(string name, StringComparison comparison = StringComparison.Ordinal)
        => All.FirstOrDefault(number => string.Equals(number.Name, name, comparison));

    /// <summary>The same set with this number replaced.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number may not have the value.</exception>
    internal Assumptions In(Assumptions assumptions, double value)
        => Kind == NumberKind.Confidence || (value == Math.Floor(value) && Math.Abs(value) <= int.MaxValue)
            ? with(assumptions, value)
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A number of years, and a year, is whole.");
}
