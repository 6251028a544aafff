using NodaTime;
using NodaTime.Text;

namespace Terminus.Tests.Registers;

public class RegisterSetTest
{
    [Fact]
    public void Read_PatentOf27January1880_HoldsTheDayOnThePatent()
    {
        // US 223,898 is dated 27 January 1880 in its heading.
        NumberReading reading = RegisterSet.BuiltIn.Read("US", "utility", "223,898");
        Assert.Equal(NumberOutcome.Found, reading.Outcome);
        Assert.Equal(DateWindow.InYear(1880), reading.Outer);
        Assert.Contains(reading.Windows.Skip(1), w => w.Window.Contains(new LocalDate(1880, 1, 27)));
        Assert.Equal("US223898A", reading.DocumentId);
        Assert.Equal(RowOrigin.Source, reading.Origin);
        Assert.NotEmpty(reading.Sources);
    }

    [Theory] // Headings of the published patents, recalled.
    [InlineData("6469", "1849-05-22")]
    [InlineData("174465", "1876-03-07")]
    [InlineData("821393", "1906-05-22")]
    [InlineData("1773980", "1930-08-26")]
    [InlineData("2717437", "1955-09-13")]
    [InlineData("3541541", "1970-11-17")]
    [InlineData("4405829", "1983-09-20")]
    [InlineData("6285999", "2001-09-04")]
    public void Read_WellKnownUtilityPatents_LieInsideTheFirmWindows(string number, string issued)
    {
        NumberReading reading = RegisterSet.BuiltIn.Read("US", "utility", number);
        LocalDate day = LocalDatePattern.Iso.Parse(issued).Value;
        Assert.True(reading.Windows.Count > 1);
        Assert.All(reading.Windows.Where(w => w.Confidence >= 0.95), w => Assert.True(w.Window.Contains(day), w.ToString()));
    }

    [Theory]
    [InlineData("GB", "registered-design", "345678", "1899", "a.whitton.tripod.com: 331,707 in 1899 and 351,202 in 1900")]
    [InlineData("GB", "registered-design", "200049", "1892", "Northern Ceramic Society: October 1892")]
    [InlineData("US", "design", "46310", "1914", "vintagecorkscrews.com: 25 August 1914")]
    [InlineData("US", "design", "119978", "1940", "morninggloryjewelry.com: 1940")]
    [InlineData("US", "plant", "1010", "1951", "Index of Patents 1951: 1,001 to 1,058")]
    [InlineData("US", "reissue", "23400", "1951", "Index of Patents 1951: 23,315 to 23,448")]
    [InlineData("US", "trade-mark", "166400", "1923", "Official Gazette vol. 309: 166,340 to 166,531 on 3 April 1923")]
    [InlineData("DE", "patent", "67207", "1893", "porcelainmarksandmore.com: 23 February 1893")]
    [InlineData("DE", "utility-model", "127338", "1899", "econterms.net: 1899")]
    [InlineData("CA", "patent", "807375", "1969", "lens.org export: 4 March 1969")]
    [InlineData("GB", "patent", "10811/97", "1897", "econterms.net: the number belongs to the year of application")]
    public void Read_DatedNumber_NamesItsYear(string office, string right, string number, string year, string source)
    {
        NumberReading reading = RegisterSet.BuiltIn.Read(office, right, number);
        int expected = int.Parse(year, System.Globalization.CultureInfo.InvariantCulture);
        Assert.True(reading.Best is { } best && DateWindow.InYear(expected).Contains(best), reading + ", but " + source);
    }

    [Theory]
    [InlineData("US", "utility", "99999999", NumberOutcome.BeyondSeries, "registers.beyond-series")]
    [InlineData("US", "utility", "0", NumberOutcome.Impossible, "registers.no-fit")]
    [InlineData("US", "utility", "no number", NumberOutcome.Impossible, "registers.not-a-number")]
    [InlineData("US", "utility", "9??,???,???", NumberOutcome.BeyondSeries, "registers.beyond-series")]
    [InlineData("GB", "patent", "50000", NumberOutcome.BetweenSeries, "registers.between-series")]
    [InlineData("GB", "patent", "5000/1860", NumberOutcome.BeyondSeries, "registers.beyond-series")]
    [InlineData("IT", "patent", "12", NumberOutcome.BeforeSeries, "registers.before-series")]
    [InlineData("XX", "patent", "1", NumberOutcome.UnknownRegister, "registers.unknown-office")]
    [InlineData("US", "petty-patent", "1", NumberOutcome.UnknownRegister, "registers.unknown-right")]
    public void Read_NumberWithoutADate_SaysWhy(string office, string right, string number, NumberOutcome outcome, string rule)
    {
        NumberReading reading = RegisterSet.BuiltIn.Read(office, right, number);
        Assert.Equal(outcome, reading.Outcome);
        Assert.Empty(reading.Windows);
        Assert.Null(reading.Best);
        Assert.Equal(rule, Assert.Single(reading.Reasons).Rule);
    }

    [Fact]
    public void Read_NumberBeyondTheSeries_SaysHowFarItIsKnown()
        => Assert.Equal(
            "Number 99999999 lies beyond the series as known: US utility is known up to 12651603, by 9 June 2026.",
            ReasonText.Of(RegisterSet.BuiltIn.Read("US", "utility", "99999999").Reasons[0]));

    [Fact]
    public void Read_BritishNumberWithoutItsYear_GivesEveryYear()
    {
        // From 1852 to 1915 each year began again at 1 (econterms.net); numbers above 10,811 were reached from 1884 on.
        NumberReading reading = RegisterSet.BuiltIn.Read("GB", "patent", "10811");
        Assert.Equal(NumberOutcome.Several, reading.Outcome);
        Assert.Equal(DateWindow.BetweenYears(1884, 1915), reading.Outer);
        Assert.Equal(32, reading.Alternatives.Count);
        Assert.Null(reading.Best);
        Assert.Equal(RegisterSet.BuiltIn.Read("GB", "patent", "10811/1897"), RegisterSet.BuiltIn.Read("UK", "Patent", "10811 of 1897"));
    }

    [Fact]
    public void Read_LostDigits_GivesAllThatFit()
    {
        // The table: 2,391,856 starts 1946 and 2,492,944 starts 1951.
        NumberReading reading = RegisterSet.BuiltIn.Read("US", "utility", "2,4?4,1?2");
        Assert.Equal(DateWindow.BetweenYears(1946, 1950), reading.Outer);
        Assert.Equal("100 numbers fit 24?41?2, from 2404102 to 2494192.", ReasonText.Of(reading.Reasons[0]));
        Assert.Empty(reading.DocumentIds);
    }

    [Fact]
    public void Read_LostFirstDigit_KeepsTheSeparateSpans()
    {
        NumberReading reading = RegisterSet.BuiltIn.Read("US", "utility", "?23,898");
        Assert.Equal(NumberOutcome.Several, reading.Outcome);
        Assert.Contains(DateWindow.InYear(1880), reading.Alternatives);
        Assert.All(reading.Alternatives, a => Assert.True(reading.Outer.Contains(a)));
    }

    [Fact]
    public void Read_CopiesThatDisagree_GivesBothYears()
    {
        // 1839 begins at 1,061 in one copy of the table and at 1,106 in two.
        Assert.Equal(DateWindow.BetweenYears(1838, 1839), RegisterSet.BuiltIn.Read("US", "utility", "1070").Outer);
        Assert.Equal(DateWindow.InYear(1839), RegisterSet.BuiltIn.Read("US", "utility", "1106").Outer);
    }

    [Fact]
    public void Read_RowFromMemory_IsWiderAndSaysSo()
    {
        NumberReading reading = RegisterSet.BuiltIn.Read("DE", "utility-model", "14886");
        Assert.Equal(RowOrigin.Memory, reading.Origin);
        Assert.True(reading.Outer.Days > 4 * 365);
        Assert.Contains(reading.Reasons, r => r.Rule == "registers.from-memory");
        Assert.Contains(reading.Reasons, r => r.Rule == "registers.allowance");
    }

    [Fact]
    public void Numbers_OfAYear_AreThoseOfTheTable()
    {
        NumberRange range = Assert.Single(RegisterSet.BuiltIn.Numbers("US", "utility", DateWindow.InYear(1880)));
        Assert.Equal((223211, 236136), (range.First, range.Last));
        Assert.Empty(RegisterSet.BuiltIn.Numbers("US", "utility", DateWindow.InYear(1700)));
        Assert.Empty(RegisterSet.BuiltIn.Numbers("XX", "utility", DateWindow.Any));
    }

    [Fact]
    public void Numbers_OfOneIssue_NarrowToTheDatedNumbersAroundIt()
    {
        // Weekly list of the Scientific American: 228,161 to 228,432 issued on 1 June 1880.
        NumberRange range = Assert.Single(RegisterSet.BuiltIn.Numbers("US", "utility", DateWindow.On(new LocalDate(1880, 6, 1))));
        Assert.True(range.Likely!.Contains(228161) && range.Likely.Contains(228432));
        Assert.True(range.Likely.Last - range.Likely.First < (range.Last - range.First) / 4);
    }

    [Fact]
    public void With_RegisterOfTheUser_ReplacesOneAndLeavesTheOther()
    {
        var own = new Register("ZZ", "patent", [new RegisterRow(1, 50, DateWindow.InYear(1901), RowOrigin.Source, "an invented gazette")]);
        RegisterSet set = RegisterSet.BuiltIn.With(own);
        Assert.Equal(DateWindow.InYear(1901), set.Read("zz", "patent", "7").Outer);
        Assert.Null(RegisterSet.BuiltIn.Find("ZZ", "patent"));
        Assert.Contains("ZZ", set.Offices);
        Assert.Same(set.Find("US", "utility"), RegisterSet.BuiltIn.Find("US", "utility"));
    }

    [Fact]
    public void OfficesAndRights_AreInAlphabeticalOrder()
    {
        Assert.Equal(["AT", "BE", "CA", "CH", "DE", "FR", "GB", "IT", "US"], RegisterSet.BuiltIn.Offices);
        Assert.Equal(["design", "plant", "reissue", "trade-mark", "utility", "x-patent"], RegisterSet.BuiltIn.Rights(" us "));
        Assert.Equal(["patent", "registered-design"], RegisterSet.BuiltIn.Rights("UK"));
        Assert.Empty(RegisterSet.BuiltIn.Rights("XX"));
    }

    [Theory]
    [InlineData("uk ", " Registered-Design")]
    [InlineData("Gb", "REGISTERED-DESIGN")]
    public void Find_OfficeAndRightInAnyForm_IsTheRegister(string office, string right)
        => Assert.Same(RegisterSet.BuiltIn.Find("GB", "registered-design"), RegisterSet.BuiltIn.Find(office, right));

    [Fact]
    public void Read_RegisterThatIsNotThere_SaysWhichAre()
    {
        NumberReading office = RegisterSet.BuiltIn.Read(" xx", "Patent", "12");
        Assert.Equal("There is no register of the office XX; known are AT, BE, CA, CH, DE, FR, GB, IT, US.", ReasonText.Of(Assert.Single(office.Reasons)));
        Assert.Equal(("XX", "patent", "12", NumberOutcome.UnknownRegister), (office.Office, office.Right, office.Number, office.Outcome));
        Assert.Equal(
            "The office DE has no register of design here; known are patent, utility-model.",
            ReasonText.Of(Assert.Single(RegisterSet.BuiltIn.Read("de", "design", "12").Reasons)));
    }

    [Fact]
    public void Members_Null_IsTheCallersMistake()
    {
        Assert.Throws<ArgumentNullException>("office", () => RegisterSet.BuiltIn.Find(null!, "patent"));
        Assert.Throws<ArgumentNullException>("right", () => RegisterSet.BuiltIn.Find("US", null!));
        Assert.Throws<ArgumentNullException>("office", () => RegisterSet.BuiltIn.Rights(null!));
        Assert.Throws<ArgumentNullException>("number", () => RegisterSet.BuiltIn.Read("US", "utility", null!));
        Assert.Throws<ArgumentNullException>("number", () => RegisterSet.BuiltIn.Read("XX", "utility", null!));
        Assert.Throws<ArgumentNullException>("register", () => RegisterSet.BuiltIn.With(null!));
    }

    [Fact]
    public void ToString_Reading_NamesItsNumberAndWindow()
    {
        Assert.Equal("US utility 223898: 1880-01-01/1880-12-31", RegisterSet.BuiltIn.Read("US", "utility", "223,898").ToString());
        Assert.Equal("US utility 99999999: BeyondSeries", RegisterSet.BuiltIn.Read("US", "utility", "99,999,999").ToString());
    }

    [Fact]
    public void Read_PublishedDatedNumbersOfOtherOffices_LieInsideTheirOuterWindow()
    {
        foreach (DatedNumbers.Dated dated in DatedNumbers.All().Where(d => d.Office is "DE" or "GB" && d.Right != "design-serial"))
        {
            // A British number of a year belongs to the application, so its day of filing is tested.
            bool yearly = dated is { Office: "GB", Right: "patent" } && dated.Number.Length < 6;
            string year = dated.Filed.Length > 3 ? dated.Filed[..4] : "";
            string number = yearly && year.Length > 0 ? dated.Number + "/" + year : dated.Number;
            NumberReading reading = RegisterSet.BuiltIn.Read(dated.Office, dated.Right, number);
            if ((yearly ? LocalDatePattern.Iso.Parse(dated.Filed) : LocalDatePattern.Iso.Parse(dated.Issued)) is { Success: true } day)
            {
                Assert.True(reading.Windows.Count > 0 && reading.Outer.Contains(day.Value), dated + " is outside " + reading);
            }
        }
    }
}
