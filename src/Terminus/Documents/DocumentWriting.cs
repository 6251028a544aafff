using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Terminus;

/// <summary>How this library writes JSON: letters as they are, dates in ISO form, numbers without noise.</summary>
internal static class DocumentWriting
{
    private const int Decimals = 12;
    private const double Units = 1e12;

    // Smaller numbers are written with an exponent.
    private const double LeastPlain = 1e-4;

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
    internal static void WriteOptional(this Utf8JsonWriter json, ReadOnlySpan<byte> name, string? value)
    {
        if (value is not null)
        {
            json.WriteString(name, value);
        }
    }

    /// <summary>A member with a text, null where there is none.</summary>
    internal static void WriteNullable(this Utf8JsonWriter json, ReadOnlySpan<byte> name, string? value)
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

    /// <summary>A member with a whole number, null where there is none.</summary>
    internal static void WriteNullable(this Utf8JsonWriter json, ReadOnlySpan<byte> name, int? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    /// <summary>A member that is written only where it is true.</summary>
    internal static void WriteFlag(this Utf8JsonWriter json, ReadOnlySpan<byte> name, bool value)
    {
        if (value)
        {
            json.WriteBoolean(name, true);
        }
    }

    /// <summary>A member with a day as <c>1956-03-06</c>, null where the end is open (0).</summary>
    internal static void WriteDay(this Utf8JsonWriter json, ReadOnlySpan<byte> name, int dayNumber)
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
        json.WriteDay("notBefore"u8, window.FirstDay);
        json.WriteDay("notAfter"u8, window.LastDay);
    }

    /// <summary>A member with a window in EDTF, null for any date.</summary>
    internal static void WriteEdtf(this Utf8JsonWriter json, ReadOnlySpan<byte> name, DateWindow window)
    {
        if (window.IsAny)
        {
            json.WriteNull(name);
            return;
        }

        Span<char> text = stackalloc char[DateText.LongestEdtf];
        json.WriteString(name, text.Slice(0, DateText.WriteEdtf(window, text)));
    }

    /// <summary>A member with a number rounded to 12 decimals, so that the last bits of a sum are not printed.</summary>
    internal static void WriteRounded(this Utf8JsonWriter json, ReadOnlySpan<byte> name, double value)
    {
        if (value is 0 or 1)
        {
            json.WriteNumber(name, (int)value);
            return;
        }

        if (value is not (>= LeastPlain and < 1))
        {
            json.WriteNumber(name, Round(value));
            return;
        }

        // A share is a count of its last decimal: far quicker than to look for the shortest digits that give the same double.
        Span<byte> digits = stackalloc byte[FixedPoint.Longest];
        json.WritePropertyName(name);
        json.WriteRawValue(digits.Slice(0, FixedPoint.Write((long)Math.Round(value * Units), Decimals, digits)), skipInputValidation: true);
    }

    /// <summary>A member with a list of texts.</summary>
    internal static void WriteTexts(this Utf8JsonWriter json, ReadOnlySpan<byte> name, IReadOnlyList<string> values)
    {
        json.WriteStartArray(name);
        for (int i = 0; i < values.Count; i++)
        {
            json.WriteStringValue(values[i]);
        }

        json.WriteEndArray();
    }

    /// <summary>A member with a list of texts, left out where it is empty.</summary>
    internal static void WriteNames(this Utf8JsonWriter json, ReadOnlySpan<byte> name, IReadOnlyList<string> values)
    {
        if (values.Count > 0)
        {
            json.WriteTexts(name, values);
        }
    }

    /// <summary>A number with at most 12 decimals, and no negative zero.</summary>
    internal static double Round(double value) => Math.Round(value, Decimals) + 0.0;
}
