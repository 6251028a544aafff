namespace Terminus;

/// <summary>Reads a file of house defaults: an object whose members replace the numbers of the same name, and only those.</summary>
internal static class AssumptionsReader
{
    private delegate Assumptions Replace(Assumptions assumptions, double value);

    private static readonly (string Name, bool IsConfidence, Replace With)[] Numbers =
    [
        ("firmAt", true, (a, v) => a with { FirmAt = v }),
        ("circaYears", false, (a, v) => a with { CircaYears = (int)v }),
        ("uncertainCap", true, (a, v) => a with { UncertainCap = v }),
        ("patentIssuedFrom", true, (a, v) => a with { PatentIssuedFrom = v }),
        ("patentInForce", true, (a, v) => a with { PatentInForce = v }),
        ("termSlackYears", false, (a, v) => a with { TermSlackYears = (int)v }),
        ("pendingFrom", true, (a, v) => a with { PendingFrom = v }),
        ("pendingWithSlack", true, (a, v) => a with { PendingWithSlack = v }),
        ("pendingWindow", true, (a, v) => a with { PendingWindow = v }),
        ("pendingSlackYears", false, (a, v) => a with { PendingSlackYears = (int)v }),
        ("pendencyBeforeIssueYears", false, (a, v) => a with { PendencyBeforeIssueYears = (int)v }),
        ("pendencyAfterFilingYears", false, (a, v) => a with { PendencyAfterFilingYears = (int)v }),
        ("pendingWording", true, (a, v) => a with { PendingWording = v }),
        ("registeredFrom", true, (a, v) => a with { RegisteredFrom = v }),
        ("registeredInForce", true, (a, v) => a with { RegisteredInForce = v }),
        ("featureByFact", true, (a, v) => a with { FeatureByFact = v }),
        ("featureByTrade", true, (a, v) => a with { FeatureByTrade = v }),
        ("gradeHigh", true, (a, v) => a with { GradeHigh = v }),
        ("gradeMedium", true, (a, v) => a with { GradeMedium = v }),
        ("gradeLow", true, (a, v) => a with { GradeLow = v }),
        ("featureEndedByLaw", true, (a, v) => a with { FeatureEndedByLaw = v }),
        ("featureGone", true, (a, v) => a with { FeatureGone = v }),
        ("featureCommon", true, (a, v) => a with { FeatureCommon = v }),
        ("markByLaw", true, (a, v) => a with { MarkByLaw = v }),
        ("markByCustom", true, (a, v) => a with { MarkByCustom = v }),
        ("markForbidden", true, (a, v) => a with { MarkForbidden = v }),
        ("markLapsed", true, (a, v) => a with { MarkLapsed = v }),
        ("markCustomEnd", true, (a, v) => a with { MarkCustomEnd = v }),
        ("subjectFrom", true, (a, v) => a with { SubjectFrom = v }),
        ("presentationUntil", true, (a, v) => a with { PresentationUntil = v }),
        ("presentationSpan", true, (a, v) => a with { PresentationSpan = v }),
        ("presentationYears", false, (a, v) => a with { PresentationYears = (int)v }),
        ("inscribedUntil", true, (a, v) => a with { InscribedUntil = v }),
        ("knownUntil", true, (a, v) => a with { KnownUntil = v }),
        ("boughtNew", true, (a, v) => a with { BoughtNew = v }),
        ("boughtNewYears", false, (a, v) => a with { BoughtNewYears = (int)v }),
        ("makerWide", true, (a, v) => a with { MakerWide = v }),
        ("makerSpan", true, (a, v) => a with { MakerSpan = v }),
        ("makerYears", false, (a, v) => a with { MakerYears = (int)v }),
        ("advertWide", true, (a, v) => a with { AdvertWide = v }),
        ("advertNear", true, (a, v) => a with { AdvertNear = v }),
        ("advertWideYears", false, (a, v) => a with { AdvertWideYears = (int)v }),
        ("advertYearsBefore", false, (a, v) => a with { AdvertYearsBefore = (int)v }),
        ("advertYearsAfter", false, (a, v) => a with { AdvertYearsAfter = (int)v }),
        ("saidFrom", true, (a, v) => a with { SaidFrom = v }),
        ("qualifiedAbove", true, (a, v) => a with { QualifiedAbove = v }),
    ];

    private static readonly string[] Years = ["spreadFrom", "pendingWordingFromYear"];

    private static readonly MemberNames Names = new(
        "a set of house defaults", ["format", "!name", "!version", .. Years, .. Numbers.Select(n => n.Name)]);

    /// <summary>The names of all numbers that a file may replace.</summary>
    internal static IEnumerable<string> AllNames => Years.Concat(Numbers.Select(n => n.Name));

    internal static DocumentResult<Assumptions> Read(ReadOnlySpan<byte> utf8, string? fileName)
    {
        var reader = new DocumentReader(utf8, fileName);
        Assumptions assumptions = Assumptions.House;
        bool isObject = reader.OpenObject(Names);
        while (isObject && reader.NextMember(out string member))
        {
            assumptions = ReadMember(ref reader, member, assumptions);
        }

        return new DocumentResult<Assumptions>(isObject ? assumptions : null, reader.Finish());
    }

    private static Assumptions ReadMember(ref DocumentReader reader, string member, Assumptions assumptions)
    {
        switch (member)
        {
            case "format":
                reader.ReadFormat();
                return assumptions;
            case "name":
                return assumptions with { Name = reader.ReadName("a name") ?? assumptions.Name };
            case "version":
                return assumptions with { Version = reader.ReadName("a version") ?? assumptions.Version };
            case "spreadFrom":
                return assumptions with { SpreadFrom = ReadYear(ref reader) ?? assumptions.SpreadFrom };
            case "pendingWordingFromYear":
                return assumptions with { PendingWordingFromYear = ReadYear(ref reader) ?? assumptions.PendingWordingFromYear };
            default:
                (_, bool isConfidence, Replace with) = Array.Find(Numbers, n => string.Equals(n.Name, member, StringComparison.Ordinal));
                double? value = isConfidence ? reader.ReadConfidence() : reader.ReadInteger(0, 1000, "a number of years from 0 to 1000");
                return value is { } number ? with(assumptions, number) : assumptions;
        }
    }

    private static int? ReadYear(ref DocumentReader reader) => reader.ReadInteger(-9998, 9999, "a year from -9998 to 9999");
}
