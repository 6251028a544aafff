namespace Terminus.Tests;

/// <summary>
/// The generator of every simulation here (Steele, Lea and Flood 2014), so that a seed gives the same draws on every runtime.
/// </summary>
internal sealed class SplitMix64(ulong seed)
{
    private ulong state = seed;

    internal ulong Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            ulong z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }

    /// <summary>A number in [0, 1) from the top 53 bits.</summary>
    internal double NextDouble() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A whole number from 0 to one below <paramref name="count"/>.</summary>
    internal int NextInt(int count) => (int)(NextDouble() * count);
}
