using System.Text.Json;
using FsCheck.Xunit;

namespace Terminus.Tests.Advice;

public class OutcomeModelTest
{
    /// <summary>VOI-split: a feature that came in on a known day, on an even density of 20 years.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Information_CleanSplit_IsThatOfTheWorkedExample(int row)
    {
        JsonElement expected = AdviceExamples.Expected("VOI-split");
        double from = AdviceExamples.Numbers(AdviceExamples.Inputs("VOI-split").GetProperty("c"))[row] - 1870;
        var model = new OutcomeModel(new StepDensity([from, 20 - from], [from, 20 - from]), [[0, 1], [1, 0]]);

        Assert.Equal(AdviceExamples.Numbers(expected.GetProperty("expected_entropy_drop_bits"))[row], model.Information, 1e-6);
        Assert.Equal(AdviceExamples.Numbers(expected.GetProperty("expected_remaining_width"))[row], model.Expected(d => d.Support), 1e-6);
        Assert.Equal(AdviceExamples.Numbers(expected.GetProperty("expected_90_interval_width"))[row], model.Expected(d => d.ShortestWidth(0.9)), 1e-6);
    }

    /// <summary>VOI-noisy: the same split with an error of 1 in 20 on either side.</summary>
    [Fact]
    public void Information_NoisySplit_IsThatOfTheWorkedExample()
    {
        const double Error = 1.0 / 20;
        var model = new OutcomeModel(new StepDensity([10.0, 10], [1.0, 1]), [[Error, 1 - Error], [1 - Error, Error]]);
        Assert.Equal(AdviceExamples.Number(AdviceExamples.Expected("VOI-noisy").GetProperty("information_bits")), model.Information, 1e-6);
    }

    /// <summary>VOI-submarine: MacKay 2003, figure 4.3. The entropy falls by the information of each miss, and of the hit.</summary>
    [Fact]
    public void Posterior_Submarine_LosesTheBitsOfEachShot()
    {
        int squares = AdviceExamples.Inputs("VOI-submarine").GetProperty("squares").GetInt32();
        int hitAt = AdviceExamples.Inputs("VOI-submarine").GetProperty("hit_at").GetInt32();
        int[] missesBefore = [.. AdviceExamples.Inputs("VOI-submarine").GetProperty("misses_before").EnumerateArray().Select(v => v.GetInt32())];
        double[] exact = AdviceExamples.Numbers(AdviceExamples.Expected("VOI-submarine").GetProperty("exact"));
        double[] totals = AdviceExamples.Numbers(AdviceExamples.Expected("VOI-submarine").GetProperty("total_bits"));

        var sea = new StepDensity(Enumerable.Repeat(1.0, squares), Enumerable.Repeat(1.0, squares));
        StepDensity belief = sea;
        for (int shot = 0; shot < hitAt; shot++)
        {
            double[] hit = [.. Enumerable.Range(0, squares).Select(square => square == shot ? 1.0 : 0)];
            var model = new OutcomeModel(belief, [hit, [.. hit.Select(h => 1 - h)]]);
            StepDensity after = model.Posterior(shot == hitAt - 1 ? 0 : 1)!;
            int row = shot == hitAt - 1 ? exact.Length - 1 : Array.IndexOf(missesBefore, shot);
            if (row >= 0)
            {
                Assert.Equal(exact[row], belief.Entropy - after.Entropy, 5e-5);
                Assert.Equal(totals[row], sea.Entropy - after.Entropy, 5e-5);
            }

            belief = after;
        }
    }

    [Property(Arbitrary = [typeof(Gens)])]
    public bool InformationIsTheExpectedFallOfEntropy(SmallObservation seen)
    {
        StepDensity prior = seen.Density.Build();
        var model = new OutcomeModel(prior, seen.Likelihoods);
        return Math.Abs(model.Information - (prior.Entropy - model.Expected(d => d.Entropy))) < 1e-9;
    }

    [Property(Arbitrary = [typeof(Gens)])]
    public bool InformationIsNeverBelowZeroNorAboveThatOfTheOutcomes(SmallObservation seen)
    {
        var model = new OutcomeModel(seen.Density.Build(), seen.Likelihoods);
        double outcomes = -model.Probabilities.Where(p => p > 0).Sum(p => p * Math.Log2(p));
        return model.Information >= 0 && model.Information <= outcomes + 1e-9 && Math.Abs(model.Probabilities.Sum() - 1) < 1e-9;
    }
}
