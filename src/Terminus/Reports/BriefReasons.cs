namespace Terminus;

/// <summary>An item of evidence in a few words, as a reason: what goes behind the date in a listing line.</summary>
/// <remarks>A grant is always said to be of the patent and never of the piece.</remarks>
internal static class BriefReasons
{
    internal static Reason Of(Evidence evidence, PieceDating dating)
    {
        string thing = EvidenceName.Thing(evidence, dating.Reference);
        string patent = Patent(evidence, dating.Reference);
        return evidence switch
        {
            PatentIssued e => new Reason("brief.patent", "patent", patent, "granted", Year(e.Issued)),
            PatentPending { Filed: { } filed, Issued: { } issued } => new Reason(
                "brief.pending", "patent", patent, "filed", Year(filed), "granted", Year(issued)),
            PatentPending { Filed: { } filed } => new Reason("brief.pending-filed", "patent", patent, "filed", Year(filed)),
            PatentPending { Issued: { } issued } => new Reason("brief.pending-granted", "patent", patent, "granted", Year(issued)),
            PatentPending => new Reason("brief.pending-words"),
            RightRegistered e => new Reason("brief.registered", "right", e.Right?.Replace('-', ' ') ?? "right", "registered", Year(e.Registered)),
            FeatureSeen => new Reason("brief.feature", "feature", thing, "years", Innermost(evidence, dating)),
            MarkInUse => new Reason("brief.mark", "wording", thing, "years", Innermost(evidence, dating)),
            SubjectShown e => new Reason("brief.subject", "subject", thing, "date", Year(e.FirstExisted)),
            DateInscribed e => new Reason("brief.inscribed", "date", Year(e.Date)),
            KnownBy e => new Reason("brief.known", "what", thing, "date", Year(e.Date)),
            MakerActive e => new Reason("brief.maker", "maker", thing, "years", Span(e.From, e.Until)),
            ModelAdvertised e => new Reason("brief.advertised", "years", Span(e.First, e.Last ?? e.First)),
            _ => new Reason("brief.opinion", "opinion", thing),
        };
    }

    // The group of what the patent covers, where the reference file says: "cuff fastening patent".
    private static string Patent(Evidence mark, ReferenceSet reference)
    {
        string? group = mark.Entries.Select(id => reference.Feature(id) ?? reference.FeaturesOfPatent(id).FirstOrDefault()).OfType<FeatureEntry>()
            .Select(f => f.Group).FirstOrDefault();
        return group is null ? "patent" : group + " patent";
    }

    private static string Year(EvidenceDate date) => (date.IsApproximate ? "circa " : "") + DateText.Years(date.Outer);

    private static string Span(EvidenceDate? from, EvidenceDate? until)
        => from is null && until is null ? "at a time not known"
            : DateText.Years(DateWindow.OfDays(from?.Outer.FirstDay ?? DayNumber.Open, until?.Outer.LastDay ?? DayNumber.Open));

    private static string Innermost(Evidence evidence, PieceDating dating)
        => evidence.StatedWindows(dating.Dating.Assumptions) is { Count: > 0 } windows
            ? DateText.Years(windows[windows.Count - 1].Window)
            : "no date known";
}
