using System.ComponentModel;
using System.Runtime.InteropServices;

namespace Terminus.Demo;

/// <summary>
/// Standard output of a Unix process, written without a buffer. The platform's own stream passes over a reader that has gone
/// away; a program that pipes a million answers into <c>head</c> must end instead.
/// </summary>
internal sealed class StandardOutput : Stream
{
    private const int Descriptor = 1;
    private const int Interrupted = 4;

    /// <summary>The stream that tells of a closed pipe where the platform has it.</summary>
    internal static Stream Open() => OperatingSystem.IsWindows() ? Console.OpenStandardOutput() : new StandardOutput();

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        while (buffer.Length > 0)
        {
            nint written = WriteTo(Descriptor, in MemoryMarshal.GetReference(buffer), (nuint)buffer.Length);
            if (written >= 0)
            {
                buffer = buffer[(int)written..];
            }
            else if (Marshal.GetLastPInvokeError() is var error and not Interrupted)
            {
                throw new IOException("The answers cannot be written: " + new Win32Exception(error).Message + ".");
            }
        }
    }

    public override void Flush()
    {
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    [DllImport("libc", EntryPoint = "write", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern nint WriteTo(int descriptor, in byte bytes, nuint count);
}
