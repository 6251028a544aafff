using System.Text;

namespace Terminus;

/// <summary>Says what stands where a text stops being JSON, and what to do about the usual causes.</summary>
internal static class JsonDefect
{
    internal static string Describe(ReadOnlySpan<byte> text, int offset, int depth)
    {
        if (depth >= DocumentReader.MaxDepth - 1 && offset < text.Length && text[offset] is (byte)'[' or (byte)'{')
        {
            return "Objects and lists nest deeper than " + DateText.Digits(DocumentReader.MaxDepth) + " levels, which is not read.";
        }

        if (offset >= text.Length)
        {
            return text.Length == 0
                ? "The document is empty; JSON is wanted."
                : "The document ends before its JSON does: a quotation mark, bracket or brace is not closed.";
        }

        return "This is not JSON from here on: found " + Found(text, offset) + "." + Advice(text, offset);
    }

    private static string Found(ReadOnlySpan<byte> text, int offset)
    {
        byte unit = text[offset];
        return unit is > 0x20 and < 0x7F
            ? "\"" + (char)unit + "\""
            : unit < 0x80 ? "the control character or space 0x" + unit.ToString("X2", System.Globalization.CultureInfo.InvariantCulture)
            : "\"" + FirstCharacter(text.Slice(offset, Math.Min(4, text.Length - offset))) + "\"";
    }

    private static string FirstCharacter(ReadOnlySpan<byte> bytes)
    {
        string decoded = Encoding.UTF8.GetString(bytes.ToArray());
        return decoded.Substring(0, char.IsHighSurrogate(decoded[0]) && decoded.Length > 1 ? 2 : 1);
    }

    private static string Advice(ReadOnlySpan<byte> text, int offset) => (char)text[offset] switch
    {
        '/' => " Comments are not allowed.",
        '\'' => " Strings and names stand in double quotes.",
        '}' or ']' when Before(text, offset) == ',' => " Take out the comma before it.",
        '"' or '{' or '[' => " A comma may be missing before it.",
        < ' ' => " Inside a string a line break is written \\n and a tab \\t.",
        _ => "",
    };

    /// <summary>The last character before an offset that is not white space.</summary>
    private static char Before(ReadOnlySpan<byte> text, int offset)
    {
        do
        {
            offset--;
        }
        while (offset >= 0 && text[offset] is (byte)' ' or (byte)'\t' or (byte)'\n' or (byte)'\r');

        return offset < 0 ? '\0' : (char)text[offset];
    }
}
