using System.Text.Json;

namespace Terminus.Tests.Combining;

/// <summary>The limits of acceptance against the rows COV-, CHI2- and KS- of TestData/combining, which R and SciPy gave.</summary>
public class AcceptanceTest
{
    [Theory]
    [InlineData("COV-accept-N200")]
    [InlineData("COV-accept-N500")]
    [InlineData("COV-accept-N1000")]
    [InlineData("COV-accept-N2000")]
    [InlineData("COV-accept-N5000")]
    [InlineData("COV-accept-N10000")]
    public void Between_ByNumberAndLevel_IsThePublishedTable(string id)
    {
        JsonElement row = WorkedExamples.Example(id);
        int number = row.GetProperty("inputs").GetProperty("N").GetInt32();
        IEnumerable<(int, int)> expected = row.GetProperty("expected").GetProperty("accept_min_max").EnumerateArray().Select(e => (e[0].GetInt32(), e[1].GetInt32()));
        Assert.Equal(expected, Coverage.Levels.Select(level => Acceptance.Between(number, level)));
    }

    // One-sided at 0.9 from the same source as the table; the other levels from R's qbinom by the same rule.
    [Theory]
    [InlineData(0.5, 931)]
    [InlineData(0.8, 1544)]
    [InlineData(0.9, 1757)]
    [InlineData(0.95, 1869)]
    public void AtLeast_TwoThousand_IsTheOneSidedLimit(double level, int expected) => Assert.Equal(expected, Acceptance.AtLeast(2_000, level));

    [Fact]
    public void ChiSquare_Counts12And8And10And10_IsTheWorkedExample()
    {
        JsonElement row = WorkedExamples.Example("CHI2-small");
        double[] values = [.. row.GetProperty("inputs").GetProperty("counts").EnumerateArray().SelectMany((count, bin) => Enumerable.Repeat((bin + 0.5) / 4, count.GetInt32()))];
        Assert.Equal(row.GetProperty("expected").GetProperty("X2").GetDouble(), Acceptance.ChiSquare(values, 4), 9);
    }

    [Fact]
    public void Distance_FiveValues_IsTheWorkedExample()
    {
        JsonElement row = WorkedExamples.Example("KS-small");
        double[] values = [.. row.GetProperty("inputs").GetProperty("u").EnumerateArray().Select(u => u.GetDouble())];
        Assert.Equal(row.GetProperty("expected").GetProperty("D").GetDouble(), Acceptance.Distance(values), 9);
    }

    [Fact]
    public void CriticalValues_Size0001_AreTheRows()
    {
        Assert.Equal(Acceptance.ChiSquare20, WorkedExamples.Example("CHI2-crit").GetProperty("expected").GetProperty("0.999")[1].GetDouble(), 6);
        Assert.Equal(Acceptance.Kolmogorov, WorkedExamples.Example("KS-crit").GetProperty("expected").GetProperty("sqrt(N)*D")[2].GetDouble(), 6);
    }
}
