using System.Globalization;

namespace Terminus.Tests.Dates;

public class DateTextTest
{
    [Fact]
    public void Month_EveryMonth_HasItsEnglishName()
    {
        // Oracle: the names of .NET's invariant culture, which are English.
        for (int month = 1; month <= 12; month++)
        {
            Assert.Equal(CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month), DateText.Month(month));
        }
    }

    [Theory]
    [InlineData(0, 2, 29, "0000-02-29")]
    [InlineData(1, 1, 1, "0001-01-01")]
    [InlineData(9999, 12, 31, "9999-12-31")]
    [InlineData(10_000, 1, 1, "10000-01-01")]
    [InlineData(-44, 3, 15, "-0044-03-15")]
    public void Iso_AnyYear_HasAtLeastFourDigits(long year, int month, int day, string expected) => Assert.Equal(expected, DateText.Iso(year, month, day));

    [Fact]
    public void Words_ADay_IsDayMonthYear() => Assert.Equal("11 July 1961", DateText.Words(DayNumber.Of(1961, 7, 11)));
}
