namespace Terminus;

/// <summary>
/// The proleptic Gregorian calendar for years of any size, and the first and last of its days that fit unspecified digits.
/// </summary>
/// <remarks>
/// The days that fit form a hull from the first to the last; those between need not fit. Which months and days exist depends on the year
/// only by its being a leap year, so the year is sought by its digits, a century at a time, and no filling is tried one by one.
/// </remarks>
internal static class EdtfCalendar
{
    internal static bool IsLeapYear(long year) => year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);

    internal static int DaysInMonth(long year, int month) => DaysInMonth(IsLeapYear(year), month);

    private static int DaysInMonth(bool leap, int month) => month switch
    {
        2 => leap ? 29 : 28,
        4 or 6 or 9 or 11 => 30,
        _ => 31,
    };

    /// <summary>
    /// The first and last day of a whole year, of a month, or of a day; false where the calendar has no such month or day.
    /// </summary>
    internal static bool TryWhole(long year, int? month, int? day, out EdtfBound earliest, out EdtfBound latest)
    {
        earliest = latest = default;
        (int first, int last) = month is { } m ? (m, m) : (1, 12);
        if (first is < 1 or > 12 || day < 1 || day > DaysInMonth(year, first))
        {
            return false;
        }

        earliest = EdtfBound.On(year, first, day ?? 1);
        latest = EdtfBound.On(year, last, day ?? DaysInMonth(year, last));
        return true;
    }

    /// <summary>The first and last day that fit, or false where none does.</summary>
    /// <param name="negative">Whether the year has a minus; year 0 then does not fit.</param>
    /// <param name="year">The four digits of the year; not 0000 with a minus.</param>
    /// <param name="month">The month, or null for a year alone.</param>
    /// <param name="day">The day, or null for a month alone.</param>
    /// <param name="earliest">The first day that fits.</param>
    /// <param name="latest">The last day that fits.</param>
    internal static bool TryFit(
        bool negative, EdtfDigits year, EdtfDigits? month, EdtfDigits? day, out EdtfBound earliest, out EdtfBound latest)
    {
        earliest = latest = default;
        bool leapOnly = FirstDay(false, month, day).Month == 0;
        if (leapOnly && FirstDay(true, month, day).Month == 0)
        {
            return false;
        }

        int low = leapOnly ? LowestLeap(year, !negative) : Lowest(year, !negative);
        int high = leapOnly ? HighestLeap(year, !negative) : year.Highest;
        if (low < 0 || high < 0 || (negative && high == 0))
        {
            return false;
        }

        (int firstYear, int lastYear) = negative ? (-high, -low) : (low, high);
        (int firstMonth, int firstDay) = FirstDay(IsLeapYear(firstYear), month, day);
        (int lastMonth, int lastDay) = LastDay(IsLeapYear(lastYear), month, day);
        earliest = EdtfBound.On(firstYear, firstMonth, firstDay);
        latest = EdtfBound.On(lastYear, lastMonth, lastDay);
        return true;
    }

    private static (int Month, int Day) FirstDay(bool leap, EdtfDigits? month, EdtfDigits? day)
    {
        for (int m = 1; m <= 12; m++)
        {
            int length = Fits(m, month) ? DaysInMonth(leap, m) : 0;
            for (int d = 1; d <= length; d++)
            {
                if (Fits(d, day))
                {
                    return (m, d);
                }
            }
        }

        return default;
    }

    private static (int Month, int Day) LastDay(bool leap, EdtfDigits? month, EdtfDigits? day)
    {
        for (int m = 12; m >= 1; m--)
        {
            for (int d = Fits(m, month) ? DaysInMonth(leap, m) : 0; d >= 1; d--)
            {
                if (Fits(d, day))
                {
                    return (m, d);
                }
            }
        }

        return default;
    }

    private static bool Fits(int value, EdtfDigits? digits) => digits is not { } wanted || wanted.Matches(value);

    private static int Lowest(EdtfDigits year, bool zeroAllowed) => year.Lowest > 0 || zeroAllowed ? year.Lowest : year.Step;

    private static int LowestLeap(EdtfDigits year, bool zeroAllowed)
    {
        int inCentury = 4;
        while (inCentury < 100 && !year.LowPair.Matches(inCentury))
        {
            inCentury += 4;
        }

        for (int century = 0; century < 100; century++)
        {
            if (!year.HighPair.Matches(century))
            {
                continue;
            }

            if (IsLeapCentury(year, century, zeroAllowed))
            {
                return century * 100;
            }

            if (inCentury < 100)
            {
                return (century * 100) + inCentury;
            }
        }

        return -1;
    }

    private static int HighestLeap(EdtfDigits year, bool zeroAllowed)
    {
        int inCentury = 96;
        while (inCentury > 0 && !year.LowPair.Matches(inCentury))
        {
            inCentury -= 4;
        }

        for (int century = 99; century >= 0; century--)
        {
            if (!year.HighPair.Matches(century))
            {
                continue;
            }

            if (inCentury > 0)
            {
                return (century * 100) + inCentury;
            }

            if (IsLeapCentury(year, century, zeroAllowed))
            {
                return century * 100;
            }
        }

        return -1;
    }

    private static bool IsLeapCentury(EdtfDigits year, int century, bool zeroAllowed)
        => century % 4 == 0 && year.LowPair.Matches(0) && (century > 0 || zeroAllowed);
}
