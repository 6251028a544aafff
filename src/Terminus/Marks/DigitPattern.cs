namespace Terminus;

/// <summary>Up to four digits of a day, a month or a year, of which some may be lost: <c>?</c> stands for one digit, <c>*</c> alone for any number.</summary>
internal readonly record struct DigitPattern
{
    private const int BitsOfCharacter = 16;

    // The characters, the first in the lowest bits.
    private readonly ulong packed;

    internal DigitPattern(ReadOnlySpan<char> characters)
    {
        for (int i = characters.Length - 1; i >= 0; i--)
        {
            packed = (packed << BitsOfCharacter) | characters[i];
        }
    }

    /// <summary>The number of characters.</summary>
    internal int Length
    {
        get
        {
            int length = 0;
            for (ulong rest = packed; rest != 0; rest >>= BitsOfCharacter)
            {
                length++;
            }

            return length;
        }
    }

    /// <summary>Whether nothing is stamped.</summary>
    internal bool IsEmpty => packed == 0;

    /// <summary>Whether digits of it are lost.</summary>
    internal bool HasLosses
    {
        get
        {
            bool losses = false;
            for (ulong rest = packed; rest != 0; rest >>= BitsOfCharacter)
            {
                losses |= (char)rest is '?' or '*';
            }

            return losses;
        }
    }

    /// <summary>Whether digits of a longer number are lost.</summary>
    internal static bool HaveLosses(ReadOnlySpan<char> digits) => digits.IndexOfAny('?', '*') >= 0;

    /// <summary>The least number that fits, from one to another; -1 where none does.</summary>
    internal int Next(int least, int most)
    {
        if (!HasLosses)
        {
            int value = Value();
            return value >= least && value <= most && packed != 0 ? value : -1;
        }

        for (int value = least; value <= most; value++)
        {
            if (packed == '*' || Fits(value))
            {
                return value;
            }
        }

        return -1;
    }

    /// <summary>The characters.</summary>
    public override string ToString()
    {
        Span<char> characters = stackalloc char[sizeof(ulong) * 8 / BitsOfCharacter];
        int length = 0;
        for (ulong rest = packed; rest != 0; rest >>= BitsOfCharacter)
        {
            characters[length++] = (char)rest;
        }

        return characters.Slice(0, length).ToString();
    }

    private int Value()
    {
        int value = 0;
        for (ulong rest = packed; rest != 0; rest >>= BitsOfCharacter)
        {
            value = (10 * value) + ((char)rest - '0');
        }

        return value;
    }

    // Whether a number of as many digits fits.
    private bool Fits(int value)
    {
        for (int i = Length - 1; i >= 0; i--)
        {
            char wanted = (char)(packed >> (i * BitsOfCharacter));
            if (wanted != '?' && wanted != '0' + (value % 10))
            {
                return false;
            }

            value /= 10;
        }

        return value == 0;
    }
}
