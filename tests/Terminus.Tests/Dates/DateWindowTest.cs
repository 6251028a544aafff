using NodaTime;

namespace Terminus.Tests.Dates;

public class DateWindowTest
{
    private static readonly LocalDate Filed = new(1956, 3, 6);
    private static readonly LocalDate Issued = new(1961, 7, 11);

    [Fact]
    public void Default_IsAnyDate()
    {
        Assert.Equal(DateWindow.Any, default);
        Assert.True(default(DateWindow).IsAny);
        Assert.Null(default(DateWindow).NotBefore);
        Assert.Null(default(DateWindow).NotAfter);
        Assert.Null(default(DateWindow).Days);
        Assert.True(default(DateWindow).Contains(new LocalDate(-9998, 1, 1)));
        Assert.Equal("any date", default(DateWindow).ToString());
        Assert.Null(default(DateWindow).ToEdtf());
    }

    [Fact]
    public void Between_DaysOutOfOrder_ThrowsWithTheDays()
    {
        ArgumentOutOfRangeException exception = Assert.Throws<ArgumentOutOfRangeException>(() => DateWindow.Between(Issued, Filed));
        Assert.Equal("notBefore", exception.ParamName);
        Assert.Equal(Issued, exception.ActualValue);
        Assert.Contains("1956-03-06", exception.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Between_NullEnds_IsOpenThere()
    {
        Assert.Equal(DateWindow.From(Filed), DateWindow.Between(Filed, null));
        Assert.Equal(DateWindow.Until(Issued), DateWindow.Between(null, Issued));
        Assert.Equal(DateWindow.Any, DateWindow.Between(null, null));
    }

    [Theory]
    [InlineData(1955, 365)]
    [InlineData(1956, 366)]
    [InlineData(1900, 365)]
    [InlineData(2000, 366)]
    public void Days_OfYear_CountsBothEnds(int year, int days) => Assert.Equal(days, DateWindow.InYear(year).Days);

    [Fact]
    public void Days_OfOneDay_IsOne() => Assert.Equal(1, DateWindow.On(Filed).Days);

    [Fact]
    public void BetweenYears_StartsInJanuaryAndEndsInDecember()
    {
        DateWindow window = DateWindow.BetweenYears(1956, 1961);
        Assert.Equal((new LocalDate(1956, 1, 1), new LocalDate(1961, 12, 31)), (window.NotBefore, window.NotAfter));
    }

    [Theory]
    [InlineData(-9999)]
    [InlineData(10_000)]
    public void InYear_OutsideTheCalendar_Throws(int year)
        => Assert.Throws<ArgumentOutOfRangeException>(() => DateWindow.InYear(year));

    [Fact]
    public void Contains_DayOfOtherCalendar_IsConvertedToIso()
    {
        // 24 Geo. 2 c. 23: 3 September 1752 of the old style is 14 September of the new.
        DateWindow window = DateWindow.On(new LocalDate(1752, 9, 14));
        Assert.True(window.Contains(new LocalDate(1752, 9, 3, CalendarSystem.Julian)));
        Assert.Equal(window, DateWindow.On(new LocalDate(1752, 9, 3, CalendarSystem.Julian)));
    }

    [Fact]
    public void Intersect_WindowsThatShareOneDay_IsThatDay()
        => Assert.Equal(DateWindow.On(Filed), DateWindow.Until(Filed).Intersect(DateWindow.From(Filed)));

    [Fact]
    public void Intersect_WindowsSideBySide_IsNull()
        => Assert.Null(DateWindow.Until(Filed.PlusDays(-1)).Intersect(DateWindow.From(Filed)));

    [Fact]
    public void Hull_OfWindowsApart_HasTheDaysBetween()
        => Assert.Equal(DateWindow.Between(Filed, Issued), DateWindow.On(Issued).Hull(DateWindow.On(Filed)));

    [Fact]
    public void ToEdtf_WritesOpenEndsAsDotsAndOneDayAlone()
    {
        Assert.Equal("1956-03-06/1961-07-11", DateWindow.Between(Filed, Issued).ToEdtf());
        Assert.Equal("1956-03-06/..", DateWindow.From(Filed).ToEdtf());
        Assert.Equal("../1961-07-11", DateWindow.Until(Issued).ToEdtf());
        Assert.Equal("1956-03-06", DateWindow.On(Filed).ToString());
        Assert.Equal("-0043-01-01/-0043-12-31", DateWindow.InYear(-43).ToEdtf());
    }

    [Fact]
    public void Widen_MovesClosedEndsAndLeavesOpenOnes()
    {
        DateWindow wider = DateWindow.Between(new LocalDate(1951, 3, 6), new LocalDate(1966, 7, 11));
        Assert.Equal(wider, DateWindow.Between(Filed, Issued).Widen(5, 5));
        Assert.Equal(DateWindow.From(new LocalDate(1951, 3, 6)), DateWindow.From(Filed).Widen(5, 5));
    }
}
