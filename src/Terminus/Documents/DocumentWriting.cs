using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Terminus;

/// <summary>How this library writes JSON: letters as they are, dates in ISO form, numbers without noise.</summary>
internal static class DocumentWriting
{
    /// <summary>Indented by two spaces, for people.</summary>
    internal static JsonWriterOptions Indented => new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>On one line, for collections, where the order of tokens is not checked again.</summary>
    internal static JsonWriterOptions Compact => new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true };

    /// <summary>Writes a document into a string.</summary>
    internal static string ToText(JsonWriterOptions options, Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, options))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    /// <summary>A member with a text, left out where there is none.</summary>
    internal static void WriteOptional(this Utf8JsonWriter json, string name, string? value)
    {
        if (value is not null)
        {
            json.WriteString(name, value);
        }
    }

    /// <summary>A member with a text, null where there is none.</summary>
    internal static void WriteNullable(this Utf8JsonWriter json, string name, string? value)
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

    /// <summary>A member that is written only where it is true.</summary>
    internal static void WriteFlag(this Utf8JsonWriter json, string name, bool value)
    {
        if (value)
        {
            json.WriteBoolean(name, true);
        }
    }

    /// <summary>A member with a day as <c>1956-03-06</c>, null where the end is open (0).</summary>
    internal static void WriteDay(this Utf8JsonWriter json, string name, int dayNumber)
    {
        if (dayNumber == DayNumber.Open)
        {
            json.WriteNull(name);
            return;
        }

        Span<char> text = stackalloc char[DateText.LongestIso];
        json.WriteString(name, text.Slice(0, DateText.WriteIso(dayNumber, text)));
    }

    /// <summary>The members <c>notBefore</c> and <c>notAfter</c>, null where the end is open.</summary>
    internal static void WriteWindow(this Utf8JsonWriter json, DateWindow window)
    {
        json.WriteDay("notBefore", window.FirstDay);
        json.WriteDay("notAfter", window.LastDay);
    }

    /// <summary>A member with a count of days, null where there is none.</summary>
    internal static void WriteDays(this Utf8JsonWriter json, string name, int? days)
    {
        if (days is { } count)
        {
            json.WriteNumber(name, count);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    /// <summary>A member with a number rounded to 12 decimals, so that the last bits of a sum are not printed.</summary>
    internal static void WriteRounded(this Utf8JsonWriter json, string name, double value) => json.WriteNumber(name, Round(value));

    /// <summary>A member with a list of texts, left out where it is empty.</summary>
    internal static void WriteNames(this Utf8JsonWriter json, string name, IReadOnlyList<string> values)
    {
        if (values.Count == 0)
        {
            return;
        }

        json.WriteStartArray(name);
        foreach (string value in values)
        {
            json.WriteStringValue(value);
        }

        json.WriteEndArray();
    }

    /// <summary>A number with at most 12 decimals, and no negative zero.</summary>
    internal static double Round(double value) => Math.Round(value, 12) + 0.0;
}
