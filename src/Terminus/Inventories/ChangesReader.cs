using System.Text;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;

namespace Terminus;

/// <summary>
/// Reads results back, one a line, one document or a list. Members that it does not know are passed over, because within a format members
/// are only added.
/// </summary>
internal static class ChangesReader
{
    internal static IEnumerable<DocumentResult<ChangesRecord>> ReadAll(TextReader text, string? file)
    {
        int number = 0;
        string? first = null;
        while (string.IsNullOrWhiteSpace(first) && text.ReadLine() is { } line)
        {
            number++;
            first = line;
        }

        if (string.IsNullOrWhiteSpace(first))
        {
            yield break;
        }

        if (!IsWholeObject(first!))
        {
            foreach (DocumentResult<ChangesRecord> read in ReadDocument(first + "\n" + text.ReadToEnd(), file, number))
            {
                yield return read;
            }

            yield break;
        }

        yield return ReadOne(first!, file, number);
        while (text.ReadLine() is { } line)
        {
            number++;
            if (!string.IsNullOrWhiteSpace(line))
            {
                yield return ReadOne(line, file, number);
            }
        }
    }

    private static bool IsWholeObject(string line)
    {
        try
        {
            using JsonDocument document = Parse(line);
            return document.RootElement.ValueKind == JsonValueKind.Object;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    // A lone surrogate becomes U+FFFD, as in a file.
    private static JsonDocument Parse(string text) => JsonDocument.Parse(Encoding.UTF8.GetBytes(text));

    private static List<DocumentResult<ChangesRecord>> ReadDocument(string text, string? file, int line)
    {
        try
        {
            using JsonDocument document = Parse(text);
            return document.RootElement.ValueKind == JsonValueKind.Array
                ? [.. document.RootElement.EnumerateArray().Select((item, i) => Read(item, "$[" + DateText.Digits(i) + "]", file, line))]
                : [Read(document.RootElement, "$", file, line)];
        }
        catch (JsonException defect)
        {
            return [NotJson(defect, file, line)];
        }
    }

    private static DocumentResult<ChangesRecord> ReadOne(string text, string? file, int line)
    {
        try
        {
            using JsonDocument document = Parse(text);
            return Read(document.RootElement, "$", file, line);
        }
        catch (JsonException defect)
        {
            return NotJson(defect, file, line);
        }
    }

    private static DocumentResult<ChangesRecord> NotJson(JsonException defect, string? file, int line)
        => Problem("This is no JSON.", "$", file, line + (int)(defect.LineNumber ?? 0), (int)(defect.BytePositionInLine ?? 0) + 1);

    private static DocumentResult<ChangesRecord> Problem(string message, string path, string? file, int line, int column = 1)
        => new(null, [new DocumentProblem(message, path, file, line, column)]);

    private static DocumentResult<ChangesRecord> Read(JsonElement result, string path, string? file, int line)
    {
        try
        {
            if (result.ValueKind != JsonValueKind.Object)
            {
                return Problem("A result is an object.", path, file, line);
            }

            if (Text(result, "id") is not { } id)
            {
                return Problem(
                    Text(result, "error") is { } error ? "The piece was not dated: " + error : "A result has an id.", path, file, line);
            }

            return Number(result, "format") is { } format and > 1
                ? Problem("The result has format " + DateText.Digits((long)format) + "; this version of the library reads format 1 and needs to be newer.", path, file, line)
                : Member(result, "interval") is null
                ? Problem("A result has an interval; a piece that is not dated yet has none.", path, file, line)
                : new DocumentResult<ChangesRecord>(ToRecord(result, id), []);
        }
        catch (InvalidOperationException)
        {
            return Problem("The result has escapes that are no Unicode characters.", path, file, line);
        }
    }

    private static ChangesRecord ToRecord(JsonElement result, string id)
    {
        LocalDate? asOf = Day(result, "asOf");
        int today = asOf is { } day ? DayNumber.Of(day) : DayNumber.Open;
        double confidence = Member(result, "interval") is { } interval && Number(interval, "confidence") is { } c and > 0 and <= 1
            ? c
            : PieceDating.UsualConfidence;
        return new ChangesRecord(id, asOf, confidence)
        {
            Layers = ValueList.Of(List(result, "reference").Select(l => new ReferenceLayer(Text(l, "name") ?? "", Text(l, "version") ?? ""))),
            Assumptions = Text(result, "assumptions") ?? "",
            Possible = ChangesRecord.OpenAt(today, Window(Member(result, "possible"))),
            Interval = ChangesRecord.OpenAt(today, Window(Member(result, "interval"))),
            Likely = ChangesRecord.OpenAt(today, Window(Member(result, "likely"))),
            Items = ValueList.Of(List(result, "evidence").Where(e => !IsLeftOut(e)).Select(ToItem)),
        };
    }

    private static ChangesItem ToItem(JsonElement item) => new(
        Text(item, "kind") ?? "",
        Text(item, "part"),
        List(item, "windows")
            .Where(w => Window(w) is not null && Number(w, "confidence") is >= 0 and <= 1)
            .Select(w => new StatedWindow(Window(w)!.Value, Number(w, "confidence")!.Value)),
        List(item, "entries").Where(e => e.ValueKind == JsonValueKind.String).Select(e => e.GetString()!));

    private static bool IsLeftOut(JsonElement item) => List(item, "reasons").Any(r => Text(r, "rule") == "pieces.part-not-original");

    private static DateWindow? Window(JsonElement? window)
        => window is { ValueKind: JsonValueKind.Object } known
            && DateWindow.TryBetweenDays(DayOrOpen(known, "notBefore"), DayOrOpen(known, "notAfter")) is { } read ? read : null;

    private static int DayOrOpen(JsonElement window, string name) => Day(window, name) is { } day ? DayNumber.Of(day) : DayNumber.Open;

    private static LocalDate? Day(JsonElement parent, string name)
        => Text(parent, name) is { } text && LocalDatePattern.Iso.Parse(text) is { Success: true } day ? day.Value : null;

    private static string? Text(JsonElement parent, string name)
        => Member(parent, name) is { ValueKind: JsonValueKind.String } value ? value.GetString() : null;

    private static double? Number(JsonElement parent, string name)
        => Member(parent, name) is { ValueKind: JsonValueKind.Number } value && value.TryGetDouble(out double number) ? number : null;

    private static IEnumerable<JsonElement> List(JsonElement parent, string name)
        => Member(parent, name) is { ValueKind: JsonValueKind.Array } value ? value.EnumerateArray() : Enumerable.Empty<JsonElement>();

    private static JsonElement? Member(JsonElement parent, string name)
        => parent.ValueKind == JsonValueKind.Object && parent.TryGetProperty(name, out JsonElement value) ? value : null;
}
