using System.Runtime.CompilerServices;
using System.Text.Json;

namespace Terminus;

/// <summary>
/// Items of evidence as they stand in a result, ready to be copied: what an entry of the reference file says comes again and again in a
/// collection, as the very same object. For one thread, one reference and one set of house defaults, and for results on one line.
/// </summary>
/// <remarks>
/// There is a bounded number of places, and each item has one. It is kept when it comes for the second time, so that what comes once costs nothing.
/// </remarks>
internal sealed class ReadyEvidence : IDisposable
{
    private const int Places = 1024;
    private const int LongestKept = 4096;

    private readonly Place[] places = new Place[Places];
    private readonly CameBefore came = new(Places);
    private readonly ByteBuffer bytes = new(LongestKept);
    private readonly Utf8JsonWriter json;
    private readonly EvidenceWriter writer;

    internal ReadyEvidence()
    {
        json = new Utf8JsonWriter(bytes, DocumentWriting.Compact);
        writer = new EvidenceWriter(json);
    }

    /// <summary>The item as JSON; empty where it is not kept.</summary>
    internal ReadOnlySpan<byte> Find(Evidence item, ReadOnlySpan<StatedDay> windows, ReferenceSet reference)
    {
        int hash = RuntimeHelpers.GetHashCode(item);
        ref Place place = ref places[hash & (Places - 1)];
        if (!ReferenceEquals(place.Item, item))
        {
            if (!came.Note(hash))
            {
                return default;
            }

            place = new Place(item, Render(item, windows, reference));
        }

        return place.Json;
    }

    public void Dispose()
    {
        json.Dispose();
        bytes.Dispose();
    }

    // Of an item that is too long to keep, nothing is kept but its place.
    private byte[] Render(Evidence item, ReadOnlySpan<StatedDay> windows, ReferenceSet reference)
    {
        bytes.Clear();
        json.Reset();
        writer.WriteItem(item, windows, reference);
        json.Flush();
        return bytes.Length <= LongestKept ? bytes.Bytes.AsSpan(0, bytes.Length).ToArray() : [];
    }

    private readonly struct Place(Evidence item, byte[] json)
    {
        internal Evidence? Item { get; } = item;

        internal byte[] Json { get; } = json;
    }
}
