namespace Terminus;

/// <summary>
/// The digits of a year, month or day, some of them perhaps unspecified: <c>19X5</c> has the known value 1905 and an unspecified place of
/// tens.
/// </summary>
internal readonly struct EdtfDigits
{
    // Bit 0 is the place of ones, bit 1 of tens, and so on.
    private readonly int unspecified;

    private EdtfDigits(int known, int unspecified)
    {
        Lowest = known;
        this.unspecified = unspecified;
    }

    /// <summary>The least number that fits: every X read as 0.</summary>
    internal int Lowest { get; }

    /// <summary>The greatest number that fits: every X read as 9.</summary>
    internal int Highest => Lowest + (9 * Ones);

    /// <summary>The least step between two numbers that fit: the value of the rightmost X, or 0 where there is none.</summary>
    internal int Step => PlaceValue(unspecified & -unspecified);

    internal bool IsComplete => unspecified == 0;

    /// <summary>Whether exactly the given number of rightmost digits is unspecified.</summary>
    internal bool IsUnspecifiedFrom(int places) => unspecified == (1 << places) - 1;

    /// <summary>The last two digits.</summary>
    internal EdtfDigits LowPair => new(Lowest % 100, unspecified & 3);

    /// <summary>The digits before the last two.</summary>
    internal EdtfDigits HighPair => new(Lowest / 100, unspecified >> 2);

    private int Ones => PlaceValue(unspecified);

    /// <summary>Whether a number fits.</summary>
    internal bool Matches(int value)
    {
        int known = Lowest;
        for (int places = unspecified; value != 0 || known != 0; places >>= 1, value /= 10, known /= 10)
        {
            if ((places & 1) == 0 && value % 10 != known % 10)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>
    /// Reads exactly <paramref name="count"/> digits or Xs; false where another character stands among them, with the position at it.
    /// </summary>
    internal static bool TryRead(ref EdtfScanner scanner, int count, out EdtfDigits digits)
    {
        int known = 0;
        int unspecified = 0;
        for (int i = 0; i < count; i++)
        {
            char c = scanner.Current;
            if (c != 'X' && !EdtfScanner.IsDigit(c))
            {
                digits = default;
                return false;
            }

            known = (known * 10) + (c == 'X' ? 0 : c - '0');
            unspecified = (unspecified << 1) | (c == 'X' ? 1 : 0);
            scanner.Advance();
        }

        digits = new EdtfDigits(known, unspecified);
        return true;
    }

    private static int PlaceValue(int places)
        => (places & 1) + (10 * ((places >> 1) & 1)) + (100 * ((places >> 2) & 1)) + (1000 * ((places >> 3) & 1));
}
