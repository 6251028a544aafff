namespace Terminus;

/// <summary>
/// How the sightings between the first and the last are spread, as standard errors of their mean from where it would be. Times rise
/// away from the end that is sought. Derived from the moments of the uniform and the triangular density; the limits are house
/// defaults, no source.
/// </summary>
internal static class Evenness
{
    /// <summary>Within this many standard errors a record passes for even.</summary>
    internal const double Limit = 2;

    /// <summary>
    /// This many standard errors nearer to the end than a ramp would put it, the record speaks against a ramp. At 3 the automatic choice
    /// still covers 0.87 of ramps at a stated 0.90; at 2 it covers 0.76 (simulated, 20 sources).
    /// </summary>
    internal const double RampLimit = 3;

    /// <summary>Standard errors from the middle, where even sightings would have their mean. 0 for fewer than three sightings.</summary>
    internal static double FromUniform(double[] times) => Deviation(times, 1.0 / 2, 12);

    /// <summary>Standard errors from two thirds of the range, where sightings on a ramp up from zero would have their mean.</summary>
    internal static double FromRamp(double[] times) => Deviation(times, 2.0 / 3, 18);

    /// <summary>Whether the record passes for even with all sightings early and with all late. Two sightings always do.</summary>
    internal static bool Passes(SightingRecord record)
        => Math.Abs(FromUniform(record.Earliest)) < Limit && Math.Abs(FromUniform(record.Latest)) < Limit;

    /// <summary>Whether the record speaks clearly against a ramp.</summary>
    internal static bool ExcludesRamp(SightingRecord record)
        => FromRamp(record.Earliest) < -RampLimit && FromRamp(record.Latest) < -RampLimit;

    private static double Deviation(double[] times, double mean, double inverseVariance)
    {
        int inner = times.Length - 2;
        if (inner < 1)
        {
            return 0;
        }

        double range = times[^1] - times[0];
        double sum = 0;
        for (int i = 1; i <= inner; i++)
        {
            sum += (times[i] - times[0]) / range;
        }

        return ((sum / inner) - mean) * Math.Sqrt(inverseVariance * inner);
    }
}
