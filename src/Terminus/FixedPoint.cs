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
        // Most numbers have few decimals, so zeros go three at a time at first.
        while (decimals >= 3 && units % 1000 == 0)
        {
            (units, decimals) = (units / 1000, decimals - 3);
        }

        while (decimals > 0 && units % 10 == 0)
        {
            (units, decimals) = (units / 10, decimals - 1);
        }

        int start = Longest;
        for (int written = 0; written <= decimals || units > 0; written++, units /= 10)
        {
            if (written == decimals && decimals > 0)
            {
                into[--start] = (byte)'.';
            }

            into[--start] = (byte)('0' + (units % 10));
        }

        into.Slice(start, Longest - start).CopyTo(into);
        return Longest - start;
    }
}
