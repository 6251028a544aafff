namespace Terminus;

/// <summary>
/// A date as it is stamped: the digits and the months that can be read, before anybody decides on the century, the order of day
/// and month, or a lost digit.
/// </summary>
/// <param name="Year">Two or four digits, with <c>?</c> for lost ones.</param>
/// <param name="Months">The months it can be, one bit each from bit 1 for January; 0 where no month is stamped.</param>
/// <param name="Day">One or two digits, with <c>?</c> for lost ones; empty where no day is stamped.</param>
/// <param name="MonthDigits">The month in digits where it is stamped so; then the order is open.</param>
internal sealed record StampedDate(string Year, int Months, string Day, string MonthDigits = "")
{
    /// <summary>Whether characters were put right or are lost.</summary>
    internal bool Doubtful { get; init; }

    /// <summary>Whether the day stands before the month for certain, as in <c>17.IV.94</c>.</summary>
    internal bool OrderKnown { get; init; }

    // Where a date can mean more days than this, the day says nothing that its month or its year does not.
    private const int Most = 1000;

    /// <summary>Whether the year is stamped with two digits.</summary>
    internal bool HasShortYear => Year.Length == 2;

    /// <summary>Whether digits of it are lost, or its month can be more than one.</summary>
    internal bool HasLosses
        => DigitPattern.HasLosses(Year) || DigitPattern.HasLosses(Day) || DigitPattern.HasLosses(MonthDigits) || (Months & (Months - 1)) != 0;

    /// <summary>
    /// All dates of the calendar that it can mean, in the order of the stamp: month first, earlier centuries first. Where so much is lost that they are more
    /// than a thousand, the months, or else the years, that hold them.
    /// </summary>
    internal List<CalendarReading> Readings()
    {
        StampedDate ofMonth = this with { Day = string.Empty, MonthDigits = string.Empty };
        return Few(this) ?? Few(ofMonth) ?? Few(ofMonth with { Months = 0 }) ?? [];
    }

    // The readings of a date, or null where they are too many.
    private static List<CalendarReading>? Few(StampedDate date)
    {
        var readings = new List<CalendarReading>();
        foreach (int year in date.Years())
        {
            if (date.MonthDigits.Length > 0)
            {
                date.AddNumeric(readings, year);
            }
            else
            {
                date.AddNamed(readings, year);
            }

            if (readings.Count > Most)
            {
                return null;
            }
        }

        return readings;
    }

    private void AddNamed(List<CalendarReading> readings, int year)
    {
        if (Months == 0)
        {
            readings.Add(new CalendarReading(year, 0, 0));
            return;
        }

        for (int month = 1; month <= 12; month++)
        {
            if ((Months & (1 << month)) == 0)
            {
                continue;
            }

            if (Day.Length == 0)
            {
                readings.Add(new CalendarReading(year, month, 0));
                continue;
            }

            foreach (int day in DigitPattern.Values(Day, 1, 31))
            {
                AddIfExists(readings, new CalendarReading(year, month, day));
            }
        }
    }

    private void AddNumeric(List<CalendarReading> readings, int year)
    {
        if (!OrderKnown)
        {
            foreach (int month in DigitPattern.Values(MonthDigits, 1, 12))
            {
                foreach (int day in DigitPattern.Values(Day, 1, 31))
                {
                    AddIfExists(readings, new CalendarReading(year, month, day));
                }
            }
        }

        foreach (int month in DigitPattern.Values(OrderKnown ? MonthDigits : Day, 1, 12))
        {
            foreach (int day in DigitPattern.Values(OrderKnown ? Day : MonthDigits, 1, 31))
            {
                if (OrderKnown || day != month)
                {
                    AddIfExists(readings, new CalendarReading(year, month, day, DayFirst: true));
                }
            }
        }
    }

    private static void AddIfExists(List<CalendarReading> readings, CalendarReading reading)
    {
        if (reading.Exists)
        {
            readings.Add(reading);
        }
    }

    // Two digits never mean a year after those that the shipped registers know.
    private const int LastYear = 2026;

    private IEnumerable<int> Years()
    {
        if (!HasShortYear)
        {
            return DigitPattern.Values(Year, 1500, 2099);
        }

        var years = new List<int>();
        for (int century = 1800; century <= 2000; century += 100)
        {
            years.AddRange(DigitPattern.Values(Year, 0, 99).Select(year => century + year).Where(year => year <= LastYear));
        }

        return years;
    }
}
