namespace Terminus;

/// <summary>Digits and signs that are one byte each, between bytes and characters.</summary>
internal static class Ascii
{
    /// <summary>Writes a text into bytes, and returns its length.</summary>
    internal static int Write(string text, Span<byte> into)
    {
        for (int i = 0; i < text.Length; i++)
        {
            into[i] = (byte)text[i];
        }

        return text.Length;
    }

    /// <summary>Reads bytes into characters, of which there must be as many.</summary>
    internal static void Read(ReadOnlySpan<byte> ascii, Span<char> into)
    {
        for (int i = 0; i < ascii.Length; i++)
        {
            into[i] = (char)ascii[i];
        }
    }
}
