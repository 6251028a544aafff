using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Terminus;

/// <summary>How this library writes JSON: letters as they are, dates in ISO form, numbers without noise.</summary>
internal static class DocumentWriting
{
    private const int Decimals = 12;
    private const double Units = 1e12;

    /// <summary>The most bytes of a number.</summary>
    internal const int LongestNumber = 32;

    // Most results fit.
    private const int UsualLength = 8 * 1024;

    // Smaller numbers are written with an exponent.
    private const double LeastPlain = 1e-4;

    /// <summary>Indented by two spaces, for people.</summary>
    internal static JsonWriterOptions Indented => new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>On one line, for collections, where the order of tokens is not checked again.</summary>
    internal static JsonWriterOptions Compact => new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true };

    /// <summary>Writes a document into a string.</summary>
    internal static string ToText(JsonWriterOptions options, Action<Utf8JsonWriter> write) => Encoding.UTF8.GetString(ToBytes(options, write));

    /// <summary>Writes a document into bytes.</summary>
    internal static byte[] ToBytes(JsonWriterOptions options, Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, options))
        {
            write(json);
        }

        return stream.ToArray();
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

        Span<byte> ascii = stackalloc byte[DateText.LongestIso];
        json.WriteString(name, ascii.Slice(0, DateText.WriteIso(dayNumber, ascii)));
    }

    /// <summary>The members <c>notBefore</c> and <c>notAfter</c>, null where the end is open.</summary>
    internal static void WriteWindow(this Utf8JsonWriter json, DateWindow window)
    {
        json.WriteDay("notBefore"u8, window.FirstDay);
        json.WriteDay("notAfter"u8, window.LastDay);
    }

    /// <summary>A member with a number rounded to 12 decimals, so that the last bits of a sum are not printed.</summary>
    internal static void WriteRounded(this Utf8JsonWriter json, ReadOnlySpan<byte> name, double value)
    {
        Span<byte> digits = stackalloc byte[LongestNumber];
        json.WritePropertyName(name);
        json.WriteRawValue(digits.Slice(0, WriteRounded(value, digits)), skipInputValidation: true);
    }

    /// <summary>Writes a number as <see cref="WriteRounded(Utf8JsonWriter, ReadOnlySpan{byte}, double)"/> does, and returns its length, at most <see cref="LongestNumber"/>.</summary>
    internal static int WriteRounded(double value, Span<byte> digits)
    {
        if (value is 0 or 1)
        {
            digits[0] = (byte)('0' + (int)value);
            return 1;
        }

        if (value is >= LeastPlain and < 1)
        {
            // A share is a count of its last decimal: far quicker than to look for the shortest digits that give the same double.
            return FixedPoint.Write((long)Math.Round(value * Units), Decimals, digits);
        }

        return Ascii.Write(Round(value).ToString("R", CultureInfo.InvariantCulture), digits);
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

    /// <summary>
    /// Writes what is partly copied as bytes on one line. A writer that indents is given it token by token, so that it is indented all through.
    /// </summary>
    internal static void WriteCopied(Utf8JsonWriter json, Action<Utf8JsonWriter> write)
    {
        if (!json.Options.Indented)
        {
            write(json);
            return;
        }

        using var line = new ByteBuffer(UsualLength);
        using (var compact = new Utf8JsonWriter(line, Compact))
        {
            write(compact);
        }

        using var document = JsonDocument.Parse(line.Bytes.AsMemory(0, line.Length));
        document.WriteTo(json);
    }
}
