namespace Terminus;

/// <summary>
/// Turns byte offsets of a UTF-8 text into lines and columns. It counts on from the last offset asked for, so a pass in order
/// reads the text once.
/// </summary>
internal ref struct TextPosition(ReadOnlySpan<byte> text)
{
    private const byte NewLine = (byte)'\n';

    private readonly ReadOnlySpan<byte> text = text;
    private int counted;
    private int lineStart;
    private int line = 1;

    /// <summary>The line, from 1, and the column in code points, from 1. A line ends with a line feed.</summary>
    internal (int Line, int Column) Of(int offset)
    {
        offset = Math.Min(offset, text.Length);
        if (offset < counted)
        {
            (counted, lineStart, line) = (0, 0, 1);
        }

        while (text.Slice(counted, offset - counted).IndexOf(NewLine) is var next and >= 0)
        {
            counted += next + 1;
            lineStart = counted;
            line++;
        }

        counted = offset;
        int column = 1;
        foreach (byte unit in text.Slice(lineStart, offset - lineStart))
        {
            column += (unit & 0xC0) == 0x80 ? 0 : 1;
        }

        return (line, column);
    }

    /// <summary>The offset of a byte of a line, both from 0.</summary>
    internal int OffsetOf(long lineFromZero, long byteInLine)
    {
        int offset = 0;
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
