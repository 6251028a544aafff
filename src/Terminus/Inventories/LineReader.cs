namespace Terminus;

/// <summary>
/// Cuts a stream into batches of whole lines. A batch is what one read of the stream brought, so that a slow stream is answered as it
/// comes, and never more than <see cref="MostLines"/> lines. It holds no more of the stream than one buffer.
/// </summary>
internal sealed class LineReader(Stream stream)
{
    /// <summary>The most lines of a batch, which bounds what their answers take.</summary>
    internal const int MostLines = 64;

    private const int FirstLength = 64 * 1024;
    private const byte NewLine = (byte)'\n';

    private byte[] buffer = new byte[FirstLength];
    private int start;
    private int searched;
    private int end;
    private bool isEnded;
    private bool isSkipping;

    /// <summary>How many bytes of the stream can be held at once.</summary>
    internal int BufferLength => buffer.Length;

    /// <summary>The next lines that are not blank, or null at the end of the stream.</summary>
    internal async Task<LineBatch?> ReadAsync(CancellationToken cancellation)
    {
        while (true)
        {
            if (Cut() is { } batch)
            {
                return batch;
            }

            if (isEnded)
            {
                return null;
            }

            MakeRoom();
            int read = await ReadAsync(buffer, end, cancellation).ConfigureAwait(false);
            isEnded = read == 0;
            end += read;
        }
    }

#if NETSTANDARD2_0
    private Task<int> ReadAsync(byte[] into, int from, CancellationToken cancellation) => stream.ReadAsync(into, from, into.Length - from, cancellation);
#else
    private ValueTask<int> ReadAsync(byte[] into, int from, CancellationToken cancellation) => stream.ReadAsync(into.AsMemory(from), cancellation);
#endif

    private LineBatch? Cut()
    {
        SkipRest();
        var lines = new List<LineBatch.Line>();
        int from = start;
        while (!isSkipping && lines.Count < MostLines && TryEnd(from, out int lineEnd))
        {
            int length = lineEnd - from;
            if (length > Inventory.LongestLine)
            {
                lines.Add(new LineBatch.Line(from - start, InventoryError.BytesShown, isTooLong: true));
            }
            else if (LineText.Trim(buffer.AsSpan(from, length)).Length > 0)
            {
                lines.Add(new LineBatch.Line(from - start, length, isTooLong: false));
            }

            from = Math.Min(lineEnd + 1, end);
            searched = from;
        }

        LineBatch? batch = lines.Count == 0 ? null : new LineBatch(buffer.AsSpan(start, from - start), lines);
        start = from;
        return batch;
    }

    // A line ends at its line feed, at the end of the stream, or where it is too long; the rest of the last is skipped.
    private bool TryEnd(int from, out int lineEnd)
    {
        int next = buffer.AsSpan(searched, end - searched).IndexOf(NewLine);
        lineEnd = next < 0 ? end : searched + next;
        if (next >= 0)
        {
            return true;
        }

        searched = end;
        isSkipping = end - from > Inventory.LongestLine;
        return isSkipping || (isEnded && from < end);
    }

    private void SkipRest()
    {
        if (!isSkipping)
        {
            return;
        }

        int next = buffer.AsSpan(start, end - start).IndexOf(NewLine);
        isSkipping = next < 0;
        start = isSkipping ? end : start + next + 1;
        searched = start;
    }

    private void MakeRoom()
    {
        if (start > 0)
        {
            Buffer.BlockCopy(buffer, start, buffer, 0, end - start);
            (end, searched, start) = (end - start, searched - start, 0);
        }

        if (end == buffer.Length)
        {
            Array.Resize(ref buffer, 2 * buffer.Length);
        }
    }
}
