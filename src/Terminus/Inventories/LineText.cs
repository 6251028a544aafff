namespace Terminus;

/// <summary>What of a line counts: not the byte order mark before it, nor white space around it.</summary>
internal static class LineText
{
    internal static ReadOnlySpan<byte> Trim(ReadOnlySpan<byte> line)
    {
        if (line.Length >= 3 && line[0] == 0xEF && line[1] == 0xBB && line[2] == 0xBF)
        {
            line = line.Slice(3);
        }

        int start = 0;
        int end = line.Length;
        while (start < end && IsSpace(line[start]))
        {
            start++;
        }

        while (end > start && IsSpace(line[end - 1]))
        {
            end--;
        }

        return line.Slice(start, end - start);
    }

    private static bool IsSpace(byte unit) => unit is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n';
}
