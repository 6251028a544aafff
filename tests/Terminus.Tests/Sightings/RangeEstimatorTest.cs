namespace Terminus.Tests.Sightings;

// Strauss and Sadler 1989 and Marshall 1990, from memory; the rows of worked-examples.json have the figures and who computed them.
public class RangeEstimatorTest
{
    public static TheoryData<string> FactorRows => [.. WorkedExample.Ids.Where(id => id.StartsWith("SS-alpha-", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(FactorRows))]
    public void Factor_PublishedRow_Agrees(string id)
    {
        WorkedExample row = WorkedExample.Of(id);
        int n = (int)row.Input("n");
        double[] levels = row.Inputs("C");
        for (int i = 0; i < levels.Length; i++)
        {
            Near.Relative(row.ExpectedAll("one_end")[i], RangeEstimator.Factor(n, levels[i]), 1e-5);
            Near.Relative(row.ExpectedAll("both_ends")[i], RangeEstimator.FactorOfBothEnds(n, levels[i]), 1e-5);
        }
    }

    // Row SS-closed-2: for n = 3 the factor is sqrt(20) - 1.
    [Fact]
    public void Factor_ThreeAtNinetyFive_IsTheClosedForm()
        => Assert.Equal(Math.Sqrt(20) - 1, RangeEstimator.Factor(3, 0.95), 12);

    // Row CLUSTER-n: ten entries in seven sources.
    [Fact]
    public void Factor_OfSources_IsWiderThanOfEntries()
    {
        WorkedExample row = WorkedExample.Of("CLUSTER-n");
        Near.Absolute(row.Expected("alpha_if_10"), RangeEstimator.Factor(10, row.Input("C")), 1e-5);
        Near.Absolute(row.Expected("alpha_if_7"), RangeEstimator.Factor(7, row.Input("C")), 1e-5);
    }

    // Row SS-point: a second implementation prints 1943.41.
    [Fact]
    public void Factor_SeventeenYears_GivesThePrintedBound()
    {
        WorkedExample row = WorkedExample.Of("SS-point");
        double[] years = row.Inputs("sightings");
        double bound = years[^1] + (RangeEstimator.Factor(years.Length, row.Input("C")) * (years[^1] - years[0]));
        Near.Absolute(row.Expected("upper"), bound, 1e-5);
    }

    [Fact]
    public void FactorToKnownEnd_Row_Agrees()
    {
        WorkedExample row = WorkedExample.Of("KNOWN-END-bound");
        double factor = RangeEstimator.FactorToKnownEnd((int)row.Input("n"), 1 - row.Input("alpha"));
        Near.Absolute(row.Expected("earliest"), row.Input("known_end") - (factor * (row.Input("known_end") - row.Input("t_first"))), 1e-5);
    }

    // Row SO93-monkseal-p: Solow 1993, the same bound from a known start.
    [Fact]
    public void FactorToKnownEnd_MonkSeal_GivesThePublishedBound()
    {
        WorkedExample row = WorkedExample.Of("SO93-monkseal-p");
        double factor = RangeEstimator.FactorToKnownEnd((int)row.Input("n_used"), 0.95);
        Near.Absolute(row.Expected("upper95"), row.Input("start") + (factor * (1952 - row.Input("start"))), 1e-5);
    }

    // Row SO93-ferret-stationary: 28 months from a start at 0, the last 153.
    [Fact]
    public void FactorToKnownEnd_Ferret_GivesTheRowsBound()
    {
        WorkedExample row = WorkedExample.Of("SO93-ferret-stationary");
        Near.Relative(row.Expected("upper95"), RangeEstimator.FactorToKnownEnd(28, 0.95) * row.Inputs("months")[^1], 1e-5);
    }

    [Fact]
    public void Earlier_Row_IsTheConfidenceCurve()
    {
        WorkedExample row = WorkedExample.Of("SS-confidence-curve");
        double[] before = row.Inputs("x");
        double[] expected = row.ExpectedAll("P(true start earlier than t_first - x)");
        for (int i = 0; i < before.Length; i++)
        {
            Near.Absolute(expected[i], RangeEstimator.Earlier((int)row.Input("n"), row.Input("R"), before[i]), 1e-6);
        }
    }

    [Fact]
    public void Factor_AndEarlier_AreInverse()
    {
        foreach (int n in new[] { 2, 5, 40 })
        {
            Assert.Equal(0.2, RangeEstimator.Earlier(n, 7, 7 * RangeEstimator.Factor(n, 0.8)), 12);
        }
    }
}
