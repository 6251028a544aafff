using System.Text;
using FsCheck.Xunit;

namespace Terminus.Tests.Inventories;

public sealed class LineReaderTest
{
    [Property]
    public async Task The_lines_of_a_stream_are_those_of_its_text_that_are_not_blank(ulong seed, byte length)
    {
        var random = new SplitMix64(seed);
        string text = string.Concat(Enumerable.Range(0, length * 4).Select(_ => "ab \t\r\n\n{é"[random.NextInt(9)]));
        string[] expected = [.. text.Split('\n').Where(l => l.Trim(' ', '\t', '\r').Length > 0)];

        var reader = new LineReader(new SlowStream(Encoding.UTF8.GetBytes(text), () => random.NextInt(40)));
        int lines = 0;
        while (await reader.ReadAsync(default) is { } batch)
        {
            using (batch)
            {
                Assert.InRange(batch.Count, 1, LineReader.MostLines);
                lines += batch.Count;
            }
        }

        Assert.Equal(expected.Length, lines);
    }

    [Fact]
    public async Task ReadAsync_LineBeyondTheLimit_IsNotKept()
    {
        var reader = new LineReader(new RepeatedStream((byte)'a', 50L * 1024 * 1024, [(byte)'\n']));
        int lines = 0;
        while (await reader.ReadAsync(default) is { } batch)
        {
            using (batch)
            {
                lines += batch.Count;
            }
        }

        Assert.Equal(1, lines);
        Assert.InRange(reader.BufferLength, 0, 2 * Inventory.LongestLine);
    }
}
