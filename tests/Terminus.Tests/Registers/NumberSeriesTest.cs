using NodaTime.Text;

namespace Terminus.Tests.Registers;

public class NumberSeriesTest
{
    [Fact]
    public void Outer_RowsThatContradictEachOther_CoversBoth()
    {
        NumberSeries series = new("", [Row(1, 100, 1905), Row(50, 60, 1901)]);
        Assert.Equal(DateWindow.BetweenYears(1901, 1905), series.Outer(55));
    }

    [Fact]
    public void Outer_RowsThatOverlap_IsWhatBothAllow()
    {
        NumberSeries series = new("", [
            new RegisterRow(1, 100, DateWindow.BetweenYears(1901, 1904), RowOrigin.Source, "an invented gazette"),
            new RegisterRow(80, 200, DateWindow.BetweenYears(1903, 1906), RowOrigin.Source, "an invented gazette"),
        ]);
        Assert.Equal(DateWindow.BetweenYears(1901, 1904), series.Outer(79));
        Assert.Equal(DateWindow.BetweenYears(1903, 1904), series.Outer(80));
        Assert.Equal(DateWindow.BetweenYears(1903, 1906), series.Outer(101));
    }

    [Fact]
    public void LowRowAndHighRow_NumberBetweenRows_AreItsNeighbours()
    {
        NumberSeries series = new("", [Row(1, 10, 1901), Row(20, 30, 1902), Row(40, 50, 1903)]);
        Assert.Equal(20, series.LowRow(35).First);
        Assert.Equal(40, series.HighRow(35).First);
        Assert.Equal(series.LowRow(25), series.HighRow(25));
    }

    [Fact]
    public void Numbers_YearBetweenTwoRows_IsTheGap()
    {
        NumberSeries series = new("a", [Row(1, 10, 1901), Row(40, 50, 1905)]);
        Assert.Equal(new NumberRange("a", 11, 39), series.Numbers(DateWindow.InYear(1903)));
        Assert.Null(series.Numbers(DateWindow.InYear(1906)));
    }

    [Fact]
    public void Outer_RowWithAnAllowance_ReachesBeyondWhatTheTableSays()
    {
        NumberSeries series = new("", [Allowed(1, 10, 1901, 10), Allowed(11, 20, 1902, 0)]);
        Assert.Equal("1900-12-22/1902-01-10", series.Outer(5).ToString());
        Assert.Equal(DateWindow.InYear(1901), series.Table(5));
        Assert.Equal(DateWindow.InYear(1902), series.Outer(11));
        Assert.Equal("1900-12-22/1902-12-31", new NumberSeries("", [Allowed(1, 10, 1901, 10), Allowed(21, 30, 1902, 0)]).Outer(15).ToString());
    }

    [Fact]
    public void Outer_RowsThatContradictEachOtherWithAllowances_CoversAllThatTheyAllow()
    {
        NumberSeries series = new("", [Allowed(1, 100, 1905, 1), Allowed(50, 60, 1901, 2)]);
        Assert.Equal("1900-12-30/1906-01-01", series.Outer(55).ToString());
        Assert.Equal(series.Outer(55), series.Table(55));
        Assert.Equal("1904-12-31/1906-01-01", series.Outer(61).ToString());
    }

    [Fact]
    public void Outer_RowsThatMeetOnOneDay_IsThatDay()
    {
        NumberSeries series = new("", [
            new RegisterRow(1, 100, Days("1901-01-01", "1901-06-03"), RowOrigin.Source, ""), new RegisterRow(50, 200, Days("1901-06-03", "1901-12-31"), RowOrigin.Source, ""),
        ]);
        Assert.Equal("1901-06-03", series.Outer(60).ToString());
        Assert.Equal("1901-06-03", series.Table(60).ToString());

        static DateWindow Days(string from, string to) => DateWindow.Between(LocalDatePattern.Iso.Parse(from).Value, LocalDatePattern.Iso.Parse(to).Value);
    }

    [Fact]
    public void Outer_TighterRowAnywhere_Bounds()
    {
        // No. 70 was out by 1903, so no lower number is later; No. 20 was not out before 1902, so no higher number is earlier.
        NumberSeries series = new("", [
            new RegisterRow(1, 100, DateWindow.BetweenYears(1900, 1909), RowOrigin.Source, ""), Row(70, 70, 1903), Row(20, 20, 1902),
        ]);
        Assert.Equal("1900-01-01/1902-12-31", series.Outer(19).ToString());
        Assert.Equal("1902-01-01/1902-12-31", series.Outer(20).ToString());
        Assert.Equal("1902-01-01/1903-12-31", series.Outer(21).ToString());
        Assert.Equal("1903-01-01/1903-12-31", series.Outer(70).ToString());
        Assert.Equal("1903-01-01/1909-12-31", series.Outer(71).ToString());
        Assert.Equal((20, 70), (series.LowRow(69).First, series.HighRow(69).First));
    }

    [Fact]
    public void Outer_SeveralRowsOfOneNumber_TakesTheTightestOfEach()
    {
        NumberSeries series = new("", [
            new RegisterRow(5, 5, DateWindow.BetweenYears(1900, 1904), RowOrigin.Source, ""), new RegisterRow(5, 5, DateWindow.BetweenYears(1902, 1906), RowOrigin.Source, ""),
            new RegisterRow(5, 9, DateWindow.BetweenYears(1901, 1908), RowOrigin.Source, ""), new RegisterRow(1, 9, DateWindow.BetweenYears(1890, 1910), RowOrigin.Source, ""),
        ]);
        Assert.Equal(DateWindow.BetweenYears(1902, 1904), series.Outer(5));
        Assert.Equal(DateWindow.BetweenYears(1902, 1908), series.Outer(9));
        Assert.Equal(DateWindow.BetweenYears(1890, 1904), series.Outer(4));
    }

    [Theory]
    [InlineData(1900, 1900, 0, 0)]
    [InlineData(1901, 1901, 1, 10)]
    [InlineData(1901, 1902, 1, 20)]
    [InlineData(1902, 1902, 11, 20)]
    [InlineData(1903, 1903, 0, 0)]
    [InlineData(1800, 2000, 1, 20)]
    public void Numbers_Window_AreThoseWhoseYearsMeetIt(int from, int to, int first, int last)
        => Assert.Equal(
            first == 0 ? null : new NumberRange("old", first, last),
            new NumberSeries("old", [Row(11, 20, 1902), Row(1, 10, 1901)]).Numbers(DateWindow.BetweenYears(from, to)));

    [Fact]
    public void Contains_BothEnds()
    {
        NumberSeries series = new("old", [Row(11, 20, 1902), Row(5, 30, 1901)]);
        Assert.Equal(("old", 5, 30), (series.Name, series.First, series.Last));
        Assert.Equal((false, true, true, false), (series.Contains(4), series.Contains(5), series.Contains(30), series.Contains(31)));
        Assert.Equal([5, 11], series.Rows.Select(r => r.First));
    }

    private static RegisterRow Allowed(int first, int last, int year, int days)
        => new(first, last, DateWindow.InYear(year), RowOrigin.Source, "an invented gazette", allowanceDays: days);

    private static RegisterRow Row(int first, int last, int year)
        => new(first, last, DateWindow.InYear(year), RowOrigin.Source, "an invented gazette");
}
