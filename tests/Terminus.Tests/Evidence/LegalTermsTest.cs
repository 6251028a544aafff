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
        Assert.Equal(21, LegalTerms.Longest("US", "reissue", DateWindow.BetweenYears(1860, 1870)));
        Assert.Equal(20, LegalTerms.Longest("US", "reissue", DateWindow.BetweenYears(1970, 1980)));
        Assert.Equal(14, LegalTerms.Longest("US", "design", DateWindow.BetweenYears(1860, 1862)));
        Assert.Equal(21, LegalTerms.Longest("GB", "patent", DateWindow.BetweenYears(1970, 1985)));
    }

    // From memory, each at the longest that a law of its time allowed; the first and the last day of each.
    [Theory]
    [InlineData("GB", "patent", "1852-10-01", 21)]
    [InlineData("GB", "patent", "1978-05-31", 21)]
    [InlineData("GB", "patent", "1978-06-01", 20)]
    [InlineData("GB", "registered-design", "1842-01-01", 6)]
    [InlineData("GB", "registered-design", "1883-12-31", 6)]
    [InlineData("GB", "registered-design", "1884-01-01", 15)]
    [InlineData("GB", "registered-design", "1989-07-31", 15)]
    [InlineData("GB", "registered-design", "1989-08-01", 25)]
    [InlineData("DE", "patent", "1877-07-01", 15)]
    [InlineData("DE", "patent", "1922-12-31", 15)]
    [InlineData("DE", "patent", "1923-01-01", 18)]
    [InlineData("DE", "patent", "1977-12-31", 18)]
    [InlineData("DE", "patent", "1978-01-01", 20)]
    [InlineData("DE", "utility-model", "1891-10-01", 6)]
    [InlineData("DE", "utility-model", "1989-12-31", 6)]
    [InlineData("DE", "utility-model", "1990-01-01", 10)]
    [InlineData("FR", "patent", "1844-10-09", 20)]
    [InlineData("FR", "patent", "1969-01-01", 20)]
    [InlineData("CH", "patent", "1888-11-15", 20)]
    [InlineData("CA", "patent", "1869-01-01", 20)]
    public void Longest_OtherOffice_IsItsTermOfThatDay(string office, string right, string day, int years)
        => Assert.Equal(years, LegalTerms.Longest(office, right, DateWindow.On(LocalDatePattern.Iso.Parse(day).Value)));

    [Theory]
    [InlineData("XX", "design", 25)]
    [InlineData("XX", "registered-design", 25)]
    [InlineData("XX", "utility-model", 10)]
    public void Longest_OfficeNotListed_IsTheLongestOfAll(string office, string right, int years)
        => Assert.Equal(years, LegalTerms.Longest(office, right, DateWindow.InYear(1900)));

    [Theory]
    [InlineData("XX", "patent")]
    [InlineData(null, null)]
    [InlineData("US", "x-patent")]
    [InlineData("US", "invented-right")]
    public void Longest_UnknownOfficeOrRight_IsAtLeastAnyPatentTerm(string? office, string? right)
        => Assert.True(LegalTerms.Longest(office, right, DateWindow.InYear(1900)) >= 21);
}
