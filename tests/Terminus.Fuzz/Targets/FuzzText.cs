using System.Buffers;
using System.Text;

namespace Terminus.Fuzz.Targets;

/// <summary>Turns any bytes into text, so that broken text can be reached too: a byte that is not UTF-8 becomes a lone surrogate.</summary>
internal static class FuzzText
{
    /// <summary>The text of some bytes.</summary>
    internal static string Of(ReadOnlySpan<byte> bytes)
    {
        var text = new StringBuilder(bytes.Length);
        while (!bytes.IsEmpty)
        {
            if (Rune.DecodeFromUtf8(bytes, out Rune rune, out int taken) == OperationStatus.Done)
            {
                text.Append(rune);
            }
            else
            {
                // The lowest bit says which half of a pair.
                text.Append((char)(bytes[0] % 2 == 0 ? 0xD800 + bytes[0] : 0xDC00 + bytes[0]));
                taken = 1;
            }

            bytes = bytes[taken..];
        }

        return text.ToString();
    }
}
