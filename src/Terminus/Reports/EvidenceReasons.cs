namespace Terminus;

/// <summary>What an item of evidence is, as a reason: one rule a kind, with names instead of ids where the reference file has them.</summary>
internal static class EvidenceReasons
{
    /// <summary>The reason that names the item, then those that came with it.</summary>
    internal static IEnumerable<Reason> Of(Evidence evidence, ReferenceSet reference)
    {
        Reason main = Main(evidence, reference);
        yield return main;
        foreach (Reason reason in evidence.Reasons)
        {
            if (reason != main)
            {
                yield return reason;
            }
        }
    }

    /// <summary>The reason that names the item.</summary>
    internal static Reason Main(Evidence evidence, ReferenceSet reference)
        => evidence.Reasons.FirstOrDefault(r => r.Rule == "pieces.feature-absent") ?? Main(evidence, EvidenceName.Thing(evidence, reference));

    private static Reason Main(Evidence evidence, string thing) => evidence switch
    {
        PatentIssued e => new Reason("evidence.patent-issued", "right", thing, "issued", When(e.Issued)),
        PatentPending { Filed: null, Issued: null } => new Reason("evidence.pending-wording"),
        PatentPending e => new Reason("evidence.patent-pending", "right", thing, "filed", When(e.Filed), "issued", When(e.Issued)),
        RightRegistered e => new Reason("evidence.right-registered", "right", thing, "registered", When(e.Registered)),
        FeatureSeen { StatesSomething: false } => new Reason("evidence.feature-undated", "feature", thing),
        FeatureSeen e => new Reason("evidence.feature-seen", "feature", thing, "periods", Periods(e), "basis", BasisOf(e)),
        MarkInUse e => new Reason("evidence.mark-in-use", "wording", thing, "period", Period(e.From, e.Until), "by", e.ByLaw ? "law" : "custom"),
        SubjectShown e => new Reason("evidence.subject-shown", "subject", thing, "date", When(e.FirstExisted)),
        DateInscribed { Purpose: InscriptionPurpose.Presentation } e => new Reason("evidence.presented", "date", When(e.Date)),
        DateInscribed { Purpose: InscriptionPurpose.Commemorative } e => new Reason("evidence.commemorates", "date", When(e.Date)),
        DateInscribed e => new Reason("evidence.since", "date", When(e.Date)),
        KnownBy { BoughtNew: true } e => new Reason("evidence.bought-new", "what", thing, "date", When(e.Date)),
        KnownBy e => new Reason("evidence.known-by", "what", thing, "date", When(e.Date)),
        MakerActive e => new Reason("evidence.maker-active", "maker", thing, "period", Period(e.From, e.Until)),
        ModelAdvertised e => new Reason(
            "evidence.model-advertised", "what", thing, "period", e.Last is null ? When(e.First) : When(e.First) + " to " + When(e.Last)),
        Opinion { Windows.Count: 0 } => new Reason("evidence.opinion-silent", "opinion", thing),
        Opinion e => new Reason("evidence.opinion", "opinion", thing, "window", WindowWords.Days(e.Windows[0].Window)),
        _ => new Reason("evidence.other", "kind", evidence.Kind),
    };

    /// <summary>A date in words: <c>11 July 1961</c>, <c>about 1955</c>, <c>1950–1959 (uncertain)</c>, <c>unknown</c>.</summary>
    internal static string When(EvidenceDate? date)
        => date is null ? "unknown" : (date.IsApproximate ? "about " : "") + Plain(date.Outer) + (date.IsUncertain ? " (uncertain)" : "");

    // A whole year or decade reads as its years, a single day as the day.
    private static string Plain(DateWindow window)
        => window.Days is 1 ? DateText.Words(window.FirstDay)
            : window.Days is > 360 ? DateText.Years(window)
            : WindowWords.Days(window);

    private static string Period(EvidenceDate? from, EvidenceDate? until)
        => from is null ? (until is null ? "at a time not known" : "until " + When(until))
            : until is null ? "from " + When(from)
            : "from " + When(from) + " to " + When(until);

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
