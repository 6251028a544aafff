using NodaTime.Text;

namespace Terminus.Tests.Registers;

/// <summary>An invented series of 100 numbers a week from Tuesday 1 January 1901, 52 issues a year.</summary>
public class IssueCurveTest
{
    private static readonly int FirstWeek = IssueDay.IndexOf(DayNumber.Of(1901, 1, 1));

    private static readonly RegisterRow[] Years =
    [
        Year(1, 100, 1900), Year(101, 5300, 1901), Year(5301, 10500, 1902), Year(10501, 15800, 1903),
    ];

    [Fact]
    public void TryLocate_EvenOutput_IsTheWeekItself()
    {
        IssueCurve curve = Curve();
        for (int number = 101; number <= 10500; number += 7)
        {
            // 1901 has 53 Tuesdays in the calendar and 1902 has 52: the estimate may fall a week early towards the end of 1901.
            Assert.True(curve.TryLocate(number, out IssueWeeks weeks));
            Assert.InRange(weeks.Likeliest, FirstWeek + ((number - 101) / 100), FirstWeek + ((number - 101) / 100) + 1);
        }
    }

    [Fact]
    public void TryLocate_OutsideTheCurve_SaysSo()
    {
        Assert.False(Curve().TryLocate(50, out _));
        Assert.False(Curve().TryLocate(15801, out _));
    }

    [Fact]
    public void TryLocate_BetweenDatedNumbers_StaysBetweenTheirWeeks()
    {
        IssueCurve curve = Curve(Day(1000, 20), Day(1040, 22));
        Assert.True(curve.TryLocate(1020, out IssueWeeks weeks));
        Assert.Equal((FirstWeek + 20, FirstWeek + 22), (weeks.Earliest, weeks.Latest));
        Assert.InRange(weeks.Likeliest, weeks.Earliest, weeks.Latest);
        Assert.Equal(DateWindow.OfDays(IssueDay.DayOf(FirstWeek + 20), IssueDay.DayOf(FirstWeek + 22)), weeks.Within(50));
    }

    [Fact]
    public void TryLocate_StartOfAYearThatDatedNumbersContradict_LeavesTheStartOut()
    {
        // No. 5,310 is of 1902 by the table and 5,250 of 1901; the end of 1903 is wrong by two weeks and the dated number wins.
        IssueCurve curve = Curve(Day(5250, 51), Day(5310, 53));
        Assert.True(curve.TryLocate(5310, out IssueWeeks weeks));
        Assert.Equal(FirstWeek + 53, weeks.Likeliest);
    }

    [Fact]
    public void TryNumbers_OneWeek_HoldsTheNumbersDatedInIt()
    {
        IssueCurve curve = Curve(Day(1000, 20), Day(1040, 20), Day(1100, 21));
        DateWindow week = DateWindow.OfDays(IssueDay.DayOf(FirstWeek + 20), IssueDay.DayOf(FirstWeek + 20));
        Assert.True(curve.TryNumbers(week, out int lowest, out int highest));
        Assert.True(lowest <= 1000);
        Assert.Equal(1099, highest);
        Assert.False(curve.TryNumbers(DateWindow.InYear(1850), out _, out _));
        Assert.True(curve.TryNumbers(DateWindow.Any, out _, out _));
    }

    // 1902 and 1903 have 52 Tuesdays each, from 7 January and from 6 January, so an even output is 100 numbers a week.
    private static readonly RegisterRow[] Even = [Year(1, 100, 1901), Year(101, 5300, 1902), Year(5301, 10500, 1903)];

    private static readonly int EvenWeek = IssueDay.IndexOf(DayNumber.Of(1902, 1, 7));

    [Fact]
    public void TryLocate_YearsAlone_AreAStraightLineInsideEachYear()
    {
        IssueCurve curve = IssueCurve.Of(new NumberSeries("", Even), [])!;
        for (int number = 101; number <= 10500; number++)
        {
            int start = number <= 5300 ? 0 : 52;
            Assert.True(curve.TryLocate(number, out IssueWeeks weeks));
            Assert.Equal((start, (number - 101) / 100, start + 51), Weeks(weeks));
            Assert.Equal(52, weeks.Possible);
        }

        Assert.False(curve.TryLocate(100, out _));
        Assert.False(curve.TryLocate(10501, out _));
    }

    [Theory] // Worked by hand: from 101 to 1000 in 20 weeks, then to 5301 in 32, which is 134.4 a week.
    [InlineData(101, 0, 0, 20)]
    [InlineData(145, 0, 0, 20)]
    [InlineData(146, 0, 1, 20)]
    [InlineData(955, 0, 18, 20)]
    [InlineData(956, 0, 19, 20)]
    [InlineData(999, 0, 19, 20)]
    [InlineData(1000, 20, 20, 20)]
    [InlineData(1001, 20, 20, 51)]
    [InlineData(1134, 20, 20, 51)]
    [InlineData(1135, 20, 21, 51)]
    [InlineData(5300, 20, 51, 51)]
    [InlineData(5301, 52, 52, 103)]
    public void TryLocate_AroundADatedNumber_FollowsItFromBothSides(int number, int earliest, int likeliest, int latest)
    {
        IssueCurve curve = IssueCurve.Of(new NumberSeries("", Even), [EvenDay(1000, 20)])!;
        Assert.True(curve.TryLocate(number, out IssueWeeks weeks));
        Assert.Equal((earliest, likeliest, latest), Weeks(weeks));
    }

    [Theory]
    [InlineData("1902-01-07/1902-01-07", 101, 999)]
    [InlineData("1901-01-01/1902-01-07", 101, 999)]
    [InlineData("1902-05-27/1902-05-27", 101, 5300)] // the week of No. 1000
    [InlineData("1902-05-21/1902-06-02", 101, 5300)]
    [InlineData("1902-06-03/1902-06-03", 1001, 5300)]
    [InlineData("1902-05-20/1902-05-20", 101, 999)]
    [InlineData("1902-12-30/1903-01-06", 1001, 10500)]
    [InlineData("1903-12-29/1903-12-29", 5301, 10500)]
    [InlineData("1903-12-29/2000-01-01", 5301, 10500)]
    [InlineData("../..", 101, 10500)]
    [InlineData("../1902-01-06", 0, 0)]
    [InlineData("1902-05-28/1902-06-02", 0, 0)]
    [InlineData("1903-12-30/1904-01-31", 0, 0)]
    [InlineData("1904-01-05/..", 0, 0)]
    public void TryNumbers_Window_HoldsItsWholeIssues(string window, int lowest, int highest)
    {
        IssueCurve curve = IssueCurve.Of(new NumberSeries("", Even), [EvenDay(1000, 20)])!;
        int[] ends = [.. window.Split('/').Select(end => end == ".." ? DayNumber.Open : DayNumber.Of(LocalDatePattern.Iso.Parse(end).Value))];
        Assert.Equal(lowest > 0, curve.TryNumbers(DateWindow.OfDays(ends[0], ends[1]), out int first, out int last));
        Assert.Equal((lowest, highest), (first, last));
    }

    [Fact]
    public void Of_FewerThanTwoKnownStarts_IsNone()
    {
        Assert.Null(IssueCurve.Of(new NumberSeries("", [Year(1, 100, 1901)]), []));
        Assert.NotNull(IssueCurve.Of(new NumberSeries("", [Year(1, 100, 1901), Year(101, 200, 1902)]), []));
    }

    [Fact]
    public void Of_DatedNumberOfTheLastWeek_StaysInsideTheCurve()
    {
        IssueCurve curve = IssueCurve.Of(new NumberSeries("", Even), [EvenDay(10400, 103), EvenDay(120, 0)])!;
        Assert.True(curve.TryLocate(10450, out IssueWeeks weeks));
        Assert.Equal((103, 103, 103), Weeks(weeks));
        Assert.True(curve.TryLocate(110, out weeks));
        Assert.Equal((0, 0, 0), Weeks(weeks));
        Assert.True(curve.TryLocate(121, out weeks));
        Assert.Equal((0, 0, 51), Weeks(weeks));
    }

    [Fact]
    public void Within_Weeks_StaysInsideWhatIsPossible()
    {
        IssueWeeks weeks = new(EvenWeek, EvenWeek + 1, EvenWeek + 3);
        Assert.Equal(4, weeks.Possible);
        Assert.Equal("1902-01-14", weeks.Within(0).ToString());
        Assert.Equal("1902-01-07/1902-01-21", weeks.Within(1).ToString());
        Assert.Equal("1902-01-07/1902-01-28", weeks.Within(9).ToString());
    }

    private static (int, int, int) Weeks(IssueWeeks weeks) => (weeks.Earliest - EvenWeek, weeks.Likeliest - EvenWeek, weeks.Latest - EvenWeek);

    private static RegisterRow EvenDay(int number, int week) => Day(number, week + EvenWeek - FirstWeek);

    private static IssueCurve Curve(params RegisterRow[] dated) => IssueCurve.Of(new NumberSeries("", Years), dated)!;

    private static RegisterRow Year(int first, int last, int year)
        => new(first, last, DateWindow.InYear(year), RowOrigin.Source, "an invented gazette");

    private static RegisterRow Day(int number, int week)
        => new(number, number, DateWindow.On(DayNumber.ToDate(IssueDay.DayOf(FirstWeek + week))), RowOrigin.Source, "an invented gazette");
}
