namespace Terminus;

/// <summary>
/// Reads the years that stand alone: those with the prefix Y, with an exponent, and with a count of significant digits.
/// </summary>
internal static class EdtfYearReader
{
    private const string TooLarge = "The number does not fit in 64 bits; a year lies within 9223372036854775807 of year 0.";

    /// <summary>Reads <c>Y170000002</c>, <c>Y-17E7</c> or <c>Y3388E2S3</c>; the position is after the Y.</summary>
    internal static bool TryReadPrefixed(ref EdtfScanner scanner, ref EdtfPart part)
    {
        bool negative = scanner.Take('-');
        int start = scanner.Position;
        if (scanner.Current == '0')
        {
            return scanner.FailHere("A year after Y has more than four digits and does not begin with 0.");
        }

        if (!TryReadWhole(ref scanner, "A year after Y", out long year))
        {
            return false;
        }

        part.AtLeast(1);
        if (scanner.Take('E') && !TryScale(ref scanner, ref part, ref year))
        {
            return false;
        }

        if (year <= 9999)
        {
            return scanner.Fail(
                start, "Y is only for years beyond four digits, such as Y12000 or Y-12000; one from -9999 to 9999 is written without it.");
        }

        return TryFinish(ref scanner, ref part, year, negative);
    }

    /// <summary>Reads the significant digits, if any follow, and sets the ends of <paramref name="part"/>.</summary>
    internal static bool TryFinish(ref EdtfScanner scanner, ref EdtfPart part, long year, bool negative)
    {
        (long low, long high) = (year, year);
        int start = scanner.Position;
        if (scanner.Take('S'))
        {
            part.AtLeast(2);
            if (!TryReadWhole(ref scanner, "The count of significant digits after S", out long count))
            {
                return false;
            }

            if (count == 0)
            {
                return scanner.Fail(start + 1, "The count of significant digits after S is at least 1.");
            }

            if (!TryRound(year, count, out low, out high))
            {
                return scanner.Fail(start, TooLarge);
            }
        }

        (low, high) = negative ? (-high, -low) : (low, high);
        part.Earliest = EdtfBound.On(low, 1, 1);
        part.Latest = EdtfBound.On(high, 12, 31);
        part.Precision = EdtfPrecision.Year;
        return true;
    }

    private static bool TryScale(ref EdtfScanner scanner, ref EdtfPart part, ref long year)
    {
        part.AtLeast(2);
        int start = scanner.Position;
        if (!TryReadWhole(ref scanner, "The exponent after E", out long exponent))
        {
            return false;
        }

        if (exponent == 0)
        {
            return scanner.Fail(start, "The exponent after E is at least 1.");
        }

        for (; exponent > 0; exponent--)
        {
            if (year > long.MaxValue / 10)
            {
                return scanner.Fail(start, TooLarge);
            }

            year *= 10;
        }

        return true;
    }

    // The years that agree with this one in so many digits, counted from its first that is not 0; all its digits, and the year is exact.
    private static bool TryRound(long year, long count, out long low, out long high)
    {
        long unit = 1;
        for (long kept = year; kept >= 10; kept /= 10)
        {
            count--;
        }

        for (; count < 1; count++)
        {
            unit *= 10;
        }

        low = year - (year % unit);
        high = unchecked(low + (unit - 1));
        return high >= low;
    }

    private static bool TryReadWhole(ref EdtfScanner scanner, string what, out long value)
    {
        value = 0;
        int start = scanner.Position;
        for (; EdtfScanner.IsDigit(scanner.Current); scanner.Advance())
        {
            int digit = scanner.Current - '0';
            if (value > (long.MaxValue - digit) / 10)
            {
                return scanner.Fail(start, TooLarge);
            }

            value = (value * 10) + digit;
        }

        return scanner.Position > start || scanner.FailHere(what + " is a whole number above 0, in digits.");
    }
}
