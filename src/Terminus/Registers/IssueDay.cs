namespace Terminus;

/// <summary>
/// The days on which the United States issued patents, designs, reissues and plant patents: any day before 1848, Tuesdays since.
/// </summary>
/// <remarks>
/// Sources: patentlyo.com, May 2021 (Tuesdays since 1848; a handful of issues missed in Christmas weeks from 1850 to 1880, two in the
/// summer of 1945 and two in that of 1970); Official Gazette vol. 309, 3 April 1923 (all kinds issue on one day). Of 1,856 dated
/// issues since 1849 that were gathered, 1,833 fall on a Tuesday, and most of the others look like slips of the lists.
/// A holiday moves nothing: there were issues on 25 December and on 1 January. Which weeks were missed is not published in a list,
/// so a Tuesday of such a week stays possible and carries a reason.
/// </remarks>
internal static class IssueDay
{
    /// <summary>31 July 1790, the first patent under the act of 10 April 1790.</summary>
    internal static readonly int FirstPatent = DayNumber.Of(1790, 7, 31);

    /// <summary>13 July 1836, the day of No. 1.</summary>
    internal static readonly int FirstNumbered = DayNumber.Of(1836, 7, 13);

    /// <summary>4 January 1848, the first Tuesday of the rule and issue 0 of <see cref="IndexOf"/>.</summary>
    internal static readonly int FirstTuesday = DayNumber.Of(1848, 1, 4);

    /// <summary>What the calendar says of a day as an issue day.</summary>
    internal static IssueDayKind KindOf(int day)
        => day < FirstPatent ? IssueDayKind.BeforePatents
            : day < FirstTuesday - 3 ? IssueDayKind.NoFixedWeekday
            : (day - FirstTuesday) % 7 == 0 ? (MayHaveBeenMissed(day) ? IssueDayKind.DoubtfulTuesday : IssueDayKind.Tuesday)
            : IssueDayKind.NotTuesday;

    /// <summary>Whether a US patent can have issued on the day.</summary>
    internal static bool IsPossible(int day)
        => KindOf(day) is IssueDayKind.NoFixedWeekday or IssueDayKind.Tuesday or IssueDayKind.DoubtfulTuesday;

    /// <summary>The number of the weekly issue that is out on a day from 4 January 1848 on; negative before.</summary>
    internal static int IndexOf(int day)
    {
        int days = day - FirstTuesday;
        return days >= 0 ? days / 7 : -((6 - days) / 7);
    }

    /// <summary>The Tuesday of a weekly issue, counted from 0 on 4 January 1848.</summary>
    internal static int DayOf(int index) => FirstTuesday + (7 * index);

    /// <summary>The first Tuesday on or after a day.</summary>
    internal static int OnOrAfter(int day) => DayOf(IndexOf(day + 6));

    /// <summary>Why a day can or cannot be an issue day: date and weekday as parameters.</summary>
    internal static Reason ReasonFor(int day)
    {
        string rule = KindOf(day) switch
        {
            IssueDayKind.BeforePatents => "registers.issue-day-before-patents",
            IssueDayKind.NoFixedWeekday => "registers.issue-day-any",
            IssueDayKind.Tuesday => "registers.issue-day-tuesday",
            IssueDayKind.DoubtfulTuesday => "registers.issue-day-doubtful",
            _ => "registers.issue-day-not-tuesday",
        };
        return new Reason(rule, "date", DateText.Iso(day), "weekday", Weekday(day));
    }

    /// <summary>
    /// The years from 1836 that a date with two digits of year can mean as a US issue day: Tuesdays first, then days before 1848, then
    /// the rest, each earlier before later. A Tuesday in 18xx is never one in 19xx, nor one in 19xx one in 20xx, so the rule leaves one of
    /// the two. Patents before 1836 had no number and no marking duty, so two digits are not read as 17xx.
    /// </summary>
    /// <param name="twoDigits">The year from 0 to 99.</param>
    /// <param name="month">The month, or 0 where it is not known.</param>
    /// <param name="dayOfMonth">The day of the month, or 0 where it is not known.</param>
    /// <param name="latest">The last day that comes into question.</param>
    /// <returns>A list that is empty when no century has such a day.</returns>
    internal static IReadOnlyList<IssueYear> Years(int twoDigits, int month, int dayOfMonth, int latest)
    {
        var years = new List<IssueYear>();
        for (int year = 1800 + twoDigits; year <= 2099; year += 100)
        {
            if (TryDay(year, month, dayOfMonth, out int day) && day >= FirstNumbered && day <= latest)
            {
                bool known = month != 0 && dayOfMonth != 0;
                years.Add(new IssueYear(year, known ? day : DayNumber.Open, known ? ReasonFor(day) : null));
            }
        }

        return [.. years.OrderBy(Rank)];
    }

    // Years whose day is not known are all alike.
    private static int Rank(IssueYear year)
        => KindOf(year.Day) switch
        {
            IssueDayKind.Tuesday or IssueDayKind.DoubtfulTuesday => 0,
            IssueDayKind.NoFixedWeekday => 1,
            _ => 2,
        };

    private static bool MayHaveBeenMissed(int day)
    {
        (int year, int month, int dayOfMonth) = DayNumber.Parts(day);
        return year switch
        {
            >= 1850 and <= 1880 => month == 12 && dayOfMonth >= 23,
            1945 or 1970 => month is >= 6 and <= 9,
            _ => false,
        };
    }

    private static bool TryDay(int year, int month, int dayOfMonth, out int day)
    {
        int m = month == 0 ? 12 : month;
        day = 0;
        if (m is < 1 or > 12)
        {
            return false;
        }

        int inMonth = NodaTime.CalendarSystem.Iso.GetDaysInMonth(year, m);
        int d = dayOfMonth == 0 ? inMonth : dayOfMonth;
        if (d < 1 || d > inMonth)
        {
            return false;
        }

        day = DayNumber.Of(year, m, d);
        return true;
    }

    private static string Weekday(int day) => DayNumber.ToDate(day).DayOfWeek.ToString();
}
