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

    [Theory] // The seasons from patentlyo.com, May 2021: Christmas weeks from 1850 to 1880, the summers of 1945 and 1970.
    [InlineData("1847-12-31", "NoFixedWeekday")]
    [InlineData("1848-01-01", "NotTuesday")]
    [InlineData("1848-01-04", "Tuesday")]
    [InlineData("1849-12-25", "Tuesday")]
    [InlineData("1850-12-17", "Tuesday")]
    [InlineData("1850-12-24", "DoubtfulTuesday")]
    [InlineData("1850-12-31", "DoubtfulTuesday")]
    [InlineData("1851-12-23", "DoubtfulTuesday")]
    [InlineData("1851-11-25", "Tuesday")]
    [InlineData("1880-12-21", "Tuesday")]
    [InlineData("1880-12-28", "DoubtfulTuesday")]
    [InlineData("1881-12-27", "Tuesday")]
    [InlineData("1944-07-25", "Tuesday")]
    [InlineData("1945-05-29", "Tuesday")]
    [InlineData("1945-06-05", "DoubtfulTuesday")]
    [InlineData("1945-09-25", "DoubtfulTuesday")]
    [InlineData("1945-10-02", "Tuesday")]
    [InlineData("1946-07-23", "Tuesday")]
    [InlineData("1970-06-02", "DoubtfulTuesday")]
    [InlineData("1970-09-29", "DoubtfulTuesday")]
    [InlineData("1970-10-06", "Tuesday")]
    [InlineData("1971-07-27", "Tuesday")]
    public void KindOf_TuesdayOfASeasonWithMissedIssues_IsDoubtful(string date, string expected)
        => Assert.Equal(expected, IssueDay.KindOf(Number(date)).ToString());

    [Theory] // Weekdays from the calendar.
    [InlineData("1790-07-30", false, "30 July 1790 lies before the first US patent of 31 July 1790.")]
    [InlineData("1838-06-30", true, "30 June 1838 was a Saturday; before 1848 US patents issued on any day.")]
    [InlineData("1894-04-17", true, "17 April 1894 was a Tuesday, the day US patents issue.")]
    [InlineData("1860-12-25", true, "25 December 1860 was a Tuesday, the day US patents issue, though an issue or two of that season were missed.")]
    [InlineData("1876-05-03", false, "3 May 1876 was a Wednesday, and US patents issue on Tuesdays: it may be a filing or foreign date, a trade mark, or misread.")]
    public void ReasonFor_Day_SaysWhyItCanBeAnIssueDay(string date, bool possible, string why)
    {
        Assert.Equal(possible, IssueDay.IsPossible(Number(date)));
        Assert.Equal(why, ReasonText.Of(IssueDay.ReasonFor(Number(date))));
    }

    [Theory] // Weekdays from the calendar: a Tuesday first, then a day before 1848, then the rest, each earlier before later.
    [InlineData(36, 7, 13, "1836 1936")]
    [InlineData(36, 7, 12, "1936")]
    [InlineData(36, 2, 29, "1936")]
    [InlineData(48, 7, 13, "1948 1848")]
    [InlineData(94, 4, 16, "1894 1994")]
    [InlineData(94, 2, 29, "")]
    [InlineData(0, 2, 29, "2000")]
    [InlineData(0, 1, 4, "2000 1900")]
    [InlineData(26, 11, 25, "1926 2026")]
    [InlineData(26, 11, 26, "1926")]
    [InlineData(26, 0, 0, "1926")]
    [InlineData(25, 0, 0, "1925 2025")]
    [InlineData(36, 0, 0, "1836 1936")]
    [InlineData(35, 0, 0, "1935")]
    [InlineData(92, 2, 0, "1892 1992")]
    [InlineData(94, 12, 0, "1894 1994")]
    [InlineData(94, 12, 31, "1894 1994")]
    [InlineData(94, 12, 32, "")]
    [InlineData(94, 13, 1, "")]
    [InlineData(94, -1, 1, "")]
    [InlineData(94, 4, -1, "")]
    public void Years_TwoDigits_AreEveryYearInWhichTheDayCanBe(int twoDigits, int month, int day, string expected)
    {
        IReadOnlyList<IssueYear> years = IssueDay.Years(twoDigits, month, day, Today);
        Assert.Equal(expected, string.Join(" ", years.Select(y => DateText.Digits(y.Year))));
        Assert.All(years, y => Assert.Equal((month > 0 && day > 0, month > 0 && day > 0), (y.Day != DayNumber.Open, y.Why is not null)));
        Assert.All(years.Where(y => y.Day == DayNumber.Open), y => Assert.True(y.IsPossible));
    }

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
    public void Years_LateDayOfToday_ReachesToTheEndOfTheCentury()
        => Assert.Equal([1899, 1999, 2099], IssueDay.Years(99, 0, 0, DayNumber.Of(2099, 12, 31)).Select(y => y.Year));

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
