namespace Terminus.Demo;

/// <summary>
/// A file that is written in whole lines: each write holds some, and where one fails half way, as on a full disk, what it left is cut off.
/// </summary>
internal sealed class WholeLinesFile(string path) : Stream
{
    private readonly FileStream file = new(path, FileMode.Create, FileAccess.Write, FileShare.Read, bufferSize: 0);

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Write(byte[] buffer, int offset, int count)
    {
        long whole = file.CanSeek ? file.Position : 0;
        try
        {
            file.Write(buffer, offset, count);
        }
        catch (IOException) when (file.CanSeek)
        {
            file.SetLength(whole);
            throw;
        }
    }

    public override void Flush() => file.Flush();

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            file.Dispose();
        }

        base.Dispose(disposing);
    }
}
