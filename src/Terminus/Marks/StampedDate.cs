namespace Terminus;

/// <summary>
/// A date as it is stamped: the digits and the months that can be read, before anybody decides on the century, the order of day
/// and month, or a lost digit.
/// </summary>
/// <param name="Year">Two or four digits, with <c>?</c> for lost ones.</param>
/// <param name="Months">The months it can be, one bit each from bit 1 for January; 0 where no month is stamped.</param>
/// <param name="Day">One or two digits, with <c>?</c> for lost ones; empty where no day is stamped.</param>
/// <param name="MonthDigits">The month in digits where it is stamped so; then the order is open.</param>
internal readonly record struct StampedDate(DigitPattern Year, int Months, DigitPattern Day = default, DigitPattern MonthDigits = default)
{
    /// <summary>Whether characters were put right or are lost.</summary>
    internal bool Doubtful { get; init; }

    /// <summary>Whether the day stands before the month for certain, as in <c>17.IV.94</c>.</summary>
    internal bool OrderKnown { get; init; }

    // Where a date can mean more days than this, the day says nothing that its month or its year does not.
    private const int Most = 1000;

    // Two digits never mean a year after those that the shipped registers know.
    private const int LastYear = 2026;

    private const int FirstWholeYear = 1500;
    private const int LastWholeYear = 2099;

    /// <summary>Whether the year is stamped with two digits.</summary>
    internal bool HasShortYear => Year.Length == 2;

    /// <summary>Whether a year is all that is stamped.</summary>
    internal bool IsOfYear => Months == 0 && MonthDigits.IsEmpty;

    /// <summary>Whether digits of it are lost, or its month can be more than one.</summary>
    internal bool HasLosses => Year.HasLosses || Day.HasLosses || MonthDigits.HasLosses || (Months & (Months - 1)) != 0;

    /// <summary>The date without its day, and without a month in digits.</summary>
    internal StampedDate WithoutDay() => this with { Day = default, MonthDigits = default };

    /// <summary>
    /// All dates of the calendar that it can mean, in the order of the stamp: month first, earlier centuries first. Where so much is lost that they are more
    /// than a thousand, the months, or else the years, that hold them.
    /// </summary>
    internal void AddReadings(ref ReadingList readings)
    {
        StampedDate ofMonth = WithoutDay();
        if (!TryAdd(ref readings) && !ofMonth.TryAdd(ref readings) && !(ofMonth with { Months = 0 }).TryAdd(ref readings))
        {
            readings.Clear();
        }
    }

    // Whether the readings of the date are few enough; otherwise what was added counts for nothing.
    private bool TryAdd(ref ReadingList readings)
    {
        readings.Clear();
        (int first, int last, int least, int most) = HasShortYear ? (1800, 2000, 0, 99) : (0, 0, FirstWholeYear, LastWholeYear);
        for (int century = first; century <= last; century += 100)
        {
            for (int year = Year.Next(least, most); year >= 0; year = Year.Next(year + 1, most))
            {
                if (HasShortYear && century + year > LastYear)
                {
                    break;
                }

                AddYear(ref readings, century + year);
                if (readings.Count > Most)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private void AddYear(ref ReadingList readings, int year)
    {
        if (MonthDigits.IsEmpty)
        {
            AddNamed(ref readings, year);
        }
        else if (OrderKnown)
        {
            AddFigures(ref readings, year, MonthDigits, Day, dayFirst: true);
        }
        else
        {
            AddFigures(ref readings, year, MonthDigits, Day, dayFirst: false);
            AddFigures(ref readings, year, Day, MonthDigits, dayFirst: true);
        }
    }

    private void AddNamed(ref ReadingList readings, int year)
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

            if (Day.IsEmpty)
            {
                readings.Add(new CalendarReading(year, month, 0));
            }

            for (int day = Day.Next(1, 31); day > 0; day = Day.Next(day + 1, 31))
            {
                readings.AddIfExists(new CalendarReading(year, month, day));
            }
        }
    }

    // Both orders of the same figures are one reading where they are equal, and that has its month first.
    private void AddFigures(ref ReadingList readings, int year, DigitPattern monthDigits, DigitPattern dayDigits, bool dayFirst)
    {
        for (int month = monthDigits.Next(1, 12); month > 0; month = monthDigits.Next(month + 1, 12))
        {
            for (int day = dayDigits.Next(1, 31); day > 0; day = dayDigits.Next(day + 1, 31))
            {
                if (!dayFirst || OrderKnown || day != month)
                {
                    readings.AddIfExists(new CalendarReading(year, month, day, dayFirst));
                }
            }
        }
    }
}
