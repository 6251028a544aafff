using System.Globalization;
using System.Text;

namespace Terminus.Fuzz;

/// <summary>Inputs as text, one a line, so that a difference can be read: what is not printable ASCII is <c>\xHH</c>, a backslash is <c>\\</c>.</summary>
internal static class CorpusFile
{
    /// <summary>The inputs of a file.</summary>
    internal static IEnumerable<byte[]> Read(string file) => File.ReadLines(file).Select(Unpack);

    /// <summary>Writes inputs, each once, the shortest first.</summary>
    internal static void Write(string file, IEnumerable<byte[]> inputs)
    {
        string[] lines = [.. inputs.Select(Pack).Distinct(StringComparer.Ordinal)];
        Array.Sort(lines, (a, b) => a.Length != b.Length ? a.Length.CompareTo(b.Length) : string.CompareOrdinal(a, b));
        File.WriteAllText(file, string.Concat(lines.Select(line => line + "\n")));
    }

    private static string Pack(byte[] input)
    {
        var line = new StringBuilder(input.Length);
        foreach (byte b in input)
        {
            _ = b == '\\' ? line.Append(@"\\")
                : b is >= 0x20 and < 0x7F ? line.Append((char)b)
                : line.Append(CultureInfo.InvariantCulture, $"\\x{b:X2}");
        }

        return line.ToString();
    }

    private static byte[] Unpack(string line)
    {
        var input = new List<byte>(line.Length);
        for (int i = 0; i < line.Length; i++)
        {
            if (line[i] != '\\')
            {
                input.Add((byte)line[i]);
            }
            else if (line[++i] == '\\')
            {
                input.Add((byte)'\\');
            }
            else
            {
                input.Add(byte.Parse(line.AsSpan(i + 1, 2), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture));
                i += 2;
            }
        }

        return [.. input];
    }
}
