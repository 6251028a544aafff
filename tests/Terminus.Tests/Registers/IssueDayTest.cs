using NodaTime;
using NodaTime.Text;

namespace Terminus.Tests.Registers;

public class IssueDayTest
{
    private static readonly int Today = DayNumber.Of(2026, 11, 25);

    [Theory] // Weekdays from NodaTime's calendar; the rule from patentlyo.com, May 2021.
    [InlineData("1894-04-17", "Tuesday")]
    [InlineData("1876-05-03", "NotTuesday")]
    [InlineData("1849-03-10", "NotTuesday")]
    [InlineData("1918-01-01", "Tuesday")]
    [InlineData("1963-01-01", "Tuesday")]
    [InlineData("1843-03-04", "NoFixedWeekday")]
    [InlineData("1838-06-30", "NoFixedWeekday")]
    [InlineData("1790-07-30", "BeforePatents")]
    [InlineData("1790-07-31", "NoFixedWeekday")]
    [InlineData("1860-12-25", "DoubtfulTuesday")]
    public void KindOf_Day_FollowsTheRuleOfItsPeriod(string date, string expected)
        => Assert.Equal(expected, IssueDay.KindOf(Number(date)).ToString());

    [Fact]
    public void IndexOf_EveryWeek_IsTheTuesdaySevenDaysOn()
    {
        Assert.Equal(IsoDayOfWeek.Tuesday, DayNumber.ToDate(IssueDay.FirstTuesday).DayOfWeek);
        for (int day = IssueDay.FirstTuesday - 20; day < IssueDay.FirstTuesday + 40; day++)
        {
            int tuesday = IssueDay.DayOf(IssueDay.IndexOf(day));
            Assert.InRange(day - tuesday, 0, 6);
            Assert.InRange(IssueDay.OnOrAfter(day) - day, 0, 6);
            Assert.Equal(IsoDayOfWeek.Tuesday, DayNumber.ToDate(IssueDay.OnOrAfter(day)).DayOfWeek);
        }
    }

    [Fact]
    public void Years_17April94_Is1894ByItsWeekday()
    {
        IssueYear first = IssueDay.Years(94, 4, 17, Today)[0];
        Assert.Equal(1894, first.Year);
        Assert.Equal("17 April 1894 was a Tuesday, the day US patents issue.", ReasonText.Of(first.Why!));
    }

    [Fact]
    public void Years_EveryTuesdaySince1848_IsNoTuesdayInTheNextCentury()
    {
        for (int day = IssueDay.FirstTuesday; day < DayNumber.Of(2000, 1, 1); day += 7)
        {
            (int year, int month, int dayOfMonth) = DayNumber.Parts(day);
            IEnumerable<int> tuesdays = IssueDay.Years(year % 100, month, dayOfMonth, DayNumber.Of(2099, 12, 31))
                .Where(y => y.Day >= IssueDay.FirstTuesday && y.IsPossible)
                .Select(y => y.Year);
            Assert.Equal([year], tuesdays.Where(y => Math.Abs(y - year) <= 100));
        }
    }

    [Fact]
    public void Years_DayNotKnown_KeepsEveryCentury()
        => Assert.Equal([1894, 1994], IssueDay.Years(94, 4, 0, Today).Select(y => y.Year));

    [Fact]
    public void Years_DayBefore1848ThatIsATuesdayOf1942_PutsTheTuesdayFirst()
        => Assert.Equal([1942, 1842], IssueDay.Years(42, 4, 7, Today).Select(y => y.Year));

    [Fact]
    public void Years_DayThatNoCenturyHas_IsEmpty() => Assert.Empty(IssueDay.Years(94, 2, 30, Today));

    [Fact]
    public void BritishPrints_FromSeptember1951_FallOnWednesdaysOrThursdays()
    {
        // A fact of the dated numbers, not a rule that anything enforces: all but one of those in the table.
        RegisterRow[] prints = [.. RegisterSet.BuiltIn.Find("GB", "patent")!.Rows
            .Where(r => r.Series == "single" && r.Dates.Days == 1 && r.Dates.FirstDay >= DayNumber.Of(1951, 9, 1))];
        Assert.True(prints.Length > 50);
        int midweek = prints.Count(p => p.Dates.NotBefore!.Value.DayOfWeek is IsoDayOfWeek.Wednesday or IsoDayOfWeek.Thursday);
        Assert.InRange(midweek, prints.Length - 1, prints.Length);
    }

    private static int Number(string date) => DayNumber.Of(LocalDatePattern.Iso.Parse(date).Value);
}
