namespace Terminus.Tests.Inventories;

/// <summary>A stream that gives a few bytes a read, as pipes and networks do.</summary>
internal sealed class SlowStream(byte[] bytes, Func<int> next) : ReadOnlyStream
{
    private int position;

    public override int Read(byte[] buffer, int offset, int count)
    {
        int given = Math.Min(Math.Min(Math.Max(1, next()), count), bytes.Length - position);
        Array.Copy(bytes, position, buffer, offset, given);
        position += given;
        return given;
    }
}

/// <summary>A stream of one byte over and over, then an end.</summary>
internal sealed class RepeatedStream(byte value, long length, byte[] end) : ReadOnlyStream
{
    private long position;

    public override int Read(byte[] buffer, int offset, int count)
    {
        if (position < length)
        {
            int given = (int)Math.Min(count, length - position);
            Array.Fill(buffer, value, offset, given);
            position += given;
            return given;
        }

        int rest = (int)Math.Min(count, length + end.Length - position);
        Array.Copy(end, position - length, buffer, offset, rest);
        position += rest;
        return rest;
    }
}

/// <summary>A stream whose reader, or writer, gets an error after some bytes.</summary>
internal sealed class FailingStream(int bytes) : MemoryStream
{
    public override void Write(byte[] buffer, int offset, int count)
    {
        if (Length + count > bytes)
        {
            throw new IOException("No space is left.");
        }

        base.Write(buffer, offset, count);
    }

    public override Task WriteAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken)
    {
        Write(buffer, offset, count);
        return Task.CompletedTask;
    }
}

internal abstract class ReadOnlyStream : Stream
{
    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override Task<int> ReadAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        return Task.FromResult(Read(buffer, offset, count));
    }

    public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        cancellationToken.ThrowIfCancellationRequested();
        byte[] copy = new byte[buffer.Length];
        int read = Read(copy, 0, copy.Length);
        copy.AsMemory(0, read).CopyTo(buffer);
        return new ValueTask<int>(read);
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
