namespace Terminus;

/// <summary>
/// What an observation would tell of a date: how likely each of its outcomes is in each cell of a density, and what that is worth.
/// </summary>
/// <remarks>
/// Source: Lindley, On a measure of the information provided by an experiment, Annals of Mathematical Statistics 27 (1956) 986-1005, from memory:
/// I = H(t) - E H(t|x) = sum over x and t of p(t) p(x|t) log2(p(x|t) / p(x)), never below 0. In each cell the outcomes must sum to one.
/// </remarks>
internal sealed class OutcomeModel
{
    private readonly StepDensity prior;
    private readonly double[][] likelihoods;

    /// <param name="prior">The density of the date.</param>
    /// <param name="likelihoods">For each outcome its probability in each cell.</param>
    internal OutcomeModel(StepDensity prior, double[][] likelihoods)
    {
        this.prior = prior;
        this.likelihoods = likelihoods;
        Probabilities = [.. likelihoods.Select(outcome => outcome.Select((p, cell) => p * prior.Masses[cell]).Sum())];
    }

    /// <summary>How likely each outcome is before one looks.</summary>
    internal IReadOnlyList<double> Probabilities { get; }

    /// <summary>The expected fall of the entropy of the date in bits.</summary>
    internal double Information
    {
        get
        {
            double bits = 0;
            for (int x = 0; x < likelihoods.Length; x++)
            {
                for (int cell = 0; cell < prior.Masses.Count; cell++)
                {
                    double joint = prior.Masses[cell] * likelihoods[x][cell];
                    bits += joint > 0 ? joint * StepDensity.Log2(likelihoods[x][cell] / Probabilities[x]) : 0;
                }
            }

            return Math.Max(0, bits);
        }
    }

    /// <summary>The density of the date once an outcome is seen, or null for an outcome that cannot be.</summary>
    internal StepDensity? Posterior(int outcome) => Probabilities[outcome] > 0 ? prior.Times(likelihoods[outcome]) : null;

    /// <summary>A measure of the density after the observation, on average over its outcomes.</summary>
    internal double Expected(Func<StepDensity, double> measure)
    {
        double sum = 0;
        for (int x = 0; x < likelihoods.Length; x++)
        {
            sum += Posterior(x) is { } posterior ? Probabilities[x] * measure(posterior) : 0;
        }

        return sum;
    }
}
