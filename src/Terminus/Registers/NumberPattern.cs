namespace Terminus;

/// <summary>
/// A number as far as it can be read: digits, <c>?</c> for a lost digit, <c>*</c> or an ellipsis before them for lost leading digits,
/// and a year behind a stroke where the office counted anew each year.
/// </summary>
internal sealed class NumberPattern
{
    private const int MostDigits = 9;

    private readonly string[] masks;

    private NumberPattern(string digits, bool isOpen, int? year)
    {
        Digits = digits;
        IsOpen = isOpen;
        Year = year;
        // With leading digits lost, one mask for each length; a number does not start with a zero.
        masks = isOpen
            ? [.. Enumerable.Range(0, MostDigits - digits.Length + 1).Select(n => new string('?', n) + digits).Where(m => m[0] != '0')]
            : [digits];
        IsExact = !isOpen && !digits.Any(c => c == '?');
        Value = IsExact ? int.Parse(digits, System.Globalization.CultureInfo.InvariantCulture) : 0;
    }

    /// <summary>The digits and question marks.</summary>
    internal string Digits { get; }

    /// <summary>Whether leading digits are lost.</summary>
    internal bool IsOpen { get; }

    /// <summary>The year behind the number, or null.</summary>
    internal int? Year { get; }

    /// <summary>Whether every digit can be read.</summary>
    internal bool IsExact { get; }

    /// <summary>The number, where every digit can be read.</summary>
    internal int Value { get; }

    /// <summary>The pattern in its one form: <c>2?41?2</c>, <c>*898</c>, <c>10811/1897</c>.</summary>
    public override string ToString() => (IsOpen ? "*" : "") + Digits + (Year is { } y ? "/" + DateText.Digits(y) : "");

    /// <summary>The pattern of one number.</summary>
    internal static NumberPattern Of(int number) => new(DateText.Digits(number), false, null);

    /// <summary>Makes a pattern of digits and question marks; false where there are none or more than nine.</summary>
    internal static bool TryCreate(string digits, bool isOpen, int? year, out NumberPattern pattern)
    {
        int start = 0;
        while (!isOpen && start < digits.Length - 1 && digits[start] == '0')
        {
            start++;
        }

        string trimmed = digits.Substring(start);
        bool good = trimmed.Length is >= 1 and <= MostDigits && trimmed.All(c => c is (>= '0' and <= '9') or '?');
        pattern = good ? new NumberPattern(trimmed, isOpen, year) : None;
        return good;
    }

    internal static readonly NumberPattern None = new("0", false, null);

    /// <summary>The lowest number that fits and is not below <paramref name="low"/>, or null.</summary>
    internal int? FirstFrom(int low)
    {
        int? best = null;
        foreach (string mask in masks)
        {
            if (Seek(mask, 0, 0, Math.Max(1, low), 1) is { } found && (best is null || found < best))
            {
                best = found;
            }
        }

        return best;
    }

    /// <summary>The highest number that fits and is not above <paramref name="high"/>, or null.</summary>
    internal int? LastUpTo(int high)
    {
        int? best = null;
        foreach (string mask in masks)
        {
            if (Seek(mask, 0, 0, high, -1) is { } found && found > 0 && (best is null || found > best))
            {
                best = found;
            }
        }

        return best;
    }

    /// <summary>How many numbers fit from <paramref name="low"/>, 1 or more, to <paramref name="high"/>, both counted.</summary>
    internal int CountBetween(int low, int high)
    {
        int count = 0;
        foreach (string mask in masks)
        {
            count += CountUpTo(mask, high) - CountUpTo(mask, low - 1);
        }

        return count;
    }

    // The nearest completion of a mask on one side of a bound: from the bound up (direction 1) or down (-1).
    private static int? Seek(string mask, int at, int prefix, int bound, int direction)
    {
        if (at == mask.Length)
        {
            return prefix;
        }

        (int least, int most) = Allowed(mask, at);
        for (int i = 0; i <= most - least; i++)
        {
            int next = (prefix * 10) + (direction > 0 ? least + i : most - i);
            bool reaches = direction > 0 ? Complete(mask, at + 1, next, 9) >= bound : Complete(mask, at + 1, next, 0) <= bound;
            if (reaches && Seek(mask, at + 1, next, bound, direction) is { } found)
            {
                return found;
            }
        }

        return null;
    }

    private static int Complete(string mask, int at, int prefix, int lost)
    {
        for (; at < mask.Length; at++)
        {
            prefix = (prefix * 10) + (mask[at] == '?' ? lost : mask[at] - '0');
        }

        return prefix;
    }

    private static int CountUpTo(string mask, int high)
    {
        string bound = DateText.Digits(high);
        if (bound.Length > mask.Length)
        {
            return Free(mask, 0);
        }

        if (bound.Length < mask.Length)
        {
            return 0;
        }

        int count = 0;
        for (int at = 0; at < mask.Length; at++)
        {
            (int least, int most) = Allowed(mask, at);
            int digit = bound[at] - '0';
            count += Math.Max(0, Math.Min(most, digit - 1) - least + 1) * Free(mask, at + 1);
            if (digit < least || digit > most)
            {
                return count;
            }
        }

        return count + 1;
    }

    private static int Free(string mask, int from)
    {
        int count = 1;
        for (int at = from; at < mask.Length; at++)
        {
            (int least, int most) = Allowed(mask, at);
            count *= most - least + 1;
        }

        return count;
    }

    private static (int Least, int Most) Allowed(string mask, int at)
        => mask[at] != '?' ? (mask[at] - '0', mask[at] - '0') : at == 0 ? (1, 9) : (0, 9);
}
