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

    private static RegisterRow Row(int first, int last, int year)
        => new(first, last, DateWindow.InYear(year), RowOrigin.Source, "an invented gazette");
}
