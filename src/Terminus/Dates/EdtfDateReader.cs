using System.Globalization;

namespace Terminus;

/// <summary>
/// Reads one date: a year, a month or grouping, a day, each with its qualifiers, and a time of day. It stops at the first character that
/// cannot belong to the date, which is for the caller to judge.
/// </summary>
internal static class EdtfDateReader
{
    private const string NothingFits = "No day of the calendar fits these digits.";

    internal static bool TryRead(ref EdtfScanner scanner, out EdtfPart part)
    {
        part = default;
        if (!TryReadLeft(ref scanner, ref part))
        {
            return false;
        }

        int start = scanner.Position;
        if (scanner.Take('Y'))
        {
            return EdtfYearReader.TryReadPrefixed(ref scanner, ref part) && TryEndYear(ref scanner, ref part);
        }

        bool negative = scanner.Take('-');
        if (!EdtfDigits.TryRead(ref scanner, 4, out EdtfDigits year))
        {
            return scanner.FailHere("A year has four digits, or X for a digit that is unspecified, or Y before a longer year.");
        }

        if (negative)
        {
            part.AtLeast(1);
            if (year.Highest == 0)
            {
                return scanner.Fail(start, "Year 0 has no minus; it is written 0000 and is 1 BCE.");
            }
        }

        if (scanner.Current == 'S' && year.IsComplete)
        {
            return EdtfYearReader.TryFinish(ref scanner, ref part, year.Lowest, negative) && TryEndYear(ref scanner, ref part);
        }

        if (!TryReadRight(ref scanner, ref part, out bool more))
        {
            return false;
        }

        return more
            ? TryReadMonth(ref scanner, ref part, negative, year)
            : TryFit(ref scanner, ref part, start, negative, year, null, null);
    }

    private static bool TryReadMonth(ref EdtfScanner scanner, ref EdtfPart part, bool negative, EdtfDigits year)
    {
        if (!TryReadLeft(ref scanner, ref part))
        {
            return false;
        }

        int start = scanner.Position;
        if (!EdtfDigits.TryRead(ref scanner, 2, out EdtfDigits month))
        {
            return scanner.FailHere("A month has two digits, 01 to 12, or X for a digit that is unspecified.");
        }

        if (month.IsComplete && month.Lowest is < 1 or > 12)
        {
            return TryReadGrouping(ref scanner, ref part, start, negative, year, month.Lowest);
        }

        if (!TryReadRight(ref scanner, ref part, out bool more))
        {
            return false;
        }

        part.Precision = EdtfPrecision.Month;
        return more
            ? TryReadDay(ref scanner, ref part, negative, year, month)
            : TryFit(ref scanner, ref part, start, negative, year, month, null);
    }

    private static bool TryReadDay(ref EdtfScanner scanner, ref EdtfPart part, bool negative, EdtfDigits year, EdtfDigits month)
    {
        if (!TryReadLeft(ref scanner, ref part))
        {
            return false;
        }

        int start = scanner.Position;
        if (!EdtfDigits.TryRead(ref scanner, 2, out EdtfDigits day))
        {
            return scanner.FailHere("A day has two digits, 01 to 31, or X for a digit that is unspecified.");
        }

        part.Precision = EdtfPrecision.Day;
        if (!TryFit(ref scanner, ref part, start, negative, year, month, day))
        {
            return false;
        }

        if (scanner.Current != 'T')
        {
            return TryReadLast(ref scanner, ref part);
        }

        if (part.IsUncertain || part.IsApproximate || part.IsUnspecified)
        {
            return scanner.FailHere("A time of day follows only a complete date without ?, ~, % or X.");
        }

        part.HasTime = true;
        part.TimePosition = scanner.Position;
        return EdtfTimeReader.TryRead(ref scanner);
    }

    private static bool TryReadGrouping(
        ref EdtfScanner scanner, ref EdtfPart part, int start, bool negative, EdtfDigits year, int code)
    {
        if (code is < EdtfSeasons.First or > EdtfSeasons.Last)
        {
            string found = code.ToString("00", CultureInfo.InvariantCulture);
            return scanner.Fail(start, "A month is 01 to 12, and a season or other grouping 21 to 41. Found " + found + ".");
        }

        if (!EdtfCalendar.TryFit(negative, year, null, null, out EdtfBound earliest, out EdtfBound latest))
        {
            return scanner.Fail(start, NothingFits);
        }

        part.Earliest = EdtfSeasons.FirstDay(earliest.Year, code);
        part.Latest = EdtfSeasons.LastDay(latest.Year, code);
        part.Precision = EdtfPrecision.Grouping;
        part.IsUnspecified = !year.IsComplete;
        part.AtLeast(year.IsComplete && code <= EdtfSeasons.LastOfLevel1 ? 1 : 2);
        if (!TryReadLast(ref scanner, ref part))
        {
            return false;
        }

        return scanner.Current != '-' || scanner.FailHere("A season or other grouping has no day after it.");
    }

    private static bool TryFit(
        ref EdtfScanner scanner, ref EdtfPart part, int start, bool negative, EdtfDigits year, EdtfDigits? month, EdtfDigits? day)
    {
        part.IsUnspecified = !(year.IsComplete && month is not { IsComplete: false } && day is not { IsComplete: false });
        if (part.IsUnspecified)
        {
            part.AtLeast(IsUnspecifiedFromTheRight(year, month, day) ? 1 : 2);
            return EdtfCalendar.TryFit(negative, year, month, day, out part.Earliest, out part.Latest)
                || scanner.Fail(start, NothingFits);
        }

        int signed = negative ? -year.Lowest : year.Lowest;
        return EdtfCalendar.TryWhole(signed, month?.Lowest, day?.Lowest, out part.Earliest, out part.Latest)
            || scanner.Fail(start, DaysAllowed(signed, month!.Value.Lowest));
    }

    // Only the day can be wrong: what is not a month has been read as a grouping.
    private static string DaysAllowed(int year, int month)
        => DateText.Month(month) + " of that year has days 01 to " + DateText.Digits(EdtfCalendar.DaysInMonth(year, month)) + ".";

    // The forms of level 1: 201X, 20XX, 2004-XX, 1985-04-XX, 1985-XX-XX.
    private static bool IsUnspecifiedFromTheRight(EdtfDigits year, EdtfDigits? month, EdtfDigits? day)
    {
        if (month is not { } m)
        {
            return year.IsUnspecifiedFrom(1) || year.IsUnspecifiedFrom(2);
        }

        return year.IsComplete
            && (day is { } d ? d.IsUnspecifiedFrom(2) && (m.IsComplete || m.IsUnspecifiedFrom(2)) : m.IsUnspecifiedFrom(2));
    }

    // A qualifier to the left of a component is of that component alone, and of level 2.
    private static bool TryReadLeft(ref EdtfScanner scanner, ref EdtfPart part)
    {
        if (!IsQualifier(scanner.Current))
        {
            return true;
        }

        part.AtLeast(2);
        return TryReadQualifier(ref scanner, ref part);
    }

    // A qualifier to the right is of everything before it: of level 1 at the end of the date, else of level 2.
    private static bool TryReadRight(ref EdtfScanner scanner, ref EdtfPart part, out bool more)
    {
        bool qualified = IsQualifier(scanner.Current);
        if (!TryReadLast(ref scanner, ref part))
        {
            more = false;
            return false;
        }

        more = scanner.Take('-');
        if (more && qualified)
        {
            part.AtLeast(2);
        }

        return true;
    }

    private static bool TryReadLast(ref EdtfScanner scanner, ref EdtfPart part)
    {
        if (!IsQualifier(scanner.Current))
        {
            return true;
        }

        part.AtLeast(1);
        return TryReadQualifier(ref scanner, ref part);
    }

    private static bool TryEndYear(ref EdtfScanner scanner, ref EdtfPart part)
        => TryReadLast(ref scanner, ref part)
            && (scanner.Current != '-' || scanner.FailHere("A year with Y, E or S stands alone, without a month."));

    private static bool TryReadQualifier(ref EdtfScanner scanner, ref EdtfPart part)
    {
        part.Qualify(scanner.Current);
        scanner.Advance();
        return !IsQualifier(scanner.Current) || scanner.FailHere("One qualifier is enough: ? uncertain, ~ approximate, % both.");
    }

    private static bool IsQualifier(char c) => c is '?' or '~' or '%';
}
