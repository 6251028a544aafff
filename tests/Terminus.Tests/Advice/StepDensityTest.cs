using FsCheck.Xunit;

namespace Terminus.Tests.Advice;

public class StepDensityTest
{
    /// <summary>VOI-entropy-step: the densities of one window, derived from h = sum of m log2(w / m).</summary>
    [Theory]
    [InlineData("contour_product", "contour_h_bits")]
    [InlineData("pignistic", "pignistic_h_bits")]
    public void Entropy_OneWindow_IsThatOfTheWorkedExample(string density, string entropy)
        => Assert.Equal(
            AdviceExamples.Number(AdviceExamples.Expected("VOI-entropy-step").GetProperty(entropy)),
            AdviceExamples.Density(Cells(density)).Entropy,
            5e-6);

    [Fact]
    public void Entropy_EvenDensity_IsTheLogarithmOfItsWidth()
        => Assert.Equal(
            AdviceExamples.Number(AdviceExamples.Expected("VOI-entropy-step").GetProperty("uniform_prior_h_bits")),
            new StepDensity([100.0], [1.0]).Entropy,
            5e-6);

    /// <summary>COMB-1win: the shortest stretches, in exact fractions.</summary>
    [Theory]
    [InlineData("contour_product")]
    [InlineData("pignistic")]
    public void ShortestWidth_OneWindow_IsThatOfTheWorkedExample(string density)
        => Assert.Equal(
            AdviceExamples.Number(AdviceExamples.Expected("COMB-1win").GetProperty(density).GetProperty("shortest_90_length")),
            AdviceExamples.Density(Cells(density)).ShortestWidth(0.9),
            1e-9);

    [Fact]
    public void ShortestWidth_AcrossAnEmptyCell_CountsTheEmptyCell()
        => Assert.Equal(30, new StepDensity([10.0, 10, 10], [1.0, 0, 1]).ShortestWidth(1), 1e-9);

    [Fact]
    public void ShortestWidth_DensestAtTheEnd_StartsInsideACell()
        => Assert.Equal(15, new StepDensity([20.0, 10], [0.2, 0.8]).ShortestWidth(0.85), 1e-9);

    [Property(Arbitrary = [typeof(Gens)])]
    public bool SplittingACellChangesNeitherEntropyNorWidth(SmallDensity density)
    {
        StepDensity whole = density.Build();
        StepDensity halves = density.BuildInHalves();
        return Near(whole.Entropy, halves.Entropy) && Near(whole.ShortestWidth(0.9), halves.ShortestWidth(0.9)) && Near(whole.Support, halves.Support);
    }

    [Property(Arbitrary = [typeof(Gens)])]
    public bool NoStretchOnAFineGridIsShorter(SmallDensity density)
    {
        double shortest = density.Build().ShortestWidth(0.7);
        double[] fine = density.Grid(4);
        double best = double.PositiveInfinity;
        for (int from = 0; from < fine.Length; from++)
        {
            double held = 0;
            for (int to = from; to < fine.Length && held < 0.7 - 1e-12; to++)
            {
                held += fine[to];
                best = held >= 0.7 - 1e-12 ? Math.Min(best, (to - from + 1) / 4.0) : best;
            }
        }

        return shortest <= best + 1e-9 && shortest > best - 0.5 - 1e-9;
    }

    private static System.Text.Json.JsonElement Cells(string density)
        => AdviceExamples.Expected("COMB-1win").GetProperty(density).GetProperty("cell_probabilities");

    private static bool Near(double one, double other) => Math.Abs(one - other) < 1e-9;
}
