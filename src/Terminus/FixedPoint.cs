namespace Terminus;

/// <summary>A number with a few decimals as a count of its last decimal, so that 0.948 is 948 thousandths and is written exactly.</summary>
internal static class FixedPoint
{
    /// <summary>The most bytes of a number.</summary>
    internal const int Longest = 24;

    /// <summary>Writes a number that is not negative in ASCII digits, without zeros at the end of its decimals, and returns its length.</summary>
    /// <param name="units">The number in units of its last decimal.</param>
    /// <param name="decimals">How many decimals the units stand for, at most 18.</param>
    /// <param name="into">At least <see cref="Longest"/> bytes.</param>
    internal static int Write(long units, int decimals, Span<byte> into)
    {
        ulong left = (ulong)units;

        // Most numbers have few decimals, so zeros go three at a time at first.
        while (decimals >= 3 && left % 1000 == 0)
        {
            (left, decimals) = (left / 1000, decimals - 3);
        }

        while (decimals > 0 && left % 10 == 0)
        {
            (left, decimals) = (left / 10, decimals - 1);
        }

        int start = Longest;
        for (int more = decimals; more > 0; more--, left /= 10)
        {
            into[--start] = (byte)('0' + (left % 10));
        }

        if (decimals > 0)
        {
            into[--start] = (byte)'.';
        }

        do
        {
            into[--start] = (byte)('0' + (left % 10));
            left /= 10;
        }
        while (left > 0);

        into.Slice(start, Longest - start).CopyTo(into);
        return Longest - start;
    }
}
