namespace Terminus;

/// <summary>The date of a mark as EDTF.</summary>
internal static class MarkDate
{
    // The British yearly series of numbers began in 1852; a number with an earlier year is of the next century.
    private const int FirstYearOfSeries = 52;

    /// <summary>The date, or the year of a number, or null; and whether the mark is trusted less.</summary>
    internal static string? Of(MarkDraft found, out bool isUncertain)
    {
        isUncertain = found.IsInDoubt;
        if (found.Date is not { } date)
        {
            return found.Number is { Year: { } year } ? FullYear(year, found.Office) : null;
        }

        var choice = new DateChoice(date, found.Office, found.Kind == MarkKind.PatentDate, stackalloc CalendarReading[ReadingList.Usual]);
        isUncertain |= choice.IsUncertain;
        return choice.ToEdtf();
    }

    /// <summary>Two digits of a year behind a number: the British yearly series ran from 1852 to 1915, later ones are applications.</summary>
    private static string FullYear(string year, string? office)
    {
        if (year.Length == 4)
        {
            return year;
        }

        int value = int.Parse(year, System.Globalization.CultureInfo.InvariantCulture);
        return DateText.Digits(value + (value >= FirstYearOfSeries && office is "GB" ? 1800 : 1900));
    }
}
