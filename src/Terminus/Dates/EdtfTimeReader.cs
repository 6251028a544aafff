namespace Terminus;

/// <summary>
/// Reads a time of day, which must be complete: <c>T23:20:30</c>, with <c>Z</c>, <c>+04</c> or <c>-04:30</c> or nothing after it. It says
/// nothing of the day, which is the local one as written.
/// </summary>
internal static class EdtfTimeReader
{
    internal static bool TryRead(ref EdtfScanner scanner)
    {
        scanner.Advance();
        if (!TryReadPair(ref scanner, 23, "hour", out _) || !TryReadColon(ref scanner)
            || !TryReadPair(ref scanner, 59, "minute", out int minute) || !TryReadColon(ref scanner))
        {
            return false;
        }

        // A leap second is the last of an hour.
        return TryReadPair(ref scanner, minute == 59 ? 60 : 59, "second", out _) && TryReadShift(ref scanner);
    }

    private static bool TryReadShift(ref EdtfScanner scanner)
    {
        int start = scanner.Position;
        bool west = scanner.Current == '-';
        if (scanner.Take('Z') || !(scanner.Take('+') || scanner.Take('-')))
        {
            return true;
        }

        int minutes = 0;
        if (!TryReadPair(ref scanner, 23, "hour", out int hours)
            || (scanner.Take(':') && !TryReadPair(ref scanner, 59, "minute", out minutes)))
        {
            return false;
        }

        return !west || hours + minutes > 0 || scanner.Fail(start, "A time shift of zero has a plus, or is written Z.");
    }

    private static bool TryReadColon(ref EdtfScanner scanner)
        => scanner.Take(':') || scanner.FailHere("A time of day is complete: hours, minutes and seconds with colons, such as 23:20:30.");

    private static bool TryReadPair(ref EdtfScanner scanner, int greatest, string what, out int value)
    {
        int start = scanner.Position;
        value = 0;
        for (int i = 0; i < 2; i++)
        {
            if (!EdtfScanner.IsDigit(scanner.Current))
            {
                return scanner.FailHere("The " + what + " has two digits.");
            }

            value = (value * 10) + scanner.Current - '0';
            scanner.Advance();
        }

        return value <= greatest || scanner.Fail(start, "The " + what + " is 00 to " + DateText.Digits(greatest) + " here.");
    }
}
