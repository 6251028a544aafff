namespace Terminus;

/// <summary>
/// Reads EDTF by hand, from left to right, once: the Library of Congress profile of ISO 8601-2:2019 (4 February 2019), levels 0, 1 and 2.
/// It allocates only to say what is wrong.
/// </summary>
internal static class EdtfParser
{
    /// <summary>The longest text that is read, in characters.</summary>
    internal const int MaximumLength = 1000;

    // "1956-03-06".
    private const int DayLength = 10;

    internal static bool TryRead(ReadOnlySpan<char> text, out EdtfReading reading, out EdtfError? error)
    {
        error = null;
        if (TryReadPlain(text, out reading))
        {
            return true;
        }

        EdtfScanner scanner = new(text);
        if (TryReadAny(ref scanner, text.Length, ref reading))
        {
            return true;
        }

        reading = default;
        error = scanner.Error;
        return false;
    }

    /// <summary>The day that a text of the form <c>1956-03-06</c> is, as a day number; null where it is none.</summary>
    internal static int? DayOf(ReadOnlySpan<char> text)
        => text.Length == DayLength && TryReadPlain(text, out EdtfReading reading) ? reading.Earliest.DayNumber : null;

    private static bool TryReadAny(ref EdtfScanner scanner, int length, ref EdtfReading reading)
    {
        if (length == 0)
        {
            return scanner.Fail(0, "There is no text; the shortest date is a year of four digits, such as 1956.");
        }

        if (length > MaximumLength)
        {
            return scanner.Fail(MaximumLength, "A date has at most " + DateText.Digits(MaximumLength) + " characters.");
        }

        return scanner.Current is '[' or '{'
            ? EdtfSetReader.TryRead(ref scanner, ref reading)
            : TryReadDateOrInterval(ref scanner, ref reading);
    }

    private static bool TryReadDateOrInterval(ref EdtfScanner scanner, ref EdtfReading reading)
    {
        if (!TryReadEnd(ref scanner, ref reading, out EdtfPart start))
        {
            return false;
        }

        reading.Earliest = start.Earliest;
        reading.Latest = start.Latest;
        if (scanner.AtEnd && start.Earliest.Kind == EdtfBoundKind.Known)
        {
            return true;
        }

        if (!scanner.Take('/'))
        {
            return scanner.FailHere(WhatFollows(start, scanner.Current));
        }

        int second = scanner.Position;
        if (!TryReadEnd(ref scanner, ref reading, out EdtfPart end))
        {
            return false;
        }

        if (!scanner.AtEnd)
        {
            return scanner.FailHere("Nothing follows the second end of an interval.");
        }

        reading.Latest = end.Latest;
        return TryCheckInterval(ref scanner, ref reading, start, end, second);
    }

    // A date, or an end of an interval that is open or unknown; the ends of the part are then open or unknown too.
    private static bool TryReadEnd(ref EdtfScanner scanner, ref EdtfReading reading, out EdtfPart part)
    {
        bool isOpen = scanner.TakeDots();
        if (isOpen || scanner.AtEnd || scanner.Current == '/')
        {
            EdtfBound bound = isOpen ? EdtfBound.Open : EdtfBound.Unknown;
            part = new EdtfPart { Earliest = bound, Latest = bound, Level = 1 };
        }
        else if (!EdtfDateReader.TryRead(ref scanner, out part))
        {
            return false;
        }

        reading.Include(part);
        return true;
    }

    private static bool TryCheckInterval(ref EdtfScanner scanner, ref EdtfReading reading, in EdtfPart start, in EdtfPart end, int second)
    {
        if (start.HasTime || end.HasTime)
        {
            int position = start.HasTime ? start.TimePosition : end.TimePosition;
            return scanner.Fail(position, "A time of day is allowed only on a single date, not in an interval.");
        }

        bool startKnown = start.Earliest.Kind == EdtfBoundKind.Known;
        bool endKnown = end.Latest.Kind == EdtfBoundKind.Known;
        if (!startKnown && !endKnown)
        {
            return scanner.Fail(0, "An interval has a date at one end at least.");
        }

        if (startKnown && endKnown && end.Latest.IsBefore(start.Earliest))
        {
            return scanner.Fail(second, "The interval ends before it begins.");
        }

        if (start.IsUnspecified || end.IsUnspecified)
        {
            reading.AtLeast(2);
        }

        return true;
    }

    private static string WhatFollows(in EdtfPart before, char found)
    {
        if (before.Earliest.Kind != EdtfBoundKind.Known)
        {
            return "After '..' at the start comes '/' and a date.";
        }

        if (before.HasTime)
        {
            return "Nothing follows a time of day but Z or a shift such as +01:00.";
        }

        return found switch
        {
            '.' => "'..' is for an open end of an interval, such as 1985/.., or a range in a set, such as [1985..1986].",
            'T' => "A time of day follows only a complete date.",
            _ => "After this date only '/' and another may follow; a year has four digits, a month and a day two, with hyphens between.",
        };
    }

    // The common forms, YYYY, YYYY-MM and YYYY-MM-DD; anything unusual about them is left to the reader above.
    private static bool TryReadPlain(ReadOnlySpan<char> text, out EdtfReading reading)
    {
        reading = default;
        if (text.Length is not (4 or 7 or DayLength))
        {
            return false;
        }

        int year = (Pair(text, 0) * 100) + Pair(text, 2);
        int? month = text.Length == 4 ? null : text[4] == '-' ? Pair(text, 5) : -1;
        int? day = text.Length < DayLength ? null : text[7] == '-' ? Pair(text, 8) : -1;
        return year >= 0 && EdtfCalendar.TryWhole(year, month, day, out reading.Earliest, out reading.Latest);
    }

    // Two digits as a number, or a number below -9999 where they are not digits.
    private static int Pair(ReadOnlySpan<char> text, int at)
    {
        int tens = text[at] - '0';
        int ones = text[at + 1] - '0';
        return (uint)tens > 9 || (uint)ones > 9 ? -100_000 : (tens * 10) + ones;
    }
}
