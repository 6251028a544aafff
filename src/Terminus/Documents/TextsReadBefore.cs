using System.Runtime.InteropServices;

namespace Terminus;

/// <summary>
/// What short texts of documents were read as, by their bytes: the names of parts, ids and dates come again and again, and are kept from the second time
/// on. Each text has one place, which the next text of that place takes over, so the table never grows; a place is replaced whole, so it is safe on any
/// thread.
/// </summary>
internal sealed class TextsReadBefore<T>
    where T : class
{
    private const int Places = 2048;
    private const int Longest = 32;

    private readonly Entry?[] entries = new Entry?[Places];
    private readonly CameBefore came = new(Places);

    /// <summary>What the text was read as, or null.</summary>
    internal T? Find(ReadOnlySpan<byte> utf8)
        => utf8.Length <= Longest && Volatile.Read(ref entries[PlaceOf(Hash(utf8))]) is { } entry && utf8.SequenceEqual(entry.Utf8) ? entry.Value : null;

    /// <summary>Notes what a text was read as; it is kept where it came before.</summary>
    internal void Keep(ReadOnlySpan<byte> utf8, T value)
    {
        if (utf8.Length <= Longest && Hash(utf8) is var hash && came.Note((int)(hash >> 21)))
        {
            Volatile.Write(ref entries[PlaceOf(hash)], new Entry(utf8.ToArray(), value));
        }
    }

    private static int PlaceOf(ulong hash) => (int)(hash >> 53);

    private static ulong Hash(ReadOnlySpan<byte> utf8)
    {
        const ulong Prime = 0x9E3779B97F4A7C15;
        ulong hash = (ulong)utf8.Length;
        for (; utf8.Length >= sizeof(ulong); utf8 = utf8.Slice(sizeof(ulong)))
        {
            hash = unchecked((hash ^ MemoryMarshal.Read<ulong>(utf8)) * Prime);
        }

        foreach (byte b in utf8)
        {
            hash = unchecked((hash ^ b) * Prime);
        }

        return hash;
    }

    private sealed class Entry(byte[] utf8, T value)
    {
        internal byte[] Utf8 { get; } = utf8;

        internal T Value { get; } = value;
    }
}
