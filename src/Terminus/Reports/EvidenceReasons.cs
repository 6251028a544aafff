namespace Terminus;

/// <summary>What an item of evidence is, as a reason: one rule a kind, with names instead of ids where the reference file has them.</summary>
internal static class EvidenceReasons
{
    /// <summary>The reason that names the item, then those that came with it.</summary>
    internal static IReadOnlyList<Reason> Of(Evidence evidence, ReferenceSet reference)
        => ReasonDraft.List(draft => Draft(draft, evidence, reference));

    /// <summary>The reason that names the item.</summary>
    internal static Reason Main(Evidence evidence, ReferenceSet reference)
        => Absence(evidence) ?? ReasonDraft.List(draft => DraftMain(draft, evidence, reference))[0];

    /// <summary>Drafts the reason that names the item, then those that came with it.</summary>
    internal static void Draft(ReasonDraft draft, Evidence evidence, ReferenceSet reference)
    {
        if (Absence(evidence) is { } absence)
        {
            draft.Give(absence);
        }
        else
        {
            DraftMain(draft, evidence, reference);
        }

        string main = draft.Rule;
        for (int i = 0; i < evidence.Reasons.Count; i++)
        {
            Reason reason = evidence.Reasons[i];
            if (reason.Rule != main || reason != Main(evidence, reference))
            {
                draft.Give(reason);
            }
        }
    }

    /// <summary>The source of the item, or null where its reasons in words name it already.</summary>
    internal static string? UnsaidSource(Evidence evidence, IReadOnlyList<string> reasons)
    {
        for (int i = 0; i < reasons.Count; i++)
        {
            if (evidence.Source is null || reasons[i].AsSpan().Contains(evidence.Source.AsSpan(), StringComparison.Ordinal))
            {
                return null;
            }
        }

        return evidence.Source;
    }

    private static Reason? Absence(Evidence evidence)
    {
        for (int i = 0; i < evidence.Reasons.Count; i++)
        {
            if (evidence.Reasons[i].Rule == "pieces.feature-absent")
            {
                return evidence.Reasons[i];
            }
        }

        return null;
    }

    private static void DraftMain(ReasonDraft draft, Evidence evidence, ReferenceSet reference)
        => DraftMain(draft, evidence, EvidenceName.Thing(evidence, reference)).End();

    private static ReasonDraft DraftMain(ReasonDraft draft, Evidence evidence, string thing) => evidence switch
    {
        PatentIssued e => draft.Begin("evidence.patent-issued").With("right", thing).Date("issued", e.Issued),
        PatentPending { Filed: null, Issued: null } => draft.Begin("evidence.pending-wording"),
        PatentPending e => draft.Begin("evidence.patent-pending").With("right", thing).Date("filed", e.Filed).Date("issued", e.Issued),
        RightRegistered e => draft.Begin("evidence.right-registered").With("right", thing).Date("registered", e.Registered),
        FeatureSeen { StatesSomething: false } => draft.Begin("evidence.feature-undated").With("feature", thing),
        FeatureSeen e => draft.Begin("evidence.feature-seen").With("feature", thing).Periods("periods", e).With("basis", BasisOf(e)),
        MarkInUse e => draft.Begin("evidence.mark-in-use").With("wording", thing).Period("period", e.From, e.Until).With("by", e.ByLaw ? "law" : "custom"),
        SubjectShown e => draft.Begin("evidence.subject-shown").With("subject", thing).Date("date", e.FirstExisted),
        DateInscribed { Purpose: InscriptionPurpose.Presentation } e => draft.Begin("evidence.presented").Date("date", e.Date),
        DateInscribed { Purpose: InscriptionPurpose.Commemorative } e => draft.Begin("evidence.commemorates").Date("date", e.Date),
        DateInscribed e => draft.Begin("evidence.since").Date("date", e.Date),
        KnownBy { BoughtNew: true } e => draft.Begin("evidence.bought-new").With("what", thing).Date("date", e.Date),
        KnownBy e => draft.Begin("evidence.known-by").With("what", thing).Date("date", e.Date),
        MakerActive e => draft.Begin("evidence.maker-active").With("maker", thing).Period("period", e.From, e.Until),
        ModelAdvertised { Last: null } e => draft.Begin("evidence.model-advertised").With("what", thing).Date("period", e.First),
        ModelAdvertised e => draft.Begin("evidence.model-advertised").With("what", thing).Dates("period", e.First, e.Last!),
        Opinion { Windows.Count: 0 } => draft.Begin("evidence.opinion-silent").With("opinion", thing),
        Opinion e => draft.Begin("evidence.opinion").With("opinion", thing).Days("window", e.Windows[0].Window),
        _ => draft.Begin("evidence.other").With("kind", evidence.Kind),
    };

    private static ReasonDraft Periods(this ReasonDraft draft, string name, FeatureSeen feature)
    {
        TextBuffer words = draft.Value(name);
        int start = words.Length;
        AddIfKnown("introduced ", feature.Introduced);
        AddIfKnown("common from ", feature.Common);
        AddIfKnown("fading from ", feature.Fading);
        AddIfKnown("gone by ", feature.Gone);
        return draft;

        void AddIfKnown(string what, EvidenceDate? date)
        {
            if (date is not null)
            {
                words.Add(words.Length > start ? ", " : "").Add(what).AddWords(date);
            }
        }
    }

    private static string BasisOf(FeatureSeen feature) => feature.Basis switch
    {
        EvidenceBasis.Patent => "a patent",
        EvidenceBasis.Law => "law",
        EvidenceBasis.Event => "an event",
        _ => "usage of the trade",
    };
}
