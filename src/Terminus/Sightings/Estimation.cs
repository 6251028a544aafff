namespace Terminus;

/// <summary>
/// The way from sightings to an estimate: bring them down to independent sources, choose the estimator, state its curve.
/// </summary>
internal static class Estimation
{
    // The confidences of the curve, highest first, so that the windows come widest first.
    private static readonly double[] Curve = [0.98, 0.95, 0.9, 0.8, 0.66, 0.5];

    internal static SightingEstimate Estimate(Sighting[] given, SightingEnd end, SightingMethod method, double confidence)
    {
        var estimate = new SightingEstimate(end, method, confidence) { Given = given.Length };
        if (Unusable(given) is { } unusable)
        {
            return estimate with { Refusal = unusable, Reasons = [unusable] };
        }

        SightingRecord record = SightingRecord.Of(given, end);
        estimate = estimate with { Sources = record.Sources, Extreme = record.Extreme };
        List<Reason> reasons = Independence(given, record);
        EndFit? fit = confidence >= 1 ? EndFit.Refuse(reasons, new Reason("sightings.certainty"))
            : record.Sources < 2 ? EndFit.Refuse(reasons, new Reason("sightings.few"))
            : Fit(record, method, confidence, reasons);
        return fit is null
            ? estimate with { Refusal = reasons[^1], Reasons = reasons }
            : Estimated(estimate, record, fit, reasons);
    }

    /// <summary>Why the sightings cannot be put in order at all, or null.</summary>
    internal static Reason? Unusable(Sighting[] sightings)
    {
        if (sightings.Length == 0)
        {
            return new Reason("sightings.none");
        }

        // The least of the open ones is named, so that the order of the sightings does not show.
        Sighting? open = sightings.Where(s => s.Date.Days is null).OrderBy(s => s.ToString(), StringComparer.Ordinal).FirstOrDefault();
        if (open is not null)
        {
            return new Reason("sightings.open-date", "date", open.Date.ToString(), "source", open.Source);
        }

        string[] features = [.. sightings.Select(s => s.Feature).Distinct(StringComparer.Ordinal).OrderBy(f => f, StringComparer.Ordinal)];
        return features.Length == 1
            ? null
            : new Reason("sightings.two-features", "first", features[0], "second", features[1]);
    }

    private static List<Reason> Independence(Sighting[] given, SightingRecord record)
    {
        var reasons = new List<Reason>
        {
            new("sightings.sources", "given", DateText.Digits(given.Length), "sources", DateText.Digits(record.Sources)),
        };
        if (given.Any(s => s.Date.Days > 1))
        {
            reasons.Add(new Reason("sightings.windows"));
        }

        return reasons;
    }

    private static EndFit? Fit(SightingRecord record, SightingMethod method, double confidence, List<Reason> reasons)
    {
        if (method == SightingMethod.Auto)
        {
            bool abrupt = Evenness.ExcludesRamp(record);
            reasons.Add(new Reason(abrupt ? "sightings.auto-abrupt" : "sightings.auto-gradual"));
            method = abrupt ? SightingMethod.Abrupt : SightingMethod.Gradual;
        }

        switch (method)
        {
            case SightingMethod.Linear:
                return LinearEstimator.Fit(record, confidence, reasons);
            case SightingMethod.Gradual:
                return GapEstimator.Fit(record, GapEstimator.Ramp, reasons);
            default:
                bool even = Evenness.Passes(record);
                reasons.Add(new Reason(even ? "sightings.even" : "sightings.uneven"));
                return even ? RangeEstimator.Fit(record, reasons) : GapEstimator.Fit(record, GapEstimator.Abrupt, reasons);
        }
    }

    private static SightingEstimate Estimated(SightingEstimate estimate, SightingRecord record, EndFit fit, List<Reason> reasons)
    {
        bool approximate = fit.Estimator == SightingEstimator.OptimalLinear;
        int day = record.DayOf(fit.BoundAt(estimate.Confidence));
        if (day == DayNumber.Open)
        {
            reasons.Add(new Reason("sightings.beyond-calendar"));
        }

        return estimate with
        {
            Estimator = fit.Estimator,
            Point = record.WindowOf(fit.PointOfEarliest, fit.PointOfLatest),
            Bound = day == DayNumber.Open ? null : DayNumber.ToDate(day),
            Windows = approximate ? [] : [.. Stated(fit, record.WindowFrom)],
            EndWindows = approximate ? [] : [.. Stated(fit, bound => record.WindowOf(bound, record.Latest[0]))],
            Reasons = reasons,
        };
    }

    /// <summary>The confidence curve as stated windows; a window that has left the calendar says nothing and is left out.</summary>
    private static IEnumerable<StatedWindow> Stated(EndFit fit, Func<double, DateWindow?> window)
    {
        foreach (double confidence in Curve)
        {
            if (window(fit.BoundAt(confidence)) is { } stated)
            {
                yield return new StatedWindow(stated, confidence);
            }
        }
    }
}
