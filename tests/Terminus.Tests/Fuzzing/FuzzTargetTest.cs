using System.Text;
using Terminus.Fuzz;
using Terminus.Fuzz.Targets;

namespace Terminus.Tests.Fuzzing;

/// <summary>The checks themselves: that they see what they are there to see.</summary>
public sealed class FuzzTargetTest
{
    [Fact]
    public void Check_AnswerThatAllocatesTooMuch_BreaksTheLimit()
    {
        var target = new Wasteful(length => new byte[length * length]);

        Assert.Equal(100, target.Check(new byte[100]).InputLength);
        Assert.Contains("allocates at most", Assert.Throws<BrokenLawException>(() => target.Check(new byte[1000])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_SetUpAtFirstUse_IsAllowedOnce()
    {
        byte[]? kept = null;

        new Wasteful(_ => kept ??= new byte[1_000_000]).Check(new byte[1]);
    }

    [Fact]
    public void Check_AnswersThatDiffer_BreakTheLaw()
    {
        int calls = 0;

        Assert.Throws<BrokenLawException>(() => new Wasteful(_ => new byte[++calls]).Check([]));
    }

    [Fact]
    public void Of_BytesThatAreNoUtf8_BecomeLoneSurrogates()
    {
        string text = FuzzText.Of([(byte)'A', 0xF0, 0xFF, .. "é"u8]);

        Assert.Equal(4, text.Length);
        Assert.Equal(('A', 'é'), (text[0], text[3]));
        Assert.True(char.IsHighSurrogate(text[1]) && char.IsLowSurrogate(text[2]));
    }

    [Fact]
    public void Write_AnyBytes_ReadsBackEachOnceTheShortestFirst()
    {
        byte[] all = [.. Enumerable.Range(0, 256).Select(i => (byte)i)];
        string file = Path.GetTempFileName();
        try
        {
            CorpusFile.Write(file, [all, [], Encoding.UTF8.GetBytes(@"\n/"), all]);

            Assert.Equal([[], Encoding.UTF8.GetBytes(@"\n/"), all], CorpusFile.Read(file));
        }
        finally
        {
            File.Delete(file);
        }
    }

    // A target that answers with the length of what it was made to allocate.
    private sealed class Wasteful(Func<int, byte[]> allocate) : FuzzTarget<int>(new AllocationLimits(100_000, 10))
    {
        protected override int Answer(byte[] input) => allocate(input.Length).Length;

        protected override void Judge(int answer)
        {
        }
    }
}
