namespace Terminus.Tests.Dates;

public class EdtfBoundTest
{
    [Fact]
    public void Default_IsOpen()
    {
        Assert.Equal(EdtfBound.Open, default);
        EdtfBound bound = default;
        Assert.Equal((EdtfBoundKind.Open, 0L, 0, 0, "open"), (bound.Kind, bound.Year, bound.Month, bound.Day, bound.ToString()));
    }

    [Fact]
    public void Unknown_IsNotOpen()
    {
        Assert.True(EdtfBound.Unknown != EdtfBound.Open);
        Assert.Equal("unknown", EdtfBound.Unknown.ToString());
    }

    [Theory]
    [InlineData(1985, 4, 12, "1985-04-12")]
    [InlineData(-1985, 1, 1, "-1985-01-01")]
    [InlineData(0, 2, 29, "0000-02-29")]
    [InlineData(170_000_002, 1, 1, "170000002-01-01")]
    [InlineData(long.MinValue, 12, 31, "-9223372036854775808-12-31")]
    public void ToString_Known_IsIso(long year, int month, int day, string expected)
    {
        EdtfBound bound = EdtfBound.On(year, month, day);
        Assert.Equal(expected, bound.ToString());
        Assert.Equal((year, month, day), (bound.Year, bound.Month, bound.Day));
    }

    [Fact]
    public void Equality_IsThatOfKindAndDay()
    {
        EdtfBound bound = EdtfBound.On(1985, 4, 12);
        Assert.True(bound == EdtfBound.On(1985, 4, 12));
        Assert.Equal(bound.GetHashCode(), EdtfBound.On(1985, 4, 12).GetHashCode());
        Assert.True(bound != EdtfBound.On(1985, 4, 13));
        Assert.False(bound.Equals((object?)null));
    }

    [Theory]
    [InlineData(1985, 4, 12, false)]
    [InlineData(1985, 4, 11, true)]
    [InlineData(1985, 3, 30, true)]
    [InlineData(1985, 5, 1, false)]
    [InlineData(1984, 12, 31, true)]
    [InlineData(1986, 1, 1, false)]
    public void IsBefore_AnotherDay_GoesByYearThenMonthThenDay(long year, int month, int day, bool expected)
        => Assert.Equal(expected, EdtfBound.On(year, month, day).IsBefore(EdtfBound.On(1985, 4, 12)));
}
