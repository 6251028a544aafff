namespace Terminus;

/// <summary>
/// Which keys came lately, by their hashes: what comes once and never again is not worth keeping, and would only cost the collector. Each key has one
/// place, which the next key of that place takes over. Safe on any thread; two keys of one hash may be taken for one, and where threads meet a key may
/// have to come once more.
/// </summary>
/// <param name="places">How many places there are, a power of two.</param>
internal sealed class CameBefore(int places)
{
    private readonly int[] hashes = new int[places];

    /// <summary>Whether a key of this hash came before, and that it came now.</summary>
    internal bool Note(int hash)
    {
        ref int place = ref hashes[hash & (hashes.Length - 1)];
        bool came = place == hash;
        place = hash;
        return came;
    }
}
