namespace Terminus.Tests.Sightings;

// Robson and Whitlock 1964; Solow and Roberts 2003, from memory; gamma above 1 derived. The rows have the figures.
public class GapEstimatorTest
{
    public static TheoryData<string> FactorRows => [.. WorkedExample.Ids.Where(id => id.StartsWith("GAP-a", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(FactorRows))]
    public void Factor_Row_Agrees(string id)
    {
        WorkedExample row = WorkedExample.Of(id);
        Near.Relative(row.Expected("factor"), GapEstimator.Factor(1 - row.Input("alpha"), row.Input("gamma")), 1e-5);
    }

    [Fact]
    public void Earlier_Row_IsTheConfidenceCurve()
    {
        WorkedExample row = WorkedExample.Of("GAP-confidence-curve");
        double[] gamma = row.Inputs("gamma");
        for (int i = 0; i < gamma.Length; i++)
        {
            double expected = row.ExpectedAll("P(true start earlier than t_first - x)")[i];
            Near.Absolute(expected, GapEstimator.Earlier(row.Input("g"), row.Inputs("x")[i], gamma[i]), 1e-6);
        }
    }

    // Row SR03-orchid: Solow and Roberts 2003, the Mauritian orchid: point 1980, upper bound 2016.
    [Fact]
    public void Factor_Orchid_GivesThePublishedPointAndBound()
    {
        WorkedExample row = WorkedExample.Of("SR03-orchid");
        double[] years = row.Inputs("sightings");
        double gap = years[^1] - years[^2];
        Assert.Equal(row.Expected("point"), years[^1] + (gap * GapEstimator.Factor(0.5, GapEstimator.Abrupt)), 9);
        Assert.Equal(row.Expected("upper95"), years[^1] + (gap * GapEstimator.Factor(0.95, GapEstimator.Abrupt)), 9);
    }
}
