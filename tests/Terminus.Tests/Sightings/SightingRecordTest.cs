namespace Terminus.Tests.Sightings;

public class SightingRecordTest
{
    [Fact]
    public void Of_SeveralInOneSource_KeepsTheExtreme()
    {
        Sighting[] sightings =
        [
            new(DateWindow.On(Examples.Date("1950-01-11")), "Catalogue A"),
            new(DateWindow.On(Examples.Date("1950-01-01")), " catalogue a "),
            new(DateWindow.On(Examples.Date("1950-01-05")), "catalogue B"),
        ];
        Assert.Equal([0, 4], SightingRecord.Of(sightings, SightingEnd.First).Earliest);
        Assert.Equal([0, 6], SightingRecord.Of(sightings, SightingEnd.Last).Earliest);
    }

    // Two windows of one source, days 0 to 9 and 3 to 5: its earliest sighting lies from day 0 to day 5.
    [Fact]
    public void Of_TwoWindowsInOneSource_BoundsTheExtreme()
    {
        int day = DayNumber.Of(1950, 1, 1);
        SightingRecord record = SightingRecord.Of(
            [new(DateWindow.OfDays(day, day + 9), "a"), new(DateWindow.OfDays(day + 3, day + 5), "a")], SightingEnd.First);
        Assert.Equal(1, record.Sources);
        Assert.Equal([0], record.Earliest);
        Assert.Equal([5], record.Latest);
    }

    // Windows 0..10 and 4..30: the widest gap has the first at 0 and the second at 30; ten gaps before the first is -300.
    [Fact]
    public void EarliestByGap_Windows_TakesTheWorstPlacing()
    {
        int day = DayNumber.Of(1950, 1, 1);
        SightingRecord record = SightingRecord.Of(
            [new(DateWindow.OfDays(day, day + 10), "a"), new(DateWindow.OfDays(day + 4, day + 30), "b")], SightingEnd.First);
        Assert.Equal(30, record.WidestGap);
        Assert.Equal(-300, record.EarliestByGap(10));
    }

    [Fact]
    public void DayOf_BoundInsideADay_IsRoundedOutwards()
    {
        Sighting[] sightings = Examples.Days("1950-01-01", "1951-01-01");
        Assert.Equal("1949-12-31", DateText.Iso(SightingRecord.Of(sightings, SightingEnd.First).DayOf(-0.1)));
        Assert.Equal("1951-01-02", DateText.Iso(SightingRecord.Of(sightings, SightingEnd.Last).DayOf(-0.1)));
    }

    [Theory]
    [InlineData(double.NegativeInfinity)]
    [InlineData(-1e300)]
    [InlineData(double.NaN)]
    public void DayOf_OutsideTheCalendar_IsOpen(double time)
        => Assert.Equal(DayNumber.Open, SightingRecord.Of(Examples.Days("1950-01-01"), SightingEnd.First).DayOf(time));
}
