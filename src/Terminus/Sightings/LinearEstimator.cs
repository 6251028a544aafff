namespace Terminus;

/// <summary>
/// The optimal linear estimator of an end from the k most extreme sightings: Roberts and Solow 2003 (Nature 426:245), Solow 2005
/// (Math. Biosci. 195:47-55), both from memory. Its point and one-sided bound are approximate. Times rise away from the end that is
/// sought.
/// </summary>
internal static class LinearEstimator
{
    /// <summary>Fewer sightings say nothing of the shape near the end.</summary>
    internal const int Fewest = 5;

    /// <summary>
    /// The estimator rests on the extremes; with more than these its bound was seen to cover less (house default, no source).
    /// </summary>
    internal const int Most = 20;

    /// <summary>
    /// The shape of the record near its end: the mean logarithm of how much farther out the last sighting is than each of the others.
    /// 0 where all but the first are equal, infinite where the first two are.
    /// </summary>
    internal static double Shape(ReadOnlySpan<double> times)
    {
        int k = times.Length;
        double reach = times[k - 1] - times[0];
        double sum = 0;
        for (int i = 1; i < k - 1; i++)
        {
            sum += Math.Log(reach / (times[i] - times[0]));
        }

        return sum / (k - 1);
    }

    /// <summary>The weights of the sightings, most extreme first; they sum to 1.</summary>
    /// <remarks>
    /// The published weights solve L a = e, where L[i,j] = G(2v+i) G(v+j) / (G(v+i) G(j)) for j up to i, G being the gamma
    /// function. That is u[max] w[min] with ratios of neighbours that are rational in v, so the inverse is tridiagonal and a sum by
    /// parts solves it: no gamma function, no elimination, and no cancellation for small v.
    /// </remarks>
    internal static double[] Weights(int k, double v)
    {
        double[] weights = new double[k];
        double z = 1;
        double r = 1;
        double step = 1;
        double total = 0;
        for (int i = 1; i <= k; i++)
        {
            // z = 1 / u[i], r = w[i] / u[i]; step[i] = (z[i] - z[i-1]) / (r[i] - r[i-1]), which is -i z / (v r) for the next.
            double next = i == k ? 0 : -i * z / (v * r);
            weights[i - 1] = (step - next) * z;
            total += weights[i - 1];
            step = next;
            r *= (v + i) * (v + i) / (i * ((2 * v) + i));
            z *= (v + i) / ((2 * v) + i);
        }

        for (int i = 0; i < k; i++)
        {
            weights[i] /= total;
        }

        return weights;
    }

    internal static double Point(ReadOnlySpan<double> times)
    {
        double[] weights = Weights(times.Length, Shape(times));
        double point = times[0];
        for (int i = 1; i < weights.Length; i++)
        {
            point += weights[i] * (times[i] - times[0]);
        }

        return point;
    }

    /// <summary>
    /// The time that the end is not before with this confidence. Finite only where <see cref="Reaches"/>. A two-sided interval
    /// has its outer end at (1 + C) / 2 and its inner one at (1 - C) / 2.
    /// </summary>
    internal static double Bound(ReadOnlySpan<double> times, double confidence)
    {
        double reach = times[times.Length - 1] - times[0];
        double c = Math.Pow(-Math.Log(1 - confidence) / times.Length, -Shape(times));
        return times[0] - (reach / (c - 1));
    }

    /// <summary>Whether k sightings give a finite bound at this confidence.</summary>
    internal static bool Reaches(int k, double confidence) => k > -Math.Log(1 - confidence);

    internal static EndFit? Fit(SightingRecord record, double confidence, List<Reason> reasons)
    {
        int k = Math.Min(record.Sources, Most);
        if (k < Fewest)
        {
            return EndFit.Refuse(
                reasons, new Reason("sightings.linear-few", "sources", DateText.Digits(k), "needed", DateText.Digits(Fewest)));
        }

        if (!Reaches(k, confidence))
        {
            return EndFit.Refuse(
                reasons,
                new Reason("sightings.linear-level", "sources", DateText.Digits(k), "confidence", SightingWords.Number(confidence)));
        }

        double[] earliest = record.Earliest.AsSpan(0, k).ToArray();
        double[] latest = record.Latest.AsSpan(0, k).ToArray();
        foreach (double[] times in new[] { earliest, latest })
        {
            if (times[1] <= times[0])
            {
                return EndFit.Refuse(reasons, new Reason("sightings.tie"));
            }

            if (times[1] >= times[k - 1])
            {
                return EndFit.Refuse(reasons, new Reason("sightings.linear-flat"));
            }
        }

        reasons.Add(new Reason("sightings.linear", "used", DateText.Digits(k)));
        return new EndFit(
            SightingEstimator.OptimalLinear,
            c => Math.Min(Bound(earliest, c), Bound(latest, c)),
            Point(earliest),
            Point(latest));
    }

}
