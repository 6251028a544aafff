namespace Terminus;

/// <summary>
/// How likely a start is, when sightings are even between it and a known other end and some are known only to a window: the product of the
/// shares of the time that the windows cover (derived). An exact sighting counts as a density.
/// </summary>
internal static class CensoredLikelihood
{
    /// <summary>The likelihood of a start, up to a factor that does not depend on it.</summary>
    internal static double Of(double start, double knownEnd, ReadOnlySpan<(double First, double Last)> sightings)
    {
        double likelihood = 1;
        double whole = knownEnd - start;
        foreach ((double first, double last) in sightings)
        {
            double share = first == last
                ? (first >= start && first <= knownEnd ? 1 : 0)
                : Math.Max(0, Math.Min(last, knownEnd) - Math.Max(first, start));
            likelihood *= share / whole;
        }

        return likelihood;
    }
}
