using System.Buffers;

namespace Terminus;

/// <summary>Bytes that grow in an array from the pool, to be written at once.</summary>
internal sealed class ByteBuffer : IBufferWriter<byte>, IDisposable
{
    private const int FirstLength = 64 * 1024;

    private byte[] bytes = ArrayPool<byte>.Shared.Rent(FirstLength);

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
