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

    /// <summary>Writes a day as <c>1956-03-06</c> in ASCII, and returns its length, at most <see cref="LongestIso"/>.</summary>
    internal static int WriteIso(int dayNumber, Span<byte> ascii)
    {
        (int year, int month, int day) = DayNumber.Parts(dayNumber);
        return Write(year, month, day, ascii);
    }

    /// <summary>The most characters of a day of the calendar.</summary>
    internal const int LongestIso = 16;

    // "28 September -9998", and room to spare.
    private const int LongestWords = 24;

    /// <summary>A window in EDTF as <see cref="DateWindow.ToEdtf"/> says.</summary>
    internal static string Edtf(DateWindow window)
    {
        Span<byte> ascii = stackalloc byte[LongestEdtf];
        return Text(ascii.Slice(0, WriteEdtf(window, ascii)));
    }

    /// <summary>Writes a window in EDTF in ASCII, and returns its length, at most <see cref="LongestEdtf"/>.</summary>
    internal static int WriteEdtf(DateWindow window, Span<byte> ascii)
    {
        int length = WriteEnd(window.FirstDay, ascii);
        if (window.FirstDay == window.LastDay)
        {
            return length;
        }

        ascii[length++] = (byte)'/';
        return length + WriteEnd(window.LastDay, ascii.Slice(length));
    }

    /// <summary>The most characters of a window of the calendar.</summary>
    internal const int LongestEdtf = (2 * LongestIso) + 1;

    /// <summary>A day of a year that may lie outside the calendar, with at least four digits of year.</summary>
    internal static string Iso(long year, int month, int day)
    {
        Span<byte> ascii = stackalloc byte[32];
        return Text(ascii.Slice(0, Write(year, month, day, ascii)));
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

    private static int WriteEnd(int dayNumber, Span<byte> ascii)
    {
        if (dayNumber != DayNumber.Open)
        {
            return WriteIso(dayNumber, ascii);
        }

        (ascii[0], ascii[1]) = ((byte)'.', (byte)'.');
        return 2;
    }

    private static int Write(long year, int month, int day, Span<byte> ascii)
    {
        int position = 0;
        if (year is >= 0 and <= 9999)
        {
            Write((uint)year / 100, ascii);
            Write((uint)year % 100, ascii.Slice(2));
            position = 4;
        }
        else
        {
            position = Ascii.Write(year.ToString("0000", System.Globalization.CultureInfo.InvariantCulture), ascii);
        }

        Span<byte> rest = ascii.Slice(position, 6);
        rest[0] = (byte)'-';
        Write((uint)month, rest.Slice(1));
        rest[3] = (byte)'-';
        Write((uint)day, rest.Slice(4));
        return position + rest.Length;
    }

    private static void Write(uint twoDigits, Span<byte> ascii)
        => (ascii[1], ascii[0]) = ((byte)('0' + (twoDigits % 10)), (byte)('0' + (twoDigits / 10)));

    private static string Text(ReadOnlySpan<byte> ascii)
    {
        Span<char> text = stackalloc char[ascii.Length];
        Ascii.Read(ascii, text);
        return text.ToString();
    }
}
