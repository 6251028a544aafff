namespace Terminus.Tests.Dates;

public class EdtfSeasonsTest
{
    // Codes and the lengths of quarters, quadrimesters and semesters: specification, Level 2 "Sub-year groupings".
    // Months of seasons: the meteorological convention of whole months, spring from March in the north and from September in the south;
    // a season without a hemisphere is the hull of both. The specification gives seasons no dates.
    [Theory]
    [InlineData(21, "2001-03-01", "2001-11-30")]
    [InlineData(22, "2001-06-01", "2002-02-28")]
    [InlineData(23, "2001-03-01", "2001-11-30")]
    [InlineData(24, "2001-06-01", "2002-02-28")]
    [InlineData(25, "2001-03-01", "2001-05-31")]
    [InlineData(26, "2001-06-01", "2001-08-31")]
    [InlineData(27, "2001-09-01", "2001-11-30")]
    [InlineData(28, "2001-12-01", "2002-02-28")]
    [InlineData(29, "2001-09-01", "2001-11-30")]
    [InlineData(30, "2001-12-01", "2002-02-28")]
    [InlineData(31, "2001-03-01", "2001-05-31")]
    [InlineData(32, "2001-06-01", "2001-08-31")]
    [InlineData(33, "2001-01-01", "2001-03-31")]
    [InlineData(34, "2001-04-01", "2001-06-30")]
    [InlineData(35, "2001-07-01", "2001-09-30")]
    [InlineData(36, "2001-10-01", "2001-12-31")]
    [InlineData(37, "2001-01-01", "2001-04-30")]
    [InlineData(38, "2001-05-01", "2001-08-31")]
    [InlineData(39, "2001-09-01", "2001-12-31")]
    [InlineData(40, "2001-01-01", "2001-06-30")]
    [InlineData(41, "2001-07-01", "2001-12-31")]
    public void Grouping_OfAYear_HasItsMonths(int code, string earliest, string latest)
    {
        EdtfDate date = EdtfDate.Parse("2001-" + DateText.Digits(code));
        Assert.Equal((earliest, latest, code <= 24 ? 1 : 2), (date.Earliest.ToString(), date.Latest.ToString(), date.Level));
    }

    [Fact]
    public void Grouping_ThatRunsIntoALeapYear_EndsOnItsLeapDay()
        => Assert.Equal("2004-02-29", EdtfDate.Parse("2003-28").Latest.ToString());
}
