namespace Terminus;

/// <summary>
/// Reads a set: <c>[1667,1760-12]</c>, one of its members, or <c>{1667,1760-12}</c>, all of them. What counts for a window is the hull of
/// the members, in whatever order they stand.
/// </summary>
internal static class EdtfSetReader
{
    internal static bool TryRead(ref EdtfScanner scanner, ref EdtfReading reading)
    {
        char close = scanner.Current == '[' ? ']' : '}';
        scanner.Advance();
        reading.AtLeast(2);
        bool openStart = scanner.TakeDots();
        bool openEnd = false;
        for (bool isFirst = true, more = true; more; isFirst = false)
        {
            if (!TryReadMember(ref scanner, ref reading, isFirst, isFirst && openStart, out openEnd))
            {
                return false;
            }

            more = scanner.Take(',');
            if (more && openEnd)
            {
                return scanner.Fail(scanner.Position - 1, "'..' with nothing after it is allowed only at the end of a set.");
            }
        }

        if (!scanner.Take(close))
        {
            return scanner.FailHere("A set goes on with ',', with '..' for a range, or ends with '" + close + "'; no spaces.");
        }

        reading.Earliest = openStart ? EdtfBound.Open : reading.Earliest;
        reading.Latest = openEnd ? EdtfBound.Open : reading.Latest;
        return scanner.AtEnd || scanner.FailHere("Nothing follows a set.");
    }

    private static bool TryReadMember(ref EdtfScanner scanner, ref EdtfReading reading, bool isFirst, bool isOpen, out bool openEnd)
    {
        openEnd = false;
        if (!TryReadDate(ref scanner, out EdtfPart from))
        {
            return false;
        }

        Include(ref reading, from, isFirst);
        int dots = scanner.Position;
        if (!scanner.TakeDots())
        {
            return true;
        }

        if (isOpen)
        {
            return scanner.Fail(dots, "A member of a set is open to one side only.");
        }

        openEnd = scanner.Current is ']' or '}' or ',' || scanner.AtEnd;
        if (openEnd)
        {
            return true;
        }

        int start = scanner.Position;
        if (!TryReadDate(ref scanner, out EdtfPart to))
        {
            return false;
        }

        if (from.Precision != to.Precision)
        {
            return scanner.Fail(start, "The two ends of a range in a set have the same precision, such as 1670..1672 or 1760-01..1760-12.");
        }

        Include(ref reading, to, false);
        return !to.Latest.IsBefore(from.Earliest) || scanner.Fail(start, "The range ends before it begins.");
    }

    private static bool TryReadDate(ref EdtfScanner scanner, out EdtfPart part)
    {
        if (scanner.Current is ']' or '}' or ',')
        {
            part = default;
            return scanner.FailHere("A member of a set is a date, such as 1956 or 1956-03-06.");
        }

        return EdtfDateReader.TryRead(ref scanner, out part)
            && (!part.HasTime || scanner.Fail(part.TimePosition, "A time of day is allowed only on a single date, not in a set."));
    }

    private static void Include(ref EdtfReading reading, in EdtfPart part, bool isFirst)
    {
        reading.Include(part);
        if (isFirst || part.Earliest.IsBefore(reading.Earliest))
        {
            reading.Earliest = part.Earliest;
        }

        if (isFirst || reading.Latest.IsBefore(part.Latest))
        {
            reading.Latest = part.Latest;
        }
    }
}
