using System.Text.Json;

namespace Terminus;

/// <summary>The JSON document of what to look at next.</summary>
/// <remarks>
/// Widths are in days. Within a format members are only added. <c>steps</c> are all open questions, the best first; <c>best</c> counts those
/// to be shown.
/// </remarks>
public static class AdviceDocument
{
    /// <summary>The document, indented.</summary>
    /// <param name="advice">The advice.</param>
    public static string ToJson(NextSteps advice) => DocumentWriting.ToText(DocumentWriting.Indented, json => Write(json, advice));

    /// <summary>Writes the document into a writer, as one object.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="advice">The advice.</param>
    public static void Write(Utf8JsonWriter json, NextSteps advice)
    {
        Guard.NotNull(json, nameof(json));
        Guard.NotNull(advice, nameof(advice));
        json.WriteStartObject();
        json.WriteNumber("format", 1);
        json.WriteString("id", advice.Dating.Piece.Id);
        json.WriteDay("asOf"u8, advice.Dating.Dating.AsOfDay);
        json.WriteRounded("entropy"u8, advice.Entropy);
        json.WriteNumber("best", advice.Best.Count);
        json.WriteStartArray("steps");
        foreach (NextStep step in advice.All)
        {
            WriteStep(json, step);
        }

        json.WriteEndArray();
        WriteReasons(json, "notes", advice.Notes);
        WriteReasons(json, "unseen", advice.Unseen);
        json.WriteEndObject();
    }

    private static void WriteReasons(Utf8JsonWriter json, string name, IReadOnlyList<Reason> reasons)
    {
        json.WriteStartArray(name);
        foreach (Reason reason in reasons)
        {
            json.WriteStartObject();
            json.WriteString("rule", reason.Rule);
            json.WriteString("text", ReasonText.Of(reason));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteStep(Utf8JsonWriter json, NextStep step)
    {
        json.WriteStartObject();
        json.WriteString("question", step.Id);
        json.WriteNullable("part"u8, step.Part);
        json.WriteString("text", ReasonText.Of(step.Question));
        json.WriteRounded("bits"u8, step.Bits);
        WriteWidths(json, "spread", step.SpreadWidth, step.ExpectedSpreadWidth);
        WriteWidths(json, "interval", step.Width, step.ExpectedWidth);
        WriteWidths(json, "likely", step.LikelyWidth, step.ExpectedLikelyWidth);
        json.WriteBoolean("helps", step.Helps);
        json.WriteBoolean("tiedWithBest", step.IsTiedWithBest);
        json.WriteString("why", ReasonText.Of(step.Why));
        json.WriteStartArray("answers");
        foreach (NextAnswer answer in step.Answers)
        {
            json.WriteStartObject();
            json.WriteNullable("answer"u8, answer.Id);
            json.WriteString("text", ReasonText.Of(answer.Answer));
            json.WriteRounded("probability"u8, answer.Probability);
            WriteMove(json, "interval", answer.IntervalMove);
            WriteMove(json, "likely", answer.LikelyMove);
            json.WriteRounded("conflict"u8, answer.Conflict);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteWidths(Utf8JsonWriter json, string name, double now, double expected)
    {
        json.WriteStartObject(name);
        json.WriteRounded("now"u8, now);
        json.WriteRounded("expected"u8, expected);
        json.WriteEndObject();
    }

    // The window with the answer added, and by how many days its ends move; null where the conflict would be total.
    private static void WriteMove(Utf8JsonWriter json, string name, WindowMove move)
    {
        if (move.After is not { } window)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteWindow(window);
        json.WriteNullable("startMoves"u8, move.StartDays);
        json.WriteNullable("endMoves"u8, move.EndDays);
        json.WriteEndObject();
    }
}
