using System.Text;
using System.Text.Json;

namespace Terminus;

/// <summary>Why a line of an inventory holds no piece. It never says which line that was, so runs that were split join to the same answers.</summary>
public sealed record InventoryError
{
    /// <summary>How many characters of the line are shown.</summary>
    private const int LongestShown = 60;

    /// <summary>How many bytes hold those characters, and one more.</summary>
    internal const int BytesShown = 4 * (LongestShown + 1);

    internal InventoryError(string message, string path, ReadOnlySpan<byte> line)
    {
        Message = message;
        Path = path;
        Text = FirstCharacters(line);
    }

    /// <summary>What was found and what is allowed, as an English sentence.</summary>
    public string Message { get; }

    /// <summary>The JSON path of what is wrong, <c>$</c> for the whole line.</summary>
    public string Path { get; }

    /// <summary>The first characters of the line, without control characters; it ends with <c>…</c> where the line goes on.</summary>
    public string Text { get; }

    internal void Write(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("error", Message);
        json.WriteString("path", Path);
        json.WriteString("text", Text);
        json.WriteEndObject();
    }

    private static string FirstCharacters(ReadOnlySpan<byte> line)
    {
        line = LineText.Trim(line);
        string start = Encoding.UTF8.GetString(line.Slice(0, Math.Min(line.Length, BytesShown)).ToArray());
        bool isLong = start.Length > LongestShown;
        int length = isLong ? LongestShown - (char.IsHighSurrogate(start[LongestShown - 1]) ? 1 : 0) : start.Length;
        var shown = new StringBuilder(length + 1);
        for (int i = 0; i < length; i++)
        {
            shown.Append(char.IsControl(start[i]) ? ' ' : start[i]);
        }

        return (isLong ? shown.Append('…') : shown).ToString();
    }
}
