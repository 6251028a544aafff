using NodaTime;

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

    private static IssueCurve Curve(params RegisterRow[] dated) => IssueCurve.Of(new NumberSeries("", Years), dated)!;

    private static RegisterRow Year(int first, int last, int year)
        => new(first, last, DateWindow.InYear(year), RowOrigin.Source, "an invented gazette");

    private static RegisterRow Day(int number, int week)
        => new(number, number, DateWindow.On(DayNumber.ToDate(IssueDay.DayOf(FirstWeek + week))), RowOrigin.Source, "an invented gazette");
}
