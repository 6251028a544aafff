using NodaTime;

namespace Terminus.Tests.Dates;

public class DayNumberTest
{
    [Fact]
    public void Of_EveryMonthOfTheIsoCalendar_AgreesWithNodaTime()
    {
        // Oracle: NodaTime's ISO calendar, a day at each end of each month of its whole range.
        LocalDate first = new(-9998, 1, 1);
        for (int year = -9998; year <= 9999; year++)
        {
            for (int month = 1; month <= 12; month++)
            {
                foreach (int day in new[] { 1, CalendarSystem.Iso.GetDaysInMonth(year, month) })
                {
                    LocalDate date = new(year, month, day);
                    int number = DayNumber.Of(date);
                    Assert.Equal(Period.DaysBetween(first, date) + 1, number);
                    Assert.Equal(date, DayNumber.ToDate(number));
                }
            }
        }
    }

    [Fact]
    public void FirstAndLast_AreTheEndsOfTheCalendar()
    {
        Assert.Equal(DayNumber.First, DayNumber.Of(-9998, 1, 1));
        Assert.Equal(DayNumber.Last, DayNumber.Of(9999, 12, 31));
    }

    [Fact]
    public void Of_OtherCalendar_IsConvertedToIso()
    {
        // 14 September 1752 is the day after 2 September 1752 in Britain (24 Geo. 2 c. 23): Julian 2 September is Gregorian 13 September.
        LocalDate julian = new(1752, 9, 2, CalendarSystem.Julian);
        Assert.Equal(new LocalDate(1752, 9, 13), DayNumber.ToDate(DayNumber.Of(julian)));
    }

    [Theory]
    [InlineData("1880-02-29", 17, "1897-02-28")]
    [InlineData("1880-02-29", 20, "1900-02-28")]
    [InlineData("1961-07-11", 17, "1978-07-11")]
    [InlineData("1961-07-11", -10, "1951-07-11")]
    [InlineData("1961-02-11", 1, "1962-02-11")]
    [InlineData("1961-04-29", 1, "1962-04-29")]
    [InlineData("-9990-03-04", -8, "-9998-03-04")]
    [InlineData("9990-03-04", 9, "9999-03-04")]
    public void PlusYears_KeepsTheDayOfTheYear(string from, int years, string expected)
    {
        LocalDate date = NodaTime.Text.LocalDatePattern.Iso.Parse(from).Value;
        Assert.Equal(expected, DateText.Iso(DayNumber.PlusYears(DayNumber.Of(date), years)));
    }

    [Fact]
    public void PlusYears_StaysInsideTheCalendar()
    {
        Assert.Equal(DayNumber.Last, DayNumber.PlusYears(DayNumber.Of(9990, 1, 1), 20));
        Assert.Equal(DayNumber.First, DayNumber.PlusYears(DayNumber.Of(-9990, 1, 1), -20));
        Assert.Equal(DayNumber.Open, DayNumber.PlusYears(DayNumber.Open, 5));
    }
}
