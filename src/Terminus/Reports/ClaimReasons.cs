namespace Terminus;

/// <summary>Why a stated date agrees or not, as a reason.</summary>
internal static class ClaimReasons
{
    internal static Reason Of(PieceDating dating, StatedClaim claim) => ReasonDraft.List(draft => Draft(draft, dating, claim))[0];

    /// <summary>Drafts the reason.</summary>
    internal static void Draft(ReasonDraft draft, PieceDating dating, StatedClaim claim)
    {
        _ = claim.Verdict switch
        {
            ClaimVerdict.Agrees => draft.Begin("claim.agrees").Years("stated", claim.Window).Years("interval", dating.Interval),
            ClaimVerdict.TooNarrow => draft.Begin("claim.too-narrow").Years("stated", claim.Window).Years("interval", dating.Interval),
            _ when claim.By is { } by => draft.Begin("claim.contradicted")
                .Years("stated", claim.Window).Upper("plausibility", claim.Plausibility).With("by", NameAndReason(dating, dating.Dating.Evidence[by])),
            _ => draft.Begin("claim.contradicted-together").Years("stated", claim.Window).Upper("plausibility", claim.Plausibility),
        };
        draft.End();
    }

    private static string NameAndReason(PieceDating dating, Evidence evidence)
        => EvidenceName.Of(evidence, dating.Reference) + ". " + ReasonText.Of(EvidenceReasons.Main(evidence, dating.Reference));
}
