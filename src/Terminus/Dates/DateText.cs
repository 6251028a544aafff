using NodaTime;

namespace Terminus;

/// <summary>The one formatter of dates: ISO 8601 digits, whatever the culture of the thread.</summary>
internal static class DateText
{
    private static readonly string[] MonthNames =
    [
        "January", "February", "March", "April", "May", "June",
        "July", "August", "September", "October", "November", "December",
    ];

    /// <summary>A day as <c>1956-03-06</c>; years before 0 as <c>-0044-03-15</c>.</summary>
    internal static string Iso(int dayNumber)
    {
        (int year, int month, int day) = DayNumber.Parts(dayNumber);
        return Iso(year, month, day);
    }

    /// <summary>A day as <c>1956-03-06</c>.</summary>
    internal static string Iso(LocalDate date) => Iso(DayNumber.Of(date));

    /// <summary>Writes a day as <c>1956-03-06</c> into a text, and returns its length, at most <see cref="LongestIso"/>.</summary>
    internal static int WriteIso(int dayNumber, Span<char> text)
    {
        (int year, int month, int day) = DayNumber.Parts(dayNumber);
        return WriteIso(year, month, day, text);
    }

    /// <summary>The most characters of a day of the calendar.</summary>
    internal const int LongestIso = 16;

    // "28 September -9998", and room to spare.
    private const int LongestWords = 24;

    /// <summary>Writes a window in EDTF as <see cref="DateWindow.ToEdtf"/> says, and returns its length, at most <see cref="LongestEdtf"/>.</summary>
    internal static int WriteEdtf(DateWindow window, Span<char> text)
    {
        int length = WriteEnd(window.FirstDay, text);
        if (window.FirstDay == window.LastDay)
        {
            return length;
        }

        text[length++] = '/';
        return length + WriteEnd(window.LastDay, text.Slice(length));
    }

    /// <summary>The most characters of a window of the calendar.</summary>
    internal const int LongestEdtf = (2 * LongestIso) + 1;

    /// <summary>A day of a year that may lie outside the calendar, with at least four digits of year.</summary>
    internal static string Iso(long year, int month, int day)
    {
        Span<char> text = stackalloc char[32];
        int length = WriteIso(year, month, day, text);
        return text.Slice(0, length).ToString();
    }

    /// <summary>A year with at least four digits: <c>1956</c>, <c>-0044</c>.</summary>
    internal static string Year(int year) => year.ToString("0000", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>A day in words: <c>11 July 1961</c>.</summary>
    internal static string Words(int dayNumber) => new TextBuffer(LongestWords).AddWords(dayNumber).ToString();

    /// <summary>Adds a day in words: <c>11 July 1961</c>.</summary>
    internal static TextBuffer AddWords(this TextBuffer text, int dayNumber)
    {
        (int year, int month, int day) = DayNumber.Parts(dayNumber);
        return text.AddDigits(day).Add(' ').Add(MonthNames[month - 1]).Add(' ').AddDigits(year);
    }

    /// <summary>A window to the year: <c>1961 or later</c>, <c>1962 or earlier</c>, <c>1956–1961</c>, <c>1961</c>, <c>any date</c>.</summary>
    internal static string Years(DateWindow window) => new TextBuffer(LongestWords).AddYears(window).ToString();

    /// <summary>Adds a window to the year, in the same words.</summary>
    internal static TextBuffer AddYears(this TextBuffer text, DateWindow window)
    {
        if (window.IsAny)
        {
            return text.Add("any date");
        }

        if (window.FirstDay == DayNumber.Open || window.LastDay == DayNumber.Open)
        {
            return window.FirstDay == DayNumber.Open
                ? text.AddDigits(DayNumber.Year(window.LastDay)).Add(" or earlier")
                : text.AddDigits(DayNumber.Year(window.FirstDay)).Add(" or later");
        }

        (int first, int last) = (DayNumber.Year(window.FirstDay), DayNumber.Year(window.LastDay));
        text.AddDigits(first);
        return first == last ? text : text.Add('–').AddDigits(last);
    }

    /// <summary>A day's year in plain digits; years before 1 as written by astronomers (0 is 1 BCE).</summary>
    internal static string YearOf(int dayNumber) => Digits(DayNumber.Year(dayNumber));

    /// <summary>The English name of a month from 1 to 12.</summary>
    internal static string Month(int month) => MonthNames[month - 1];

    /// <summary>A whole number in plain digits.</summary>
    internal static string Digits(long value) => value.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static int WriteEnd(int dayNumber, Span<char> text)
    {
        if (dayNumber != DayNumber.Open)
        {
            return WriteIso(dayNumber, text);
        }

        (text[0], text[1]) = ('.', '.');
        return 2;
    }

    /// <summary>Writes a day as <see cref="Iso(long, int, int)"/> gives it into a text, and returns its length.</summary>
    internal static int WriteIso(long year, int month, int day, Span<char> text)
    {
        int position = 0;
        if (year is >= 0 and <= 9999)
        {
            Write((int)year / 100, text);
            Write((int)year % 100, text.Slice(2));
            position = 4;
        }
        else
        {
            foreach (char digit in year.ToString("0000", System.Globalization.CultureInfo.InvariantCulture))
            {
                text[position++] = digit;
            }
        }

        text[position] = '-';
        Write(month, text.Slice(position + 1));
        text[position + 3] = '-';
        Write(day, text.Slice(position + 4));
        return position + 6;
    }

    private static void Write(int twoDigits, Span<char> text)
        => (text[0], text[1]) = ((char)('0' + (twoDigits / 10)), (char)('0' + (twoDigits % 10)));
}
