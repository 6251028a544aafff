using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;

namespace Terminus.Demo.Commands;

/// <summary>How the console writes JSON of its own: on lines for people, or one object a line for programs.</summary>
internal static class JsonText
{
    internal static string Write(Action<Utf8JsonWriter> write, bool indented = true)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(
            stream, new JsonWriterOptions { Indented = indented, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    /// <summary>The member <c>windows</c>, widest first.</summary>
    internal static void WriteWindows(Utf8JsonWriter json, IReadOnlyList<StatedWindow> windows)
    {
        json.WriteStartArray("windows");
        foreach (StatedWindow window in windows)
        {
            json.WriteStartObject();
            WriteEnds(json, window.Window);
            json.WriteNumber("confidence", Math.Round(window.Confidence, 12));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>The members <c>notBefore</c> and <c>notAfter</c>, null where open.</summary>
    internal static void WriteEnds(Utf8JsonWriter json, DateWindow window)
    {
        WriteDay(json, "notBefore", window.NotBefore);
        WriteDay(json, "notAfter", window.NotAfter);
    }

    /// <summary>A member with a text, null where there is none.</summary>
    internal static void WriteOrNull(Utf8JsonWriter json, string name, string? value)
    {
        if (value is null)
        {
            json.WriteNull(name);
        }
        else
        {
            json.WriteString(name, value);
        }
    }

    private static void WriteDay(Utf8JsonWriter json, string name, LocalDate? day)
        => WriteOrNull(json, name, day is { } known ? LocalDatePattern.Iso.Format(known) : null);

    /// <summary>The name of an enum value as documents write it: <c>OptimalLinear</c> as <c>optimal-linear</c>.</summary>
    internal static string Kebab(string name)
        => string.Concat(name.Select((c, i) => char.IsUpper(c) && i > 0 ? "-" + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));

    /// <summary>Whether a document's first character opens a list.</summary>
    internal static bool IsList(ReadOnlySpan<byte> utf8)
    {
        ReadOnlySpan<byte> text = utf8.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;
        return text.TrimStart(" \t\r\n"u8).StartsWith("["u8);
    }
}
