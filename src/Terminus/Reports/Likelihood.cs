namespace Terminus;

/// <summary>Verbal likelihoods of a published scale.</summary>
/// <remarks>
/// Source: Mastrandrea and others, Guidance Note for Lead Authors of the IPCC Fifth Assessment Report on Consistent Treatment of
/// Uncertainties (2010), table 1: virtually certain 99–100 %, very likely 90–100 %, likely 66–100 %, more likely than not over 50 %; extremely
/// likely 95–100 % is its additional term. The figures were checked against a reprint of the scale, not against the note itself.
/// </remarks>
internal static class Likelihood
{
    internal static string Of(double confidence)
        => confidence >= 0.99 ? "virtually certain"
            : confidence >= 0.95 ? "extremely likely"
            : confidence >= 0.90 ? "very likely"
            : confidence >= 0.66 ? "likely"
            : confidence > 0.50 ? "more likely than not"
            : "about as likely as not, or less";
}
