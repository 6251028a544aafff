using System.Text;
using static Terminus.Tests.Inventories.InventoryRuns;

namespace Terminus.Tests.Inventories;

public sealed class InventorySummaryTest
{
    [Theory]
    [InlineData("{\"id\":\"A\",\"opinions\":[{\"windows\":[{\"notBefore\":\"1950\",\"notAfter\":\"1960\",\"confidence\":0.95}]}]}", "1 dated, 0 open-ended, 0 undatable, 0 refused; 0 disagree, 0 with problems")]
    [InlineData("{\"id\":\"A\",\"opinions\":[{\"windows\":[{\"notBefore\":\"1950\",\"confidence\":0.95}]}]}", "0 dated, 1 open-ended, 0 undatable, 0 refused; 0 disagree, 0 with problems")]
    [InlineData("{\"id\":\"A\",\"records\":[{\"date\":\"1950\"}]}", "0 dated, 1 open-ended, 0 undatable, 0 refused; 0 disagree, 0 with problems")]
    [InlineData("{\"id\":\"A\"}", "0 dated, 0 open-ended, 1 undatable, 0 refused; 0 disagree, 0 with problems")]
    [InlineData("{\"id\":\"A\",\"titel\":1}", "0 dated, 0 open-ended, 1 undatable, 0 refused; 0 disagree, 1 with problems")]
    [InlineData("{\"id\":1}", "0 dated, 0 open-ended, 0 undatable, 1 refused; 0 disagree, 0 with problems")]
    [InlineData(
        "{\"id\":\"A\",\"opinions\":[{\"windows\":[{\"notBefore\":\"1950\",\"confidence\":0.95}]},{\"windows\":[{\"notAfter\":\"1930\",\"confidence\":0.95}]}]}",
        "0 dated, 0 open-ended, 1 undatable, 0 refused; 1 disagree, 0 with problems")] // 0.0475 of 0.0975 is left for each: neither reaches 0.9.
    public void Of_OneLine_CountsIt(string line, string counts)
        => Assert.Equal("1 line: " + counts, InventorySummary.Of(Inventory.DateLine(Encoding.UTF8.GetBytes(line), Options)!).ToString());

    [Fact]
    public async Task Plus_AllLines_HasEachOnce()
    {
        InventorySummary summary = (await DateAsync(InventoryGenerator.Utf8(8, 500))).Select(InventorySummary.Of).Aggregate((a, b) => a.Plus(b));

        Assert.Equal(500, summary.Lines);
        Assert.Equal(500, summary.Dated + summary.OpenEnded + summary.Undatable + summary.Refused);
        Assert.InRange(summary.Disagreeing, 1, 250);
    }
}
