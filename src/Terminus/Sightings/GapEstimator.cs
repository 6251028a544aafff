namespace Terminus;

/// <summary>
/// The bound from the gap between the two sightings nearest to the end. Where sightings near the end are as dense as (time from the
/// end)^(gamma - 1), the ratio of their distances from it, to the power gamma, is uniform. Gamma 1 is an abrupt end (Robson and
/// Whitlock 1964; Solow and Roberts 2003, Ecology 84:1329-1332, both from memory), gamma 2 a ramp (derived from it).
/// </summary>
internal static class GapEstimator
{
    internal const double Abrupt = 1;

    internal const double Ramp = 2;

    /// <summary>How many gaps before the first sighting the bound lies.</summary>
    internal static double Factor(double confidence, double gamma)
    {
        double w = Math.Pow(confidence, 1 / gamma);
        return w / (1 - w);
    }

    /// <summary>The probability that the feature began more than <paramref name="before"/> before the first sighting.</summary>
    internal static double Earlier(double gap, double before, double gamma) => 1 - Math.Pow(before / (before + gap), gamma);

    internal static EndFit? Fit(SightingRecord record, double gamma, List<Reason> reasons)
    {
        if (record.WidestGap <= 0)
        {
            return EndFit.Refuse(reasons, new Reason("sightings.tie"));
        }

        bool ramp = gamma > Abrupt;
        reasons.Add(new Reason(ramp ? "sightings.gradual-gap" : "sightings.gap", "years", SightingWords.Years(record.WidestGap)));
        return new EndFit(
            ramp ? SightingEstimator.GradualGap : SightingEstimator.Gap,
            c => record.EarliestByGap(Factor(c, gamma)),
            Point(record.Earliest),
            Point(record.Latest));

        // The median of the curve; for gamma 1 this is the usual 2 x1 - x2.
        double Point(double[] times) => times[0] - (Factor(0.5, gamma) * (times[1] - times[0]));
    }
}
