namespace Terminus;

/// <summary>Digits of which some are lost: <c>?</c> stands for one digit.</summary>
internal static class DigitPattern
{
    internal static bool HasLosses(string pattern) => pattern.AsSpan().IndexOfAny('?', '*') >= 0;

    /// <summary>Whether a number of as many digits fits.</summary>
    internal static bool Fits(string pattern, int value)
    {
        for (int i = pattern.Length - 1; i >= 0; i--)
        {
            if (pattern[i] != '?' && pattern[i] != '0' + (value % 10))
            {
                return false;
            }

            value /= 10;
        }

        return value == 0;
    }

    /// <summary>The numbers from <paramref name="least"/> to <paramref name="most"/> that fit, in ascending order.</summary>
    internal static IEnumerable<int> Values(string pattern, int least, int most)
    {
        if (pattern == "*")
        {
            pattern = new string('?', most > 99 ? 4 : 2);
        }

        for (int value = least; value <= most; value++)
        {
            if (Fits(pattern, value))
            {
                yield return value;
            }
        }
    }
}
