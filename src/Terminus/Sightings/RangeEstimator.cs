namespace Terminus;

/// <summary>
/// The bound from the range of n sightings spread evenly over the feature's time, both ends unknown: Strauss and Sadler 1989
/// (Math. Geol. 21:411-427), Marshall 1990 (Paleobiology 16:1-10), both from memory. Times rise away from the end that is sought.
/// </summary>
internal static class RangeEstimator
{
    /// <summary>How many ranges before the first sighting the bound lies.</summary>
    internal static double Factor(int n, double confidence) => Math.Pow(1 - confidence, -1.0 / (n - 1)) - 1;

    /// <summary>How many ranges outside the sightings both bounds lie, when both ends are bounded at once.</summary>
    internal static double FactorOfBothEnds(int n, double confidence)
    {
        // Both ends are missed less often than either, so the answer lies between the one-end factors at C and at (1 + C) / 2.
        double low = Factor(n, confidence);
        double high = Factor(n, (1 + confidence) / 2);
        for (int i = 0; i < 200 && low < high; i++)
        {
            double middle = low + ((high - low) / 2);
            double reached = 1 - (2 * Math.Pow(1 + middle, 1 - n)) + Math.Pow(1 + (2 * middle), 1 - n);
            (low, high) = reached < confidence ? (middle, high) : (low, middle);
        }

        return high;
    }

    /// <summary>
    /// How many times the distance from the first sighting to the other end the whole time lasts at most, when that other end is known
    /// (Solow 1993, Ecology 74:962-964, from memory).
    /// </summary>
    internal static double FactorToKnownEnd(int n, double confidence) => Math.Pow(1 - confidence, -1.0 / n);

    /// <summary>The probability that the feature began more than <paramref name="before"/> before the first of n sightings.</summary>
    internal static double Earlier(int n, double range, double before) => Math.Pow(1 + (before / range), 1 - n);

    internal static EndFit? Fit(SightingRecord record, List<Reason> reasons)
    {
        double widest = record.LatestOfLast - record.EarliestOfFirst;
        if (widest <= 0)
        {
            return EndFit.Refuse(reasons, new Reason("sightings.no-spread"));
        }

        int n = record.Sources;
        reasons.Add(new Reason("sightings.range", "sources", DateText.Digits(n), "years", SightingWords.Years(widest)));
        return new EndFit(
            SightingEstimator.Range,
            c => record.EarliestOfFirst - (Factor(n, c) * widest),
            Point(record.Earliest),
            Point(record.Latest));

        static double Point(double[] times) => times[0] - ((times[^1] - times[0]) / (times.Length - 1));
    }
}
