namespace Terminus;

/// <summary>Why a stated date agrees or not, as a reason.</summary>
internal static class ClaimReasons
{
    internal static Reason Of(PieceDating dating, StatedClaim claim)
    {
        string stated = WindowWords.Years(claim.Window);
        string interval = dating.Interval is { } answer ? WindowWords.Years(answer) : "no single date";
        string plausibility = WindowWords.Share(claim.Plausibility);
        return claim.Verdict switch
        {
            ClaimVerdict.Agrees => new Reason("claim.agrees", "stated", stated, "interval", interval),
            ClaimVerdict.TooNarrow => new Reason("claim.too-narrow", "stated", stated, "interval", interval),
            _ when claim.By is { } by => new Reason(
                "claim.contradicted",
                "stated", stated, "plausibility", plausibility, "by", Statement.NameOf(dating.Dating.Evidence[by]) + ". " + ReasonText.Of(EvidenceReasons.Of(dating.Dating.Evidence[by]).First())),
            _ => new Reason("claim.contradicted-together", "stated", stated, "plausibility", plausibility),
        };
    }
}
