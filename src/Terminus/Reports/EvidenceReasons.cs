namespace Terminus;

/// <summary>What an item of evidence is, as a reason: one rule a kind.</summary>
internal static class EvidenceReasons
{
    /// <summary>The reason that names the item, then those that came with it.</summary>
    internal static IEnumerable<Reason> Of(Evidence evidence)
    {
        yield return Main(evidence);
        foreach (Reason reason in evidence.Reasons)
        {
            yield return reason;
        }
    }

    private static Reason Main(Evidence evidence) => evidence switch
    {
        PatentIssued e => new Reason("evidence.patent-issued", "right", RightOf(e.Office, e.Right, e.Number, "a patent"), "issued", When(e.Issued)),
        PatentPending { Filed: null, Issued: null } => new Reason("evidence.pending-wording"),
        PatentPending e => new Reason(
            "evidence.patent-pending", "right", RightOf(e.Office, e.Right, e.Number, "a patent"), "filed", When(e.Filed), "issued", When(e.Issued)),
        RightRegistered e => new Reason(
            "evidence.right-registered", "right", RightOf(e.Office, e.Right, e.Number, "a registered right"), "registered", When(e.Registered)),
        FeatureSeen { StatesSomething: false } e => new Reason("evidence.feature-undated", "feature", e.Feature),
        FeatureSeen e => new Reason("evidence.feature-seen", "feature", e.Feature, "periods", Periods(e), "basis", BasisOf(e)),
        MarkInUse e => new Reason("evidence.mark-in-use", "wording", e.Wording, "period", Period(e.From, e.Until), "by", e.ByLaw ? "law" : "custom"),
        SubjectShown e => new Reason("evidence.subject-shown", "subject", e.Subject, "date", When(e.FirstExisted)),
        DateInscribed { Purpose: InscriptionPurpose.Presentation } e => new Reason("evidence.presented", "date", When(e.Date)),
        DateInscribed { Purpose: InscriptionPurpose.Commemorative } e => new Reason("evidence.commemorates", "date", When(e.Date)),
        DateInscribed e => new Reason("evidence.since", "date", When(e.Date)),
        KnownBy { BoughtNew: true } e => new Reason("evidence.bought-new", "what", e.What ?? "a record", "date", When(e.Date)),
        KnownBy e => new Reason("evidence.known-by", "what", e.What ?? "a record", "date", When(e.Date)),
        MakerActive e => new Reason("evidence.maker-active", "maker", e.Maker, "period", Period(e.From, e.Until)),
        ModelAdvertised e => new Reason("evidence.model-advertised", "what", e.What ?? "advertisements", "period", e.Last is null ? When(e.First) : When(e.First) + " to " + When(e.Last)),
        Opinion { Windows.Count: 0 } e => new Reason("evidence.opinion-silent", "by", e.By ?? "an opinion"),
        Opinion e => new Reason("evidence.opinion", "by", e.By ?? "an opinion", "window", WindowWords.Days(e.Windows[0].Window)),
        _ => new Reason("evidence.other", "kind", evidence.Kind),
    };

    private static string RightOf(string? office, string? right, string? number, string unknown)
        => number is null && right is null ? unknown : string.Join(" ", new[] { office, right?.Replace('-', ' '), number }.OfType<string>());

    private static string When(EvidenceDate? date)
        => date is null ? "unknown" : (date.IsApproximate ? "about " : "") + Plain(date.Outer) + (date.IsUncertain ? " (uncertain)" : "");

    // A whole year or decade reads as its years, a single day as the day.
    private static string Plain(DateWindow window)
        => window.Days is 1 ? DateText.Words(window.FirstDay)
            : window.Days is > 360 ? WindowWords.Years(window)
            : WindowWords.Days(window);

    private static string Period(EvidenceDate? from, EvidenceDate? until)
        => from is null ? (until is null ? "at a time not known" : "until " + When(until)) : until is null ? "from " + When(from) : "from " + When(from) + " to " + When(until);

    private static string Periods(FeatureSeen feature)
        => string.Join(", ", new[]
        {
            feature.Introduced is null ? null : "introduced " + When(feature.Introduced),
            feature.Common is null ? null : "common from " + When(feature.Common),
            feature.Fading is null ? null : "fading from " + When(feature.Fading),
            feature.Gone is null ? null : "gone by " + When(feature.Gone),
        }.OfType<string>());

    private static string BasisOf(FeatureSeen feature) => feature.Basis switch
    {
        EvidenceBasis.Patent => "a patent",
        EvidenceBasis.Law => "law",
        EvidenceBasis.Event => "an event",
        _ => "usage of the trade",
    };
}
