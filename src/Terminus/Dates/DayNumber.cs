using NodaTime;

namespace Terminus;

/// <summary>
/// Days as numbers, so that windows cost eight bytes and the arithmetic of the combination is on integers.
/// Day 1 is -9998-01-01 and the last is 9999-12-31, the whole ISO calendar that NodaTime has; 0 stands for an open end.
/// </summary>
internal static class DayNumber
{
    internal const int Open = 0;

    /// <summary>-9998-01-01.</summary>
    internal const int First = 1;

    /// <summary>9999-12-31.</summary>
    internal const int Last = 7_304_119;

    // Days from -10000-03-01 (the era-aligned origin of the arithmetic below) to the day before -9998-01-01.
    private const int Origin = 671;

    // Years are counted from -10000, a multiple of 400, so that the terms below stay positive.
    private const int YearShift = 10_000;

    private const int DaysPerEra = 146_097;

    internal static int Of(LocalDate date)
    {
        LocalDate iso = date.Calendar == CalendarSystem.Iso ? date : date.WithCalendar(CalendarSystem.Iso);
        return Of(iso.Year, iso.Month, iso.Day);
    }

    /// <summary>The number of a day of the proleptic Gregorian calendar, by counting from March in eras of 400 years.</summary>
    internal static int Of(int year, int month, int day)
    {
        int y = year + YearShift - (month <= 2 ? 1 : 0);
        int era = y / 400;
        int yearOfEra = y - (era * 400);
        int dayOfYear = (((153 * (month > 2 ? month - 3 : month + 9)) + 2) / 5) + day - 1;
        int dayOfEra = (yearOfEra * 365) + (yearOfEra / 4) - (yearOfEra / 100) + dayOfYear;
        return (era * DaysPerEra) + dayOfEra - Origin + 1;
    }

    /// <summary>The day of a number in the proleptic Gregorian calendar.</summary>
    /// <remarks>
    /// Source: Neri and Schneider, Euclidean affine functions and their application to calendar algorithms, Software: Practice and Experience 53
    /// (2023), figure 12, whose constants divide by multiplying; with the origin of this calendar.
    /// </remarks>
    internal static (int Year, int Month, int Day) Parts(int number)
    {
        uint quarters = (4 * (uint)(number + Origin - 1)) + 3;
        uint century = quarters / DaysPerEra;
        ulong product = 2_939_745ul * ((quarters % DaysPerEra) | 3);
        uint dayOfYear = (uint)product / 2_939_745 / 4;
        uint monthAndDay = (2141 * dayOfYear) + 197_913;
        (int month, int day) = ((int)(monthAndDay >> 16), (int)((ushort)monthAndDay / 2141));

        // Years start in March, so January and February are the months 13 and 14 of the year before.
        int year = (int)((100 * century) + (uint)(product >> 32)) - YearShift;
        return dayOfYear >= 306 ? (year + 1, month - 12, day + 1) : (year, month, day + 1);
    }

    internal static LocalDate ToDate(int number)
    {
        (int year, int month, int day) = Parts(number);
        return new LocalDate(year, month, day);
    }

    internal static int Year(int number) => Parts(number).Year;

    /// <summary>
    /// The same day of the month a number of years away, the last of February for 29 February; held inside the calendar.
    /// </summary>
    internal static int PlusYears(int number, int years)
    {
        if (number == Open)
        {
            return Open;
        }

        (int year, int month, int day) = Parts(number);
        long moved = (long)year + years;
        if (moved < -9998)
        {
            return First;
        }

        if (moved > 9999)
        {
            return Last;
        }

        return Of((int)moved, month, month == 2 && day == 29 && !CalendarSystem.Iso.IsLeapYear((int)moved) ? 28 : day);
    }
}
