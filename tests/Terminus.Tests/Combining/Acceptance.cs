namespace Terminus.Tests.Combining;

/// <summary>The limits within which a simulation agrees with what is claimed, all of size 0.001 where no other is said.</summary>
internal static class Acceptance
{
    internal const double Size = 0.001;

    /// <summary>The 0.999 quantile of chi-square for 20 bins, row CHI2-crit.</summary>
    internal const double ChiSquare20 = 43.820196;

    /// <summary>The 0.999 quantile of Kolmogorov's statistic times the root of the number, row KS-crit.</summary>
    internal const double Kolmogorov = 1.949475;

    /// <summary>The least and the most hits with which a claim of exactly this coverage is accepted.</summary>
    internal static (int Least, int Most) Between(int number, double coverage) => (Quantile(number, coverage, Size / 2), Quantile(number, coverage, 1 - (Size / 2)));

    /// <summary>The least hits with which a claim of at least this coverage is accepted.</summary>
    internal static int AtLeast(int number, double coverage) => Quantile(number, coverage, Size);

    /// <summary>The chi-square statistic of values from [0, 1] that should be even.</summary>
    internal static double ChiSquare(IReadOnlyList<double> values, int bins)
    {
        double expected = (double)values.Count / bins;
        return Enumerable.Range(0, bins).Sum(bin => Math.Pow(values.Count(v => (int)(v * bins) == bin) - expected, 2) / expected);
    }

    /// <summary>Kolmogorov's distance of values from [0, 1] that should be even.</summary>
    internal static double Distance(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted.Select((value, i) => Math.Max(value - ((double)i / sorted.Length), ((i + 1.0) / sorted.Length) - value)).Max();
    }

    // The smallest number of hits whose cumulated probability reaches a share.
    private static int Quantile(int number, double chance, double share)
    {
        double log = number * Math.Log(1 - chance);
        double below = Math.Exp(log);
        int hits = 0;
        while (below < share)
        {
            log += Math.Log((number - hits) * chance / ((hits + 1) * (1 - chance)));
            below += Math.Exp(log);
            hits++;
        }

        return hits;
    }
}
