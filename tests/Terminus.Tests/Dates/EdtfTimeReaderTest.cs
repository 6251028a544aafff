namespace Terminus.Tests.Dates;

public class EdtfTimeReaderTest
{
    // Specification, Level 0 "Date and Time"; ISO 8601-1:2019: hours 00 to 23, second 60 for a leap second, a shift of zero has a plus.
    [Theory]
    [InlineData("T00:00:00")]
    [InlineData("T23:59:59Z")]
    [InlineData("T23:59:60Z")]
    [InlineData("T10:20:30+00:00")]
    [InlineData("T10:20:30-04")]
    [InlineData("T10:20:30+05:30")]
    [InlineData("T10:20:30-00:30")]
    public void Time_Complete_SaysNoMoreThanItsDay(string time)
    {
        EdtfDate date = EdtfDate.Parse("1985-04-12" + time);
        Assert.Equal((0, "1985-04-12", "1985-04-12"), (date.Level, date.Earliest.ToString(), date.Latest.ToString()));
    }

    [Theory]
    [InlineData("T24:00:00", 11, "The hour is 00 to 23 here.")]
    [InlineData("T23:60:00", 14, "The minute is 00 to 59 here.")]
    [InlineData("T23:20:60", 17, "The second is 00 to 59 here.")]
    [InlineData("T23:59:61", 17, "The second is 00 to 60 here.")]
    [InlineData("T23:20", 16, "A time of day is complete: hours, minutes and seconds with colons, such as 23:20:30. The text ends here.")]
    [InlineData("T23:20:30+04:3", 24, "The minute has two digits. The text ends here.")]
    [InlineData("T23:20:30.5", 19, "Nothing follows a time of day but Z or a shift such as +01:00. Found '.'.")]
    [InlineData("T23:20:30z", 19, "Nothing follows a time of day but Z or a shift such as +01:00. Found 'z'.")]
    [InlineData("T23:20:30+4:30", 21, "The hour has two digits. Found ':'.")]
    [InlineData("T23:20:30+0430", 22, "Nothing follows a time of day but Z or a shift such as +01:00. Found '3'.")]
    [InlineData("T23:20:30-00", 19, "A time shift of zero has a plus, or is written Z.")]
    [InlineData("T23:20:30+24:00", 20, "The hour is 00 to 23 here.")]
    public void Time_Incomplete_IsRefusedWithPlaceAndReason(string time, int position, string reason)
    {
        Assert.False(EdtfDate.TryParse("1985-04-12" + time, out _, out EdtfError? error));
        Assert.Equal((position, reason), (error.Position, error.Reason));
    }

    [Theory]
    [InlineData("1985-04-12?T10:00:00", 11)]
    [InlineData("?1985-04-12T10:00:00", 11)]
    [InlineData("1985-04-1XT10:00:00", 10)]
    [InlineData("[1985-04-12T10:00:00]", 11)]
    [InlineData("1985-04-12T10:00:00/..", 10)]
    public void Time_OnAnythingButACompleteDate_IsRefused(string text, int position)
    {
        Assert.False(EdtfDate.TryParse(text, out _, out EdtfError? error));
        Assert.Equal(position, error.Position);
    }
}
