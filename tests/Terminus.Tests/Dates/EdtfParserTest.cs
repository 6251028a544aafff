namespace Terminus.Tests.Dates;

/// <summary>The rarer ways to be wrong, each at its place and with its own reason; the common ones are with <see cref="EdtfDateTest"/>.</summary>
public class EdtfParserTest
{
    [Theory]
    [InlineData("?~1985", 1, "One qualifier is enough: ? uncertain, ~ approximate, % both. Found '~'.")]
    [InlineData("1985-?~04", 6, "One qualifier is enough: ? uncertain, ~ approximate, % both. Found '~'.")]
    [InlineData("1985-04?~", 8, "One qualifier is enough: ? uncertain, ~ approximate, % both. Found '~'.")]
    [InlineData("1985-04-?~12", 9, "One qualifier is enough: ? uncertain, ~ approximate, % both. Found '~'.")]
    [InlineData("2001-21?~", 8, "One qualifier is enough: ? uncertain, ~ approximate, % both. Found '~'.")]
    [InlineData("1985-04-1", 9, "A day has two digits, 01 to 31, or X for a digit that is unspecified. The text ends here.")]
    [InlineData("1985-00", 5, "A month is 01 to 12, and a season or other grouping 21 to 41. Found 00.")]
    [InlineData("19XX-02-30", 8, "No day of the calendar fits these digits.")]
    [InlineData("?1985-04-12T10:00:00", 11, "A time of day follows only a complete date without ?, ~, % or X. Found 'T'.")]
    public void TryParse_DateThatIsNone_SaysWhereAndWhy(string text, int position, string reason) => AssertRefused(text, position, reason);

    [Theory]
    [InlineData("Y", 1, "A year after Y is a whole number above 0, in digits. The text ends here.")]
    [InlineData("Y17E7-01", 5, "A year with Y, E or S stands alone, without a month. Found '-'.")]
    [InlineData("Y17E", 4, "The exponent after E is a whole number above 0, in digits. The text ends here.")]
    [InlineData("Y17000E0", 7, "The exponent after E is at least 1.")]
    [InlineData("1950S", 5, "The count of significant digits after S is a whole number above 0, in digits. The text ends here.")]
    [InlineData("1950S0", 5, "The count of significant digits after S is at least 1.")]
    public void TryParse_LongYearThatIsNone_SaysWhereAndWhy(string text, int position, string reason) => AssertRefused(text, position, reason);

    [Theory]
    [InlineData("1985/86", 7, "A year has four digits, or X for a digit that is unspecified, or Y before a longer year. The text ends here.")]
    [InlineData("1985/1986/1987", 9, "Nothing follows the second end of an interval. Found '/'.")]
    [InlineData("19856", 4, "After this date only '/' and another may follow; a year has four digits, a month and a day two, with hyphens between. Found '6'.")]
    [InlineData("[1667]x", 6, "Nothing follows a set. Found 'x'.")]
    [InlineData("[1667..16]", 9, "A year has four digits, or X for a digit that is unspecified, or Y before a longer year. Found ']'.")]
    [InlineData("[]", 1, "A member of a set is a date, such as 1956 or 1956-03-06. Found ']'.")]
    [InlineData("{}", 1, "A member of a set is a date, such as 1956 or 1956-03-06. Found '}'.")]
    [InlineData("[1667,,1668]", 6, "A member of a set is a date, such as 1956 or 1956-03-06. Found ','.")]
    [InlineData("[1667-04-12T10:00:00]", 11, "A time of day is allowed only on a single date, not in a set.")]
    public void TryParse_SeveralDatesThatAreNone_SaysWhereAndWhy(string text, int position, string reason) => AssertRefused(text, position, reason);

    [Fact]
    public void TryParse_TextAtTheLimit_IsRead()
    {
        string text = "[" + string.Join(",", Enumerable.Repeat("1956", 195).Concat(Enumerable.Repeat("1956~", 4))) + "]";
        Assert.Equal(1000, text.Length);
        Assert.True(EdtfDate.TryParse(text, out _));
    }

    // 9223372036854775807 is the largest number of 64 bits.
    [Theory]
    [InlineData("Y922337203685477580E1", 9_223_372_036_854_775_800)]
    [InlineData("Y9223372036854775807", long.MaxValue)]
    public void TryParse_YearThatJustFits_IsRead(string text, long year) => Assert.Equal(year, EdtfDate.Parse(text).Earliest.Year);

    [Theory]
    [InlineData("?1956-?03", true, false)]
    [InlineData("~1956-~03", false, true)]
    [InlineData("1956?/1960?", true, false)]
    [InlineData("1956~/1960~", false, true)]
    public void TryParse_QualifierGivenTwice_StillHolds(string text, bool uncertain, bool approximate)
    {
        EdtfDate date = EdtfDate.Parse(text);
        Assert.Equal((uncertain, approximate), (date.IsUncertain, date.IsApproximate));
    }

    [Fact]
    public void InYear_TheLongestYearsWithoutY_AreWrittenWithoutIt()
    {
        Assert.Equal(("-9999", "9999"), (EdtfDate.InYear(-9999).ToString(), EdtfDate.InYear(9999).ToString()));
        Assert.Equal(("Y-10000", "Y10000"), (EdtfDate.InYear(-10_000).ToString(), EdtfDate.InYear(10_000).ToString()));
    }

    [Fact]
    public void Parse_LongText_IsShownInPart()
    {
        string shown = new('x', 80);
        Assert.StartsWith("Not an EDTF date: '" + shown + "'.", Assert.Throws<EdtfException>(() => EdtfDate.Parse(shown)).Message, StringComparison.Ordinal);
        EdtfException longer = Assert.Throws<EdtfException>(() => EdtfDate.Parse(shown + "y"));
        Assert.StartsWith("Not an EDTF date: '" + shown + "…'.", longer.Message, StringComparison.Ordinal);
        Assert.Equal(shown + "y", longer.Text);
    }

    private static void AssertRefused(string text, int position, string reason)
    {
        Assert.False(EdtfDate.TryParse(text, out _, out EdtfError? error));
        Assert.Equal((position, reason), (error.Position, error.Reason));
    }

    [Theory]
    [InlineData("1956-03-06", "1956-03-06")]
    [InlineData("0000-02-29", "0000-02-29")]
    [InlineData("1900-02-29", null)] // no leap year
    [InlineData("1956-13-01", null)]
    [InlineData("1956-03-00", null)]
    [InlineData("1956-03-6?", null)]
    [InlineData("1956/03/06", null)]
    [InlineData("1956-03", null)]
    [InlineData("", null)]
    public void DayOf_ADayAndNothingElse_IsThatDay(string text, string? day)
        => Assert.Equal(day, EdtfParser.DayOf(text.AsSpan()) is { } number ? DateText.Iso(number) : null);
}
