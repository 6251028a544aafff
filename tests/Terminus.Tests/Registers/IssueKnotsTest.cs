using NodaTime;

namespace Terminus.Tests.Registers;

/// <summary>An invented series of 1902 and 1903, whose first Tuesdays are 7 January and 6 January; weeks are counted from the former.</summary>
public class IssueKnotsTest
{
    private static readonly int FirstWeek = IssueDay.IndexOf(DayNumber.Of(1902, 1, 7));

    private static readonly NumberSeries Table = new("", [Year(1, 100, 1901), Year(101, 5300, 1902), Year(5301, 10500, 1903)]);

    [Fact]
    public void Sound_DatedNumbers_AreSortedWithBothEndsOfARange()
        => Assert.Equal(
            [(200, 1), (300, 2), (350, 2), (400, 3)],
            Sound(On(400, 400, 1902, 1, 28), On(300, 350, 1902, 1, 21), On(200, 200, 1902, 1, 14)));

    [Theory]
    [InlineData(200, 1902, 1, 15)] // a Wednesday
    [InlineData(200, 1903, 1, 13)] // a Tuesday of another year
    [InlineData(20000, 1903, 1, 13)] // no number of the table
    [InlineData(50, 1847, 12, 28)] // before Tuesdays were the rule
    public void Sound_DayThatCannotBe_IsLeftOut(int number, int year, int month, int day)
        => Assert.Empty(Sound(On(number, number, year, month, day)));

    [Fact]
    public void Sound_FirstTuesdayOfTheRule_IsIn()
    {
        NumberSeries early = new("", [Year(1, 9, 1848)]);
        Assert.Equal(0, Assert.Single(IssueKnots.Sound(early, [On(1, 1, 1848, 1, 4)])).Week);
    }

    [Fact]
    public void Sound_NumbersThatContradictEachOther_LeaveTheLongestRow()
    {
        Assert.Equal(
            [(120, 1), (130, 2), (140, 2), (150, 4)],
            Sound(Week(110, 5), Week(120, 1), Week(130, 2), Week(135, 9), Week(140, 2), Week(150, 4)));
        Assert.Equal([(110, 5)], Sound(Week(110, 5)));
        Assert.Equal([(110, 5), (110, 5), (120, 6)], Sound(Week(110, 5), Week(120, 6), Week(110, 5)));
        Assert.Equal([101, 110, 120], Sound(Week(101, 1), Week(110, 2), Week(110, 3), Week(120, 6)).Select(knot => knot.Item1));
        Assert.Empty(Sound());
    }

    [Fact]
    public void Starts_YearsWithoutAGap_AreTheirFirstTuesdaysAndTheEnd()
        => Assert.Equal([(101, 0), (5301, 52), (10501, 104)], Starts(Table));

    [Fact]
    public void Starts_GapsAndCommonNumbers_AreNone()
    {
        Assert.Equal([(10501, 104)], Starts(new("", [Year(1, 99, 1901), Year(101, 10500, 1903)])));
        Assert.Equal([(10501, 104)], Starts(new("", [Year(1, 101, 1901), Year(101, 10500, 1903)])));
        Assert.Equal([(10501, 104)], Starts(new("", [Row(1, 100, 1901, 1902), Row(101, 10500, 1902, 1903)])));
    }

    [Fact]
    public void Starts_EndBeforeTheLastStart_IsLeftOut()
        => Assert.Equal([(11, IssueDay.IndexOf(DayNumber.Of(1905, 1, 3)) - FirstWeek)], Starts(new("", [Year(1, 10, 1901), Year(11, 20, 1905), Year(15, 30, 1902)])));

    [Fact]
    public void Starts_YearThatStartsOnTheLastDayOfTheOneBefore_IsNone()
    {
        RegisterRow day = On(1, 100, 1902, 1, 7);
        RegisterRow later = new(101, 200, DateWindow.Between(new LocalDate(1902, 1, 7), new LocalDate(1902, 12, 31)), RowOrigin.Source, "an invented gazette");
        Assert.Equal([(201, 52)], Starts(new("", [day, later])));
    }

    [Fact]
    public void Starts_SeveralDatesOfTheFirstNumber_AgreeOnlyTogether()
    {
        Knot[] alike = [new(5301, FirstWeek + 52), new(5301, FirstWeek + 52), new(5301, FirstWeek + 52), new(5301, FirstWeek + 52)];
        Assert.Contains(IssueKnots.Starts(Table, [.. alike]), start => start.Number == 5301);
        Assert.DoesNotContain(IssueKnots.Starts(Table, [new(5300, FirstWeek + 52), .. alike]), start => start.Number == 5301);
        Assert.Contains(IssueKnots.Starts(Table, [new(5300, FirstWeek + 51), .. alike, new(5301, FirstWeek + 53)]), start => start.Number == 5301);
        Assert.DoesNotContain(IssueKnots.Starts(Table, [new(5301, FirstWeek + 51), .. alike]), start => start.Number == 5301);
    }

    [Fact]
    public void Starts_YearsBeforeTheRuleOfTuesdays_AreNone()
        => Assert.Equal(
            [(21, -IssueDay.IndexOf(DayNumber.Of(1902, 1, 7))), (31, IssueDay.IndexOf(DayNumber.Of(1848, 12, 26)) + 1 - FirstWeek)],
            Starts(new("", [Year(1, 10, 1846), Year(11, 20, 1847), Year(21, 30, 1848)])));

    [Theory]
    [InlineData(5300, 51, true)]
    [InlineData(5300, 52, false)]
    [InlineData(5301, 52, true)]
    [InlineData(5301, 51, false)]
    [InlineData(5302, 60, true)]
    [InlineData(5302, 51, false)]
    [InlineData(5200, 53, false)]
    public void Starts_DatedNumberAtTheStartOfAYear_KeepsTheStartOrContradictsIt(int number, int week, bool expected)
        => Assert.Equal(
            expected,
            IssueKnots.Starts(Table, [new Knot(4000, FirstWeek + 30), new Knot(number, FirstWeek + week), new Knot(6000, FirstWeek + 70)])
                .Any(start => start.Number == 5301));

    private static IEnumerable<(int, int)> Sound(params RegisterRow[] dated)
        => IssueKnots.Sound(Table, dated).Select(knot => (knot.Number, knot.Week - FirstWeek));

    private static IEnumerable<(int, int)> Starts(NumberSeries table)
        => IssueKnots.Starts(table, []).Select(knot => (knot.Number, knot.Week - FirstWeek));

    private static RegisterRow Year(int first, int last, int year) => Row(first, last, year, year);

    private static RegisterRow Row(int first, int last, int from, int to)
        => new(first, last, DateWindow.BetweenYears(from, to), RowOrigin.Source, "an invented gazette");

    private static RegisterRow On(int first, int last, int year, int month, int day)
        => new(first, last, DateWindow.On(new LocalDate(year, month, day)), RowOrigin.Source, "an invented gazette");

    private static RegisterRow Week(int number, int week)
        => new(number, number, DateWindow.On(DayNumber.ToDate(IssueDay.DayOf(FirstWeek + week))), RowOrigin.Source, "an invented gazette");
}
