using NodaTime.Text;

namespace Terminus.Tests.EvidenceKinds;

/// <summary>The terms of TestData/evidence/us-terms.csv, each with its statute.</summary>
public class LegalTermsTest
{
    public static TheoryData<string, string, string, int, bool> Statutes
    {
        get
        {
            var data = new TheoryData<string, string, string, int, bool>();
            foreach (string[] row in TestTable.Rows("evidence", "us-terms.csv"))
            {
                data.Add(row[1], row[2], row[3], int.Parse(row[4], System.Globalization.CultureInfo.InvariantCulture), row[5] == "exact");
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Statutes))]
    public void Longest_FirstAndLastDayOfAStatute_IsItsTerm(string right, string from, string to, int years, bool exact)
    {
        foreach (string day in new[] { from, to })
        {
            int longest = LegalTerms.Longest("US", right, DateWindow.On(LocalDatePattern.Iso.Parse(day).Value));
            Assert.True(exact ? longest == years : longest >= years, $"{right} {day}: {longest}");
        }
    }

    [Fact]
    public void Longest_WindowAcrossTwoStatutes_IsTheLonger()
    {
        Assert.Equal(21, LegalTerms.Longest("US", "utility", DateWindow.BetweenYears(1855, 1865)));
        Assert.Equal(20, LegalTerms.Longest("US", "utility", DateWindow.BetweenYears(1970, 1980)));
        Assert.Equal(21, LegalTerms.Longest("US", "utility", DateWindow.Any));
    }

    [Theory]
    [InlineData("XX", "patent")]
    [InlineData(null, null)]
    [InlineData("US", "invented-right")]
    public void Longest_UnknownOfficeOrRight_IsAtLeastAnyPatentTerm(string? office, string? right)
        => Assert.True(LegalTerms.Longest(office, right, DateWindow.InYear(1900)) >= 21);
}
