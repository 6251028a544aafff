using System.Text.Json;

namespace Terminus;

/// <summary>A dated piece as Linked Art JSON-LD: the object, its production, and the time-span of that.</summary>
/// <remarks>
/// <para>What firm evidence leaves is the outer bound of the time-span (CIDOC CRM P82 at some time within: <c>begin_of_the_begin</c> and
/// <c>end_of_the_end</c>). The inner bounds (P81) are left out, as a day of making inside an interval has no guaranteed inner span. The interval is no
/// outer bound either, so it stands in the time-span's name, with its confidence, belief, plausibility and the conflict.</para>
/// <para>Years before 1 are written as astronomers do: 2475 BC is -2474. Where firm evidence excludes itself the time-span has a name alone.</para>
/// <para>Sources: CIDOC CRM 7.1.3, scope notes of E52, P81 and P82; Linked Art API 1.0, time-span.</para>
/// </remarks>
public static class LinkedArt
{
    private const string Context = "https://linked.art/ns/v1/linked-art.json";

    /// <summary>The piece as one document, indented.</summary>
    /// <param name="dating">The dated piece.</param>
    /// <param name="uri">The URI of the record of the object, which the API asks for, or null to leave it out.</param>
    public static string ToJson(PieceDating dating, string? uri = null)
        => DocumentWriting.ToText(DocumentWriting.Indented, json => Write(json, dating, uri));

    /// <summary>Writes the piece into a writer, as one object.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="dating">The dated piece.</param>
    /// <param name="uri">The URI of the record of the object, which the API asks for, or null to leave it out.</param>
    public static void Write(Utf8JsonWriter json, PieceDating dating, string? uri = null)
    {
        Guard.NotNull(json, nameof(json));
        Guard.NotNull(dating, nameof(dating));
        string label = dating.Piece.Title ?? dating.Piece.Id;
        json.WriteStartObject();
        json.WriteString("@context", Context);
        json.WriteOptional("id"u8, uri);
        json.WriteString("type", "HumanMadeObject");
        json.WriteString("_label", label);
        json.WriteStartArray("identified_by");
        WriteContent(json, "Identifier", dating.Piece.Id);
        if (dating.Piece.Title is { } title)
        {
            WriteContent(json, "Name", title);
        }

        json.WriteEndArray();
        json.WriteStartObject("produced_by");
        json.WriteString("type", "Production");
        json.WriteString("_label", "Production of " + label);
        WriteTimeSpan(json, dating);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteTimeSpan(Utf8JsonWriter json, PieceDating dating)
    {
        json.WriteStartObject("timespan");
        json.WriteString("type", "TimeSpan");
        json.WriteStartArray("identified_by");
        WriteContent(json, "Name", NameOf(dating));
        json.WriteEndArray();
        if (dating.Dating.Possible is { } possible)
        {
            WriteBounds(json, possible);
        }

        json.WriteEndObject();
    }

    /// <summary>The outer bounds of a window, to the first and the last second; an open end is left out.</summary>
    internal static void WriteBounds(Utf8JsonWriter json, DateWindow window)
    {
        json.WriteOptional("begin_of_the_begin"u8, window.FirstDay == DayNumber.Open ? null : DateText.Iso(window.FirstDay) + "T00:00:00Z");
        json.WriteOptional("end_of_the_end"u8, window.LastDay == DayNumber.Open ? null : DateText.Iso(window.LastDay) + "T23:59:59Z");
    }

    private static string NameOf(PieceDating dating)
    {
        string display = DisplayDate.Of(dating);
        return dating.Interval is { IsAnyDate: false } interval
            ? ReasonText.Of(new Reason(
                "record.time-span",
                "display", display,
                "window", WindowWords.DaysUpTo(interval.Window, dating.Dating.AsOfDay),
                "confidence", WindowWords.Share(interval.Confidence),
                "belief", WindowWords.Lower(interval.Belief),
                "plausibility", WindowWords.Upper(interval.Plausibility),
                "conflict", WindowWords.Upper(dating.Dating.Conflict)))
            : ReasonText.Of(new Reason("record.time-span-any", "display", display, "conflict", WindowWords.Upper(dating.Dating.Conflict)));
    }

    private static void WriteContent(Utf8JsonWriter json, string type, string content)
    {
        json.WriteStartObject();
        json.WriteString("type", type);
        json.WriteString("content", content);
        json.WriteEndObject();
    }
}
