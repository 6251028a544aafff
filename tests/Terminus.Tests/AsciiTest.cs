namespace Terminus.Tests;

public class AsciiTest
{
    [Fact]
    public void Write_AndRead_GiveTheSameText()
    {
        Span<byte> bytes = stackalloc byte[8];
        int length = Ascii.Write("-0044", bytes);
        Assert.True(bytes[..length].SequenceEqual("-0044"u8));

        Span<char> text = stackalloc char[length];
        Ascii.Read(bytes[..length], text);
        Assert.Equal("-0044", text.ToString());
    }
}
