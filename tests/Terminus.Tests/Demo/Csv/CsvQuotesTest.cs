using Terminus.Demo.Csv;

namespace Terminus.Tests.Demo.Csv;

public class CsvQuotesTest
{
    // RFC 4180, section 2, rules 5 to 7: a cell is quoted whole, and a quotation mark in it is doubled.
    [Theory]
    [InlineData("A,plain,")]
    [InlineData("\"A\",\"links, gilt\",x")]
    [InlineData("A,\"two\nlines\"")]
    [InlineData("A,\"links, \"\"gilt\"\"\"")]
    [InlineData("A,\"\",\"\"\"\"")]
    [InlineData("A,signed \"H. V.\" inside,x")] // no rule of it, and nothing is lost
    [InlineData("")]
    public void AreSound_EveryCellEndsWhereItShould_IsTrue(string row) => Assert.True(CsvQuotes.AreSound(row, ','));

    [Theory]
    [InlineData("A,\"open,x\nB,,\nC,\"PAT. 2\",463\"")] // an open cell that ends in another row's
    [InlineData("A,\"open,x\nB,,")] // and one that never ends
    [InlineData("A,\"a\"b,x")]
    [InlineData("A,12\" chain,14\" chain")] // the separator would be lost
    [InlineData("A,12\" chain\nB,14\" chain")]
    [InlineData("A,12\" chain")]
    [InlineData("A,\"")]
    public void AreSound_ACellThatSwallowsOthers_IsFalse(string row) => Assert.False(CsvQuotes.AreSound(row, ','));

    [Fact]
    public void Inventory_AnOpenQuotationMark_RefusesItsRowsAndSaysWhich()
    {
        DemoRun run = DemoRun.Of("id,title\nA,links\nB,\"12 inch\nC,chain\" gilt\nD,pin\n", "inventory", "-", "--input", "csv", "--as-of", "2026-11-25");

        Assert.Equal(1, run.Code);
        Assert.Contains("3: row: A quotation mark is not closed at the end of its cell", run.Errors, StringComparison.Ordinal);
        Assert.Contains("the lines to 4 are one row", run.Errors, StringComparison.Ordinal);
        string[] lines = run.Output.TrimEnd('\n').Split('\n');
        Assert.Equal(3, lines.Length);
        Assert.Contains("\"id\":\"A\"", lines[0], StringComparison.Ordinal);
        Assert.Contains("\"error\":\"Found the string", lines[1], StringComparison.Ordinal);
        Assert.Contains("\"id\":\"D\"", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Sightings_AnOpenQuotationMark_IsReported()
    {
        DemoRun run = DemoRun.Of("date,source\n1950,\"list\n1952,b\" x\n1955,c\n", "sightings", "-");
        Assert.Equal(1, run.Code);
        Assert.Contains("2: row: A quotation mark", run.Errors, StringComparison.Ordinal);
        Assert.StartsWith("the feature: 1 sighting,", run.Output, StringComparison.Ordinal);
    }
}
