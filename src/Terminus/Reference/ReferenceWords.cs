namespace Terminus;

/// <summary>The closed lists of words in reference documents.</summary>
internal static class ReferenceWords
{
    internal static readonly Choices<EvidenceBasis> Basis = new(
        ("patent", EvidenceBasis.Patent), ("law", EvidenceBasis.Law), ("event", EvidenceBasis.Event), ("trade", EvidenceBasis.Trade));

    internal static readonly Choices<EvidenceGrade> Grade = new(
        ("high", EvidenceGrade.High), ("medium", EvidenceGrade.Medium), ("low", EvidenceGrade.Low));

    internal static readonly Choices<ReferenceOrigin> Origin = new(
        ("source", ReferenceOrigin.Source), ("memory", ReferenceOrigin.Memory), ("invented", ReferenceOrigin.Invented));

    /// <summary>What ended a feature: only a law or an event make its end firm.</summary>
    internal static readonly Choices<EvidenceBasis> EndedBy = new(
        ("law", EvidenceBasis.Law), ("event", EvidenceBasis.Event), ("trade", EvidenceBasis.Trade));

    internal static readonly Choices<MarkBasis> MarkBasis = new(("law", Terminus.MarkBasis.Law), ("custom", Terminus.MarkBasis.Custom));

    internal static readonly Choices<MarkEnd> Ended = new(
        ("forbidden", MarkEnd.ForbiddenOrReplaced),
        ("replaced", MarkEnd.ForbiddenOrReplaced),
        ("lapsed", MarkEnd.Lapsed),
        ("custom", MarkEnd.Custom));

    internal static readonly Choices<EstimatedEnds> Estimate = new(
        ("introduced", EstimatedEnds.Introduced), ("gone", EstimatedEnds.Gone), ("both", EstimatedEnds.Both));

    /// <summary>The words of a kind of entry, one and many, which are the names of its member in a document.</summary>
    internal static string One(ReferenceKind kind) => kind switch
    {
        ReferenceKind.Feature => "feature",
        ReferenceKind.Question => "question",
        ReferenceKind.Patent => "patent",
        ReferenceKind.Maker => "maker",
        ReferenceKind.Advert => "advert",
        _ => "mark",
    };
}

/// <summary>What began the use of a mark.</summary>
internal enum MarkBasis
{
    Custom,
    Law,
}
