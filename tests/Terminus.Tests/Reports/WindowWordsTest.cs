namespace Terminus.Tests.Reports;

public class WindowWordsTest
{
    [Theory]
    [InlineData(0.8976, "0.897")]
    [InlineData(0.8999999, "0.899")]
    [InlineData(0.8999999999, "0.9")]
    [InlineData(0.9, "0.9")]
    [InlineData(1, "1")]
    [InlineData(0, "0")]
    public void Lower_Belief_IsRoundedDown(double belief, string text) => Assert.Equal(text, WindowWords.Lower(belief));

    [Theory]
    [InlineData(0.0001, "0.001")]
    [InlineData(0.9991, "1")]
    [InlineData(0.08, "0.08")]
    [InlineData(0, "0")]
    public void Upper_Plausibility_IsRoundedUp(double plausibility, string text) => Assert.Equal(text, WindowWords.Upper(plausibility));

    [Theory]
    [InlineData(1, "1 day")]
    [InlineData(0, "0 days")]
    [InlineData(2, "2 days")]
    [InlineData(59, "59 days")]
    [InlineData(60, "2 months")]
    [InlineData(152, "5 months")]
    [InlineData(729, "24 months")]
    [InlineData(730, "2 years")]
    [InlineData(9497, "26 years")]
    public void Span_Days_ReadsInTheUnitThatFits(int days, string text) => Assert.Equal(text, WindowWords.Span(days));

    [Theory]
    [InlineData("1956-03-06/1961-07-11", "6 March 1956 to 11 July 1961", "6 March 1956 or later", "1956–1961", "1956 or later")]
    [InlineData("1961-07-11", "11 July 1961", "11 July 1961 or later", "1961", "1961 or later")]
    [InlineData("../1961-07-11", "until 11 July 1961", "any date", "1961 or earlier", "any date")]
    public void Days_AndYears_OfAWindow_NameItsEnds(string edtf, string days, string daysUpToIt, string years, string yearsUpToIt)
    {
        DateWindow window = EdtfDate.Parse(edtf).Window!.Value;
        Assert.Equal(days, WindowWords.Days(window));
        Assert.Equal(days, WindowWords.DaysUpTo(window, window.LastDay + 1));
        Assert.Equal(daysUpToIt, WindowWords.DaysUpTo(window, window.LastDay));
        Assert.Equal(years, WindowWords.YearsUpTo(window, window.LastDay + 1));
        Assert.Equal(yearsUpToIt, WindowWords.YearsUpTo(window, window.LastDay));
    }

    [Fact]
    public void Days_OpenEnds_AreSaid()
    {
        Assert.Equal("any date", WindowWords.Days(DateWindow.Any));
        Assert.Equal("from 11 July 1961", WindowWords.Days(DateWindow.From(new NodaTime.LocalDate(1961, 7, 11))));
    }

    // A window of a year or more reads as years, a shorter one as days.
    [Theory]
    [InlineData("1961-07-11", "11 July 1961")]
    [InlineData("1961-07", "1 July 1961 to 31 July 1961")]
    [InlineData("1961-01-01/1961-12-26", "1 January 1961 to 26 December 1961")]
    [InlineData("1961-01-01/1961-12-27", "1961")]
    [InlineData("1961", "1961")]
    [InlineData("196X", "1960–1969")]
    [InlineData("1961~", "about 1961")]
    [InlineData("1961?", "1961 (uncertain)")]
    [InlineData("1961-07-11%", "about 11 July 1961 (uncertain)")]
    [InlineData("1961/..", "from 1 January 1961")]
    [InlineData("../1961", "until 31 December 1961")]
    public void AddWords_ADate_SaysWhatIsKnownOfIt(string edtf, string words)
        => Assert.Equal(words, new TextBuffer().AddWords(EvidenceDate.Parse(edtf)).ToString());

    [Fact]
    public void AddWords_NoDate_IsUnknown() => Assert.Equal("unknown", new TextBuffer().AddWords((EvidenceDate?)null).ToString());

    [Fact]
    public void Years_NoInterval_IsNoSingleDate() => Assert.Equal("no single date", WindowWords.Years((DatedInterval?)null));
}
