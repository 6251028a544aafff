namespace Terminus.Tests.Reports;

public class TimeScaleTest
{
    private static readonly int AsOf = DayNumber.Of(2026, 11, 25);

    [Theory]
    [InlineData(1956, 1961)]
    [InlineData(1700, 2020)]
    [InlineData(-5000, 1900)]
    [InlineData(1955, 1955)]
    [InlineData(-9998, 9999)]
    public void Over_AnyWindow_HasItInsideAndAtMostSevenTicksInOrder(int from, int until)
    {
        DateWindow window = DateWindow.BetweenYears(from, until);
        TimeScale scale = TimeScale.Over([window], AsOf);
        Assert.InRange(scale.Start(window), 0, 1);
        Assert.InRange(scale.End(window), scale.Start(window), 1);
        double[] ticks = [.. scale.Ticks().Select(t => t.At)];
        Assert.InRange(ticks.Length, 1, 7);
        Assert.Equal(ticks.Order(), ticks);
        Assert.All(ticks, at => Assert.InRange(at, 0, 1));
    }

    [Fact]
    public void Over_NothingKnown_ShowsACentury() => Assert.NotEmpty(TimeScale.Over([DateWindow.Any], AsOf).Ticks());

    [Fact]
    public void OpenEnds_StandAtTheEdges()
    {
        TimeScale scale = TimeScale.Over([DateWindow.InYear(1961)], AsOf);
        Assert.Equal((0, 1), (scale.Start(DateWindow.Any), scale.End(DateWindow.Any)));
    }
}
