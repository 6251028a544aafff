using System.Text.Json;

namespace Terminus;

/// <summary>The JSON document of a comparison: the pieces whose dates moved, those of one run alone, and the counts.</summary>
/// <remarks>Written as the pieces go by, so that a comparison of any size needs little memory. Within a format members are only added.</remarks>
public static class ChangesDocument
{
    private const int FlushFrom = 1 << 16;

    /// <summary>The document, indented.</summary>
    /// <param name="changes">The pieces of the comparison.</param>
    public static string ToJson(IEnumerable<ChangesPiece> changes) => DocumentWriting.ToText(DocumentWriting.Indented, json => Write(json, changes));

    /// <summary>Writes the document into a writer, as one object.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="changes">The pieces of the comparison.</param>
    public static void Write(Utf8JsonWriter json, IEnumerable<ChangesPiece> changes)
    {
        Guard.NotNull(json, nameof(json));
        var summary = new ChangesSummary();
        json.WriteStartObject();
        json.WriteNumber("format", 1);
        json.WriteStartArray("changes");
        foreach (ChangesPiece change in Guard.NotNull(changes, nameof(changes)).Select(summary.Add).Where(c => c.HasMoved || !c.IsInBoth))
        {
            WriteChange(json, change);
            if (json.BytesPending > FlushFrom)
            {
                json.Flush();
            }
        }

        json.WriteEndArray();
        json.WriteNumber("compared", summary.Compared);
        json.WriteNumber("moved", summary.Moved);
        json.WriteNumber("onlyBefore", summary.OnlyBefore);
        json.WriteNumber("onlyAfter", summary.OnlyAfter);
        json.WriteEndObject();
    }

    private static void WriteChange(Utf8JsonWriter json, ChangesPiece change)
    {
        json.WriteStartObject();
        json.WriteString("id", change.Id);
        WriteTerms(json, "before", change.Before);
        WriteTerms(json, "after", change.After);
        if (change.IsInBoth)
        {
            WriteMove(json, "possible", change.Possible);
            WriteMove(json, "interval", change.Interval);
            WriteMove(json, "likely", change.Likely);
            json.WriteFlag("otherDay"u8, change.OtherDay);
            json.WriteFlag("otherTerms"u8, change.OtherTerms);
            json.WriteStartArray("causes");
            foreach (ChangesCause cause in change.Causes)
            {
                WriteCause(json, cause);
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void WriteTerms(Utf8JsonWriter json, string name, ChangesRecord? record)
    {
        if (record is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteNullable("asOf"u8, record.AsOf is { } day ? DateText.Iso(day) : null);
        json.WriteStartArray("reference");
        foreach (ReferenceLayer layer in record.Layers)
        {
            json.WriteStartObject();
            json.WriteString("name", layer.Name);
            json.WriteString("version", layer.Version);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("assumptions", record.Assumptions);
        json.WriteEndObject();
    }

    private static void WriteMove(Utf8JsonWriter json, string name, WindowMove move)
    {
        if (!move.IsMove)
        {
            return;
        }

        json.WriteStartObject(name);
        WriteWindow(json, "before", move.Before);
        WriteWindow(json, "after", move.After);
        json.WriteNullable("startDays"u8, move.StartDays);
        json.WriteNullable("endDays"u8, move.EndDays);
        json.WriteEndObject();
    }

    private static void WriteWindow(Utf8JsonWriter json, string name, DateWindow? window)
    {
        if (window is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteWindow(known);
        json.WriteEndObject();
    }

    private static void WriteCause(Utf8JsonWriter json, ChangesCause cause)
    {
        json.WriteStartObject();
        json.WriteString("kind", cause.Kind);
        json.WriteNullable("part"u8, cause.Part);
        json.WriteStartArray("entries");
        foreach (string entry in cause.Entries)
        {
            json.WriteStringValue(entry);
        }

        json.WriteEndArray();
        json.WriteBoolean("alone", cause.Alone);
        WriteWindows(json, "before", cause.Before);
        WriteWindows(json, "after", cause.After);
        json.WriteEndObject();
    }

    private static void WriteWindows(Utf8JsonWriter json, string name, ChangesItem? item)
    {
        if (item is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteStartArray("windows");
        foreach (StatedWindow window in item.Windows)
        {
            json.WriteStartObject();
            json.WriteWindow(window.Window);
            json.WriteRounded("confidence"u8, window.Confidence);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
