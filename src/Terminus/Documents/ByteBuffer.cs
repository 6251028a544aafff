using System.Buffers;

namespace Terminus;

/// <summary>Bytes that grow in an array from the pool, to be written at once.</summary>
/// <param name="capacity">How many bytes there is room for before it grows.</param>
internal sealed class ByteBuffer(int capacity) : IBufferWriter<byte>, IDisposable
{
    private byte[] bytes = ArrayPool<byte>.Shared.Rent(capacity);

    internal int Length { get; private set; }

    internal byte[] Bytes => bytes;

    public void Advance(int count) => Length += count;

    public Memory<byte> GetMemory(int sizeHint = 0)
    {
        Reserve(sizeHint);
        return bytes.AsMemory(Length);
    }

    public Span<byte> GetSpan(int sizeHint = 0)
    {
        Reserve(sizeHint);
        return bytes.AsSpan(Length);
    }

    internal void Clear() => Length = 0;

    internal void Add(byte value)
    {
        Reserve(1);
        bytes[Length++] = value;
    }

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(bytes);
        bytes = [];
    }

    private void Reserve(int count)
    {
        if (bytes.Length - Length >= Math.Max(count, 1))
        {
            return;
        }

        byte[] larger = ArrayPool<byte>.Shared.Rent(Math.Max(2 * bytes.Length, Length + count));
        Buffer.BlockCopy(bytes, 0, larger, 0, Length);
        ArrayPool<byte>.Shared.Return(bytes);
        bytes = larger;
    }
}
