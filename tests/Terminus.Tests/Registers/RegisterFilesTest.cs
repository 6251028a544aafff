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
            RegisterFiles.Names().Select(n => n.Office + " " + n.Right).OrderBy(n => n, StringComparer.Ordinal));

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
    [InlineData("a,b,,c", new[] { "a", "b", "", "c" })]
    [InlineData("\"a, b\",\"say \"\"c\"\"\",", new[] { "a, b", "say \"c\"", "" })]
    [InlineData("", new[] { "" })]
    public void Split_Line_FollowsRfc4180(string line, string[] expected)
    {
        var fields = new List<string>();
        CsvLine.Split(line, fields);
        Assert.Equal(expected, fields);
    }
}
