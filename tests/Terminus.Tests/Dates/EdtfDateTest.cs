using NodaTime;

namespace Terminus.Tests.Dates;

public class EdtfDateTest
{
    // Source: the specification of the Library of Congress; see TestData/edtf/README.md.
    public static TheoryData<string, string, string, string> Vectors()
    {
        TheoryData<string, string, string, string> data = [];
        foreach (string[] row in TestTable.Rows("edtf", "vectors.csv"))
        {
            data.Add(row[0], row[1], row[2], row[3]);
        }

        return data;
    }

    public static TheoryData<string, string> InvalidTexts()
    {
        TheoryData<string, string> data = [];
        foreach (string[] row in TestTable.Rows("edtf", "invalid.csv"))
        {
            data.Add(row[0], row[2]);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Vectors))]
    public void TryParse_PublishedVector_HasItsLevelAndEnds(string text, string level, string earliest, string latest)
    {
        if (earliest == "invalid")
        {
            Assert.False(EdtfDate.TryParse(text, out _));
            return;
        }

        EdtfDate date = EdtfDate.Parse(text);
        Assert.Equal(
            (level, earliest, latest, text),
            (DateText.Digits(date.Level), date.Earliest.ToString(), date.Latest.ToString(), date.ToString()));
    }

    [Theory]
    [MemberData(nameof(InvalidTexts))]
    public void TryParse_InvalidText_IsRefusedWithReason(string text, string why)
    {
        Assert.False(EdtfDate.TryParse(text, out EdtfDate? date, out EdtfError? error), why);
        Assert.Null(date);
        Assert.InRange(error.Position, 0, text.Length);
        Assert.Matches("[.?]$", error.Reason);
    }

    [Fact]
    public void Tables_AreWhole()
    {
        Assert.Equal((112, 51), (Vectors().Count, InvalidTexts().Count));
    }

    [Theory]
    [InlineData("1985-13", 5, "A month is 01 to 12, and a season or other grouping 21 to 41. Found 13.")]
    [InlineData("1985-04-31", 8, "April of that year has days 01 to 30.")]
    [InlineData("1900-02-29", 8, "February of that year has days 01 to 28.")]
    [InlineData("1985–04", 4, "Found the character U+2013.")]
    [InlineData("1985-4", 6, "A month has two digits, 01 to 12, or X for a digit that is unspecified. The text ends here.")]
    [InlineData("circa 1985", 0, "A year has four digits, or X for a digit that is unspecified, or Y before a longer year. Found 'c'.")]
    [InlineData("1985..1986", 4, "'..' is for an open end of an interval, such as 1985/.., or a range in a set, such as [1985..1986]. Found '.'.")]
    [InlineData("1986/1985", 5, "The interval ends before it begins.")]
    [InlineData("../..", 0, "An interval has a date at one end at least.")]
    [InlineData("..", 2, "After '..' at the start comes '/' and a date. The text ends here.")]
    [InlineData("1985/1986-04-12T10:00:00", 15, "A time of day is allowed only on a single date, not in an interval.")]
    [InlineData("1985-04T10:00:00", 7, "A time of day follows only a complete date. Found 'T'.")]
    [InlineData("[1667, 1668]", 6, "Found a space.")]
    [InlineData("[1667..1668-04]", 7, "The two ends of a range in a set have the same precision")]
    [InlineData("[1670..1660]", 7, "The range ends before it begins.")]
    [InlineData("[1670..,1680]", 7, "'..' with nothing after it is allowed only at the end of a set.")]
    [InlineData("[..1670..]", 7, "A member of a set is open to one side only.")]
    [InlineData("{1670]", 5, "A set goes on with ',', with '..' for a range, or ends with '}'; no spaces. Found ']'.")]
    [InlineData("Y9999", 1, "Y is only for years beyond four digits")]
    [InlineData("Y-0", 2, "A year after Y has more than four digits and does not begin with 0. Found '0'.")]
    [InlineData("Y17E2", 1, "Y is only for years beyond four digits")]
    [InlineData("Y9223372036854775808", 1, "The number does not fit in 64 bits")]
    [InlineData("Y17E99999999999999999999", 4, "The number does not fit in 64 bits")]
    [InlineData("Y17E30", 4, "The number does not fit in 64 bits")]
    [InlineData("Y9223372036854775807S1", 20, "The number does not fit in 64 bits")]
    [InlineData("-0000", 0, "Year 0 has no minus; it is written 0000 and is 1 BCE.")]
    [InlineData("XXX1-02-29", 8, "No day of the calendar fits these digits.")]
    [InlineData("2001-21-05", 7, "A season or other grouping has no day after it. Found '-'.")]
    [InlineData("1985-04-12T10:00:00-00:00", 19, "A time shift of zero has a plus, or is written Z.")]
    [InlineData("1984??", 5, "One qualifier is enough: ? uncertain, ~ approximate, % both. Found '?'.")]
    public void TryParse_InvalidText_SaysWhereAndWhy(string text, int position, string reason)
    {
        Assert.False(EdtfDate.TryParse(text, out _, out EdtfError? error));
        Assert.Equal(position, error.Position);
        Assert.Contains(reason, error.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void TryParse_TextOverTheLimit_IsRefused()
    {
        string members = string.Join(",", Enumerable.Repeat("1956", 199));
        Assert.True(EdtfDate.TryParse("[" + members + "]", out _));
        Assert.False(EdtfDate.TryParse("[" + members + ",1956-1]", out _, out EdtfError? error));
        Assert.Equal((1000, "A date has at most 1000 characters."), (error.Position, error.Reason));
    }

    [Fact]
    public void TryParse_Null_IsRefused()
    {
        Assert.False(EdtfDate.TryParse(null, out EdtfDate? date, out EdtfError? error));
        Assert.Null(date);
        Assert.Equal(0, error.Position);
    }

    [Fact]
    public void Parse_InvalidText_ThrowsWithTextPositionAndReason()
    {
        EdtfException exception = Assert.Throws<EdtfException>(() => EdtfDate.Parse("1956-3"));
        Assert.Equal(("1956-3", 6), (exception.Text, exception.Position));
        Assert.Equal(exception.Error.Reason, exception.Reason);
        Assert.StartsWith("Not an EDTF date: '1956-3'. At position 6: A month has two digits", exception.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => EdtfDate.Parse(null!));
    }

    // The scope of qualifiers: specification, Level 1 "Qualification of a date", Level 2 "Qualification".
    [Theory]
    [InlineData("1984?", true, false)]
    [InlineData("2004-06~", false, true)]
    [InlineData("2004-06-11%", true, true)]
    [InlineData("?2004-06-~11", true, true)]
    [InlineData("2004-06-~01/2004-06-~20", false, true)]
    [InlineData("1984?/2004~", true, true)]
    [InlineData("[1667?,1670]", true, false)]
    [InlineData("1984", false, false)]
    public void Qualifiers_AnywhereInTheText_AreReported(string text, bool uncertain, bool approximate)
    {
        EdtfDate date = EdtfDate.Parse(text);
        Assert.Equal((uncertain, approximate), (date.IsUncertain, date.IsApproximate));
    }

    // Level 2 "Interval": portions of a date within an interval may be approximate, uncertain or unspecified.
    [Theory]
    [InlineData("201X/2020", 2)]
    [InlineData("2009/201X", 2)]
    [InlineData("-1985/1985", 1)]
    [InlineData("Y12000/..", 1)]
    [InlineData("2001-21/2003", 1)]
    [InlineData("2001-33/2003", 2)]
    [InlineData("201X-05", 2)]
    [InlineData("-1985-04-12", 1)]
    [InlineData("2004?-21", 2)]
    [InlineData("1950S2?", 2)]
    public void Level_OfMixedFeatures_IsThatOfTheHighest(string text, int level) => Assert.Equal(level, EdtfDate.Parse(text).Level);

    [Theory]
    [InlineData("9999", true)]
    [InlineData("9999-24", false)]
    [InlineData("-9998", true)]
    [InlineData("-9999", false)]
    [InlineData("Y10000", false)]
    [InlineData("Y-12000/1985", false)]
    [InlineData("../Y12000", false)]
    public void Window_OfEndOutsideTheCalendar_IsNull(string text, bool inside)
        => Assert.Equal(inside, EdtfDate.Parse(text).Window is not null);

    [Fact]
    public void Window_OfOpenOrUnknownEnd_IsOpen()
    {
        DateWindow expected = DateWindow.From(new LocalDate(1985, 4, 12));
        Assert.Equal(expected, EdtfDate.Parse("1985-04-12/..").Window);
        Assert.Equal(expected, EdtfDate.Parse("1985-04-12/").Window);
        Assert.Equal(DateWindow.Any, EdtfDate.Parse("[..1760,1780..]").Window);
    }

    // Year 0 and the minus: specification, Level 1 "Negative calendar year"; years count astronomically, so -XXXX cannot be year 0.
    [Theory]
    [InlineData("-XXXX", "-9999-01-01", "-0001-12-31")]
    [InlineData("-1985S2", "-1999-01-01", "-1900-12-31")]
    [InlineData("-156X-12-25", "-1569-12-25", "-1560-12-25")]
    [InlineData("-0001-28", "-0001-12-01", "0000-02-29")]
    [InlineData("-XX00-02-29", "-9600-02-29", "-0400-02-29")]
    [InlineData("-00XX-02-29", "-0096-02-29", "-0004-02-29")]
    [InlineData("XX00-02-29", "0000-02-29", "9600-02-29")]
    [InlineData("1000S1", "1000-01-01", "1999-12-31")]
    [InlineData("0050S1", "0050-01-01", "0059-12-31")]
    [InlineData("1950S9", "1950-01-01", "1950-12-31")]
    [InlineData("199X-24", "1990-06-01", "2000-02-29")]
    public void Ends_OfRareForms_FollowTheRules(string text, string earliest, string latest)
    {
        EdtfDate date = EdtfDate.Parse(text);
        Assert.Equal((earliest, latest), (date.Earliest.ToString(), date.Latest.ToString()));
    }

    [Theory]
    [InlineData(1956, "1956")]
    [InlineData(-43, "-0043")]
    [InlineData(0, "0000")]
    [InlineData(12_000, "Y12000")]
    [InlineData(int.MinValue, "Y-2147483648")]
    public void InYear_AnyYear_IsWrittenAsEdtfWantsIt(int year, string text)
    {
        EdtfDate date = EdtfDate.InYear(year);
        Assert.Equal((text, year, year), (date.Text, (int)date.Earliest.Year, (int)date.Latest.Year));
    }

    [Fact]
    public void From_OtherCalendar_IsConvertedToIso()
    {
        // 24 Geo. 2 c. 23: the day after 2 September 1752 of the old style was 14 September of the new.
        LocalDate julian = new(1752, 9, 3, CalendarSystem.Julian);
        Assert.Equal("1752-09-14", EdtfDate.From(julian).Text);
    }

    [Fact]
    public void From_AnyDate_IsNull() => Assert.Null(EdtfDate.From(DateWindow.Any));

    [Fact]
    public void Equality_IsThatOfTexts()
    {
        EdtfDate one = EdtfDate.Parse("1985");
        Assert.True(one == EdtfDate.InYear(1985));
        Assert.True(one != EdtfDate.Parse("1985/1985"));
        Assert.True(one.Equals((object)EdtfDate.InYear(1985)));
        Assert.Equal(one.GetHashCode(), EdtfDate.InYear(1985).GetHashCode());
        Assert.False(one.Equals(null));
        Assert.True((EdtfDate?)null == null);
    }
}
