using System.Numerics;

namespace Terminus;

/// <summary>
/// How likely a silence after the last sighting is while the feature is still about, by the published formulas, all from memory. Times
/// count from the start of the record; the last sighting is at <c>last</c> and the search ended at <c>until</c>.
/// </summary>
internal static class SilenceFormulas
{
    /// <summary>At a constant rate: Solow 1993 (Ecology 74:962-964). A first sighting that marks the start is not counted in n.</summary>
    internal static double AtConstantRate(int n, double last, double until) => Math.Pow(last / until, n);

    /// <summary>How much better still being about explains the record than having ended, at a constant rate (Solow 1993).</summary>
    internal static double BayesFactor(int n, double last, double until) => (n - 1) / (Math.Pow(until / last, n - 1) - 1);

    /// <summary>From the gap before the last sighting: Solow and Roberts 2003 (Ecology 84:1329-1332).</summary>
    internal static double ByLastGap(double lastButOne, double last, double until) => (last - lastButOne) / (until - lastButOne);

    /// <summary>At an exponentially falling rate: Solow 1993 (J. Math. Biol. 32:79-82), F(last) / F(until).</summary>
    internal static double AtFallingRate(int n, BigInteger sum, BigInteger last, BigInteger until)
        => Ratio(FallingNumerator(n, sum, last), FallingNumerator(n, sum, until));

    /// <summary>
    /// The distribution function of the last of n sightings with a given sum of times, at an exponentially falling rate:
    /// F(x) = 1 - sum over i to floor(s/x) of (-1)^(i-1) C(n,i) (1 - i x / s)^(n-1).
    /// </summary>
    /// <remarks>The sum alternates and loses every digit of a double, so it is counted in whole numbers: F(x) s^(n-1).</remarks>
    internal static BigInteger FallingNumerator(int n, BigInteger sum, BigInteger x)
    {
        BigInteger total = BigInteger.Zero;
        BigInteger choose = BigInteger.One;
        for (int i = 0; i <= n && i * x <= sum; i++)
        {
            BigInteger term = choose * BigInteger.Pow(sum - (i * x), n - 1);
            total += i % 2 == 0 ? term : -term;
            choose = choose * (n - i) / (i + 1);
        }

        return total;
    }

    /// <summary>
    /// One chance a unit of time, at a constant rate: McInerny et al. 2006 (Conserv. Biol. 20:562-567). It depends on the unit.
    /// </summary>
    internal static double ByTrials(int n, double last, double until) => Math.Pow(1 - (n / last), until - last);

    /// <summary>
    /// From the mean gap and, where asked, its trend: Jaric and Ebenhard 2010 (Wildl. Biol. 16:267-275). A heuristic that depends
    /// on the unit.
    /// </summary>
    internal static double ByGapTrend(ReadOnlySpan<double> times, double until, bool withTrend)
    {
        int n = times.Length;
        double last = times[n - 1];
        double gap = (last - 1) / (n - 1);
        if (withTrend)
        {
            // The mean change of successive gaps is the change from the first gap to the last, over their number less one.
            gap += (last - times[n - 2] - (times[1] - times[0])) / (n - 2);
        }

        return gap / (gap + until - last);
    }

    /// <summary>The quotient of two large whole numbers, right to double precision whatever their size.</summary>
    internal static double Ratio(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero)
        {
            return double.NaN;
        }

        return (double)((numerator << 80) / denominator) / Math.Pow(2, 80);
    }
}
