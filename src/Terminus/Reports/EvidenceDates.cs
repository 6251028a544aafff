namespace Terminus;

/// <summary>The dates that an item of evidence carries, as they were written.</summary>
internal static class EvidenceDates
{
    internal static IEnumerable<EvidenceDate> Of(Evidence evidence) => (evidence switch
    {
        PatentIssued e => [e.Issued],
        PatentPending e => [e.Filed, e.Issued],
        RightRegistered e => [e.Registered],
        FeatureSeen e => [e.Introduced, e.Common, e.Fading, e.Gone],
        MarkInUse e => [e.From, e.Until],
        SubjectShown e => [e.FirstExisted],
        DateInscribed e => [e.Date],
        KnownBy e => [e.Date],
        MakerActive e => [e.From, e.Until],
        ModelAdvertised e => [e.First, e.Last],
        _ => (EvidenceDate?[])[],
    }).OfType<EvidenceDate>();
}
