namespace Terminus;

/// <summary>
/// Turns byte offsets of a UTF-8 text into lines and columns. It counts on from the last offset asked for, so a pass in order
/// reads the text once, whatever the length of its lines.
/// </summary>
/// <remarks>The text is counted from <c>start</c>, after a byte order mark.</remarks>
internal ref struct TextPosition(ReadOnlySpan<byte> text, int start)
{
    private const byte NewLine = (byte)'\n';

    private readonly ReadOnlySpan<byte> text = text;
    private readonly int start = start;
    private int counted = start;
    private int line = 1;
    private int column = 1;

    /// <summary>The line, from 1, and the column in code points, from 1. A line ends with a line feed.</summary>
    internal (int Line, int Column) Of(int offset)
    {
        offset = Math.Min(offset, text.Length);
        if (offset < counted)
        {
            (counted, line, column) = (Math.Min(start, offset), 1, 1);
        }

        ReadOnlySpan<byte> between = text.Slice(counted, offset - counted);
        while (between.IndexOf(NewLine) is var next and >= 0)
        {
            between = between.Slice(next + 1);
            line++;
            column = 1;
        }

        foreach (byte unit in between)
        {
            column += (unit & 0xC0) == 0x80 ? 0 : 1;
        }

        counted = offset;
        return (line, column);
    }

    /// <summary>The offset of a byte of a line, both from 0.</summary>
    internal readonly int OffsetOf(long lineFromZero, long byteInLine)
    {
        int offset = start;
        for (long i = 0; i < lineFromZero; i++)
        {
            int next = text.Slice(offset).IndexOf(NewLine);
            if (next < 0)
            {
                return text.Length;
            }

            offset += next + 1;
        }

        return (int)Math.Min(offset + byteInLine, text.Length);
    }
}
