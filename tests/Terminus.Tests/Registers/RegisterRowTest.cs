using NodaTime;

namespace Terminus.Tests.Registers;

public class RegisterRowTest
{
    [Fact]
    public void Constructor_Row_KeepsWhatItStates()
    {
        RegisterRow row = new(1, 2, DateWindow.InYear(1901), RowOrigin.Estimate, "an invented gazette", "old", 36_525);
        Assert.Equal((1, 2, DateWindow.InYear(1901)), (row.First, row.Last, row.Dates));
        Assert.Equal((RowOrigin.Estimate, "an invented gazette", "old", 36_525), (row.Origin, row.Source, row.Series, row.AllowanceDays));
        Assert.Equal(("", 0), (new RegisterRow(1, 1, DateWindow.InYear(1901), RowOrigin.Source, "").Series, new RegisterRow(1, 1, DateWindow.InYear(1901), RowOrigin.Source, "").AllowanceDays));
    }

    [Theory]
    [InlineData(0, 2, 0, "first", 0, "Numbers start at 1.")]
    [InlineData(3, 2, 0, "last", 2, "A row ends no lower than it starts.")]
    [InlineData(1, 2, -1, "allowanceDays", -1, "An allowance is from 0 to 36,525 days.")]
    [InlineData(1, 2, 36_526, "allowanceDays", 36_526, "An allowance is from 0 to 36,525 days.")]
    public void Constructor_NumbersThatCannotBe_AreTheCallersMistake(int first, int last, int allowance, string parameter, int value, string message)
        => AssertRefused(parameter, value, message, () => new RegisterRow(first, last, DateWindow.InYear(1901), RowOrigin.Source, "", "", allowance));

    [Fact]
    public void Constructor_OpenWindow_IsTheCallersMistake()
    {
        var from = DateWindow.From(new LocalDate(1901, 1, 1));
        var until = DateWindow.Until(new LocalDate(1901, 1, 1));
        AssertRefused("dates", from, "The window of a row is closed at both ends.", () => new RegisterRow(1, 2, from, RowOrigin.Source, ""));
        AssertRefused("dates", until, "The window of a row is closed at both ends.", () => new RegisterRow(1, 2, until, RowOrigin.Source, ""));
        Assert.Throws<ArgumentNullException>("source", () => new RegisterRow(1, 2, DateWindow.InYear(1901), RowOrigin.Source, null!));
        Assert.Throws<ArgumentNullException>("series", () => new RegisterRow(1, 2, DateWindow.InYear(1901), RowOrigin.Source, "", null!));
    }

    [Fact]
    public void NumberRange_HoldsItsEnds()
    {
        NumberRange range = new("old", 5, 9);
        Assert.Equal((true, true, false, false), (range.Contains(5), range.Contains(9), range.Contains(4), range.Contains(10)));
        Assert.Equal(("5–9", "old", 5, 9), (range.ToString(), range.Series, range.First, range.Last));
        Assert.Null(range.Likely);
        Assert.Equal(7, new NumberRange("", 7, 7).Last);
        AssertRefused("last", 4, "A range ends no lower than it starts.", () => new NumberRange("", 5, 4));
        Assert.Throws<ArgumentNullException>("series", () => new NumberRange(null!, 1, 2));
    }

    private static void AssertRefused(string parameter, object value, string message, Func<object> make)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(parameter, make);
        Assert.Equal(value, refused.ActualValue);
        Assert.StartsWith(message, refused.Message, StringComparison.Ordinal);
    }
}
