namespace Terminus;

/// <summary>An estimator fitted to a record: its bound at any confidence, and its point with all sightings early and all late.</summary>
internal sealed class EndFit(SightingEstimator estimator, Func<double, double> boundAt, double pointOfEarliest, double pointOfLatest)
{
    internal SightingEstimator Estimator => estimator;

    /// <summary>The time, in days of the record, that the end is not before with a confidence below 1.</summary>
    internal Func<double, double> BoundAt => boundAt;

    internal double PointOfEarliest => pointOfEarliest;

    internal double PointOfLatest => pointOfLatest;

    /// <summary>Puts the reason of a refusal with the others; the answer is null.</summary>
    internal static EndFit? Refuse(List<Reason> reasons, Reason why)
    {
        reasons.Add(why);
        return null;
    }
}
