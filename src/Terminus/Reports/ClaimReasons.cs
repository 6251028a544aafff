namespace Terminus;

/// <summary>Why a stated date agrees or not, as a reason.</summary>
internal static class ClaimReasons
{
    internal static Reason Of(PieceDating dating, StatedClaim claim)
    {
        string stated = DateText.Years(claim.Window);
        string interval = WindowWords.Years(dating.Interval);
        string plausibility = WindowWords.Upper(claim.Plausibility);
        return claim.Verdict switch
        {
            ClaimVerdict.Agrees => new Reason("claim.agrees", "stated", stated, "interval", interval),
            ClaimVerdict.TooNarrow => new Reason("claim.too-narrow", "stated", stated, "interval", interval),
            _ when claim.By is { } by => new Reason(
                "claim.contradicted", "stated", stated, "plausibility", plausibility, "by", NameAndReason(dating, dating.Dating.Evidence[by])),
            _ => new Reason("claim.contradicted-together", "stated", stated, "plausibility", plausibility),
        };
    }

    private static string NameAndReason(PieceDating dating, Evidence evidence)
        => EvidenceName.Of(evidence, dating.Reference) + ". " + ReasonText.Of(EvidenceReasons.Main(evidence, dating.Reference));
}
