using System.Globalization;

namespace Terminus.Fuzz.Targets;

/// <summary>The bytes that two answers to one input allocated on their thread.</summary>
/// <param name="First">Those of the first answer, with whatever is set up once and kept.</param>
/// <param name="Second">Those of the second.</param>
/// <param name="InputLength">The bytes of the input.</param>
internal readonly record struct Allocation(long First, long Second, int InputLength)
{
    /// <summary>In words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{InputLength} bytes of input allocated {First}, then {Second}");
}

/// <summary>How much an answer may allocate: a fixed amount, and so much for each byte of the input.</summary>
/// <remarks>Work is bounded by what it allocates and not by the clock, so that a slow machine fails nothing and a fast one hides nothing.</remarks>
/// <param name="Fixed">The bytes allowed for any input.</param>
/// <param name="PerByte">The bytes allowed for each byte of it.</param>
internal sealed record AllocationLimits(long Fixed, long PerByte)
{
    // What may be set up at first use and kept: registers, lexicon, caches.
    private const long OnceOnly = 32 * 1024 * 1024;

    /// <summary>Holds an answer to the limits.</summary>
    /// <exception cref="BrokenLawException">It allocated more.</exception>
    internal void Demand(Allocation allocation)
    {
        long most = Fixed + (PerByte * allocation.InputLength);
        if (allocation.Second > most || allocation.First > most + OnceOnly)
        {
            throw new BrokenLawException(string.Create(CultureInfo.InvariantCulture, $"An answer allocates at most {most} bytes: {allocation}."));
        }
    }
}
