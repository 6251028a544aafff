namespace Terminus.Tests.Registers;

public class RegisterFilesTest
{
    [Fact]
    public void Names_AreTheShippedRegisters()
        => Assert.Equal(
            [
                "AT patent", "BE patent", "CA patent", "CH patent", "DE patent", "DE utility-model", "FR patent", "GB patent",
                "GB registered-design", "IT patent", "US design", "US plant", "US reissue", "US trade-mark", "US utility", "US x-patent",
            ],
            RegisterFiles.Names().Select(n => n.Office + " " + n.Right));

    [Fact]
    public void EveryRow_HasASourceAndATruthfulOrigin()
    {
        foreach ((string office, string right) in RegisterFiles.Names())
        {
            foreach (RegisterRow row in RegisterSet.BuiltIn.Find(office, right)!.Rows)
            {
                Assert.False(string.IsNullOrWhiteSpace(row.Source), office + " " + right + " " + DateText.Digits(row.First));
                Assert.True(row.Origin != RowOrigin.Source || !row.Source.StartsWith("recalled", StringComparison.Ordinal), row.ToString());
            }
        }
    }

    [Fact]
    public void EveryDatedUsPatentSince1848_FallsOnATuesdayInsideTheYearOfTheTable()
    {
        foreach (string right in new[] { "utility", "design", "reissue", "plant" })
        {
            Register register = RegisterSet.BuiltIn.Find("US", right)!;
            IEnumerable<RegisterRow> dated = register.Rows.Where(r => r.Dates.Days == 1 && r.Dates.FirstDay >= IssueDay.FirstTuesday);
            foreach (RegisterRow row in dated.Where(r => r.First > 1))
            {
                Assert.True(IssueDay.KindOf(row.Dates.FirstDay) is IssueDayKind.Tuesday or IssueDayKind.DoubtfulTuesday, row.ToString());
                Assert.True(register.TryWindow(row.First, out DateWindow outer) && outer.Contains(row.Dates), row.ToString());
            }
        }
    }

    [Theory]
    [InlineData("source", RowOrigin.Source)]
    [InlineData("estimate", RowOrigin.Estimate)]
    [InlineData("memory", RowOrigin.Memory)]
    public void Origin_Word_IsTheStanding(string text, RowOrigin expected) => Assert.Equal(expected, RegisterFiles.Origin(text));

    [Fact]
    public void Origin_AnotherWord_IsAFaultOfTheTable()
        => Assert.Equal(
            "An origin is source, estimate or memory, not hearsay.", Assert.Throws<InvalidDataException>(() => RegisterFiles.Origin("hearsay")).Message);

    [Fact]
    public void Lines_OtherHeader_IsAFaultOfTheTable()
    {
        InvalidDataException fault = Assert.Throws<InvalidDataException>(() => RegisterFiles.Lines(RegisterFiles.DiamondFile, "letter,year", _ => { }));
        Assert.Equal("registers/gb-registry-diamond.csv does not start with letter,year", fault.Message);
        RegisterFiles.Lines("registers/no-such.csv", "letter,year", _ => Assert.Fail("A file that is not there has a line."));
    }

    [Fact]
    public void Read_Register_HasTheRowsOfItsTwoFiles()
    {
        // The first and the last line of each file.
        Register register = RegisterFiles.Read("US", "reissue");
        Assert.Equal(("US", "reissue"), (register.Office, register.Right));
        Assert.Contains(new RegisterRow(1, 6, DateWindow.InYear(1838), RowOrigin.Source, "USPTO table as copied at uspat.com"), register.Rows);
        Assert.Contains(new RegisterRow(33126, 33508, DateWindow.InYear(1990), RowOrigin.Memory, "recalled", "", 366), register.Rows);
        Assert.Contains(register.Rows, r => r is { First: 575, Last: 575 } && r.Dates.ToString() == "1858-07-27");
        Assert.Equal(153 + 73, register.Rows.Count);
    }

    [Theory]
    [InlineData("a,b,,c", new[] { "a", "b", "", "c" })]
    [InlineData("\"a, b\",\"say \"\"c\"\"\",", new[] { "a, b", "say \"c\"", "" })]
    [InlineData("", new[] { "" })]
    [InlineData(",", new[] { "", "" })]
    [InlineData("a\"b,c", new[] { "a\"b", "c" })]
    [InlineData("\"a\"", new[] { "a" })]
    [InlineData("\"\",\"\"\"\"", new[] { "", "\"" })]
    [InlineData("\"a,b", new[] { "a,b" })]
    [InlineData("x,\"a\",y", new[] { "x", "a", "y" })]
    public void Split_Line_FollowsRfc4180(string line, string[] expected)
    {
        var fields = new List<string> { "of the line before" };
        CsvLine.Split(line, fields);
        Assert.Equal(expected, fields);
    }
}
