using System.Text.Json;

namespace Terminus;

/// <summary>Writes the items of evidence of a result, each with its windows and its reasons in words.</summary>
internal sealed class EvidenceWriter
{
    private readonly Utf8JsonWriter json;
    private readonly ReadyEvidence? ready;
    private readonly TextBuffer words = new();
    private readonly ReasonDraft reasons;

    /// <param name="json">The writer.</param>
    /// <param name="ready">Items that are copied, or null for none.</param>
    internal EvidenceWriter(Utf8JsonWriter json, ReadyEvidence? ready = null)
    {
        this.json = json;
        this.ready = ready;
        reasons = new ReasonDraft(WriteReason);
    }

    /// <summary>The member <c>evidence</c>.</summary>
    /// <remarks>
    /// The items of the whole come first, so that the indices of disagreements and readings hold; those of parts that are not original follow.
    /// </remarks>
    internal void Write(PieceDating dating)
    {
        json.WriteStartArray("evidence"u8);
        Dating whole = dating.Dating;
        for (int i = 0; i < whole.Evidence.Count; i++)
        {
            WriteOrCopy(whole.Evidence[i], whole.Stated[i], dating.Reference);
        }

        for (int i = 0; i < dating.LeftOut.Count; i++)
        {
            Evidence item = dating.LeftOut[i];
            WriteItem(item, item.WindowsUnder(whole.Assumptions), dating.Reference, isLeftOut: true);
        }

        json.WriteEndArray();
    }

    /// <summary>Writes an item as one object.</summary>
    internal void WriteItem(Evidence item, ReadOnlySpan<StatedDay> windows, ReferenceSet reference, bool isLeftOut = false)
    {
        json.WriteStartObject();
        json.WriteString("kind"u8, item.Kind);
        json.WriteNullable("part"u8, item.Part);
        WriteWindows(windows);
        json.WriteTexts("entries"u8, item.Entries);
        json.WriteStartArray("reasons"u8);
        EvidenceReasons.Draft(reasons, item, reference);
        if (isLeftOut)
        {
            reasons.Begin("pieces.part-not-original").With("part", item.Part).End();
        }

        json.WriteEndArray();
        json.WriteNullable("source"u8, item.Source);
        json.WriteEndObject();
    }

    /// <summary>The member <c>windows</c>: each with its ends, null where open, and its confidence.</summary>
    internal static void WriteWindows(Utf8JsonWriter json, IReadOnlyList<StatedWindow> windows)
    {
        json.WriteStartArray("windows"u8);
        foreach (StatedWindow window in windows)
        {
            WriteWindow(json, window.Window, window.Confidence);
        }

        json.WriteEndArray();
    }

    private void WriteWindows(ReadOnlySpan<StatedDay> windows)
    {
        json.WriteStartArray("windows"u8);
        foreach (StatedDay window in windows)
        {
            WriteWindow(json, DateWindow.OfBounds(window.Low, window.High), window.Confidence);
        }

        json.WriteEndArray();
    }

    private static void WriteWindow(Utf8JsonWriter json, DateWindow window, double confidence)
    {
        json.WriteStartObject();
        json.WriteWindow(window);
        json.WriteRounded("confidence"u8, confidence);
        json.WriteEndObject();
    }

    private void WriteOrCopy(Evidence item, ReadOnlySpan<StatedDay> windows, ReferenceSet reference)
    {
        ReadOnlySpan<byte> known = ready is null ? default : ready.Find(item, windows, reference);
        if (known.IsEmpty)
        {
            WriteItem(item, windows, reference);
        }
        else
        {
            json.WriteRawValue(known, skipInputValidation: true);
        }
    }

    private void WriteReason(ReasonDraft reason)
    {
        words.Clear();
        ReasonText.AddTo(words, reason);
        json.WriteStartObject();
        json.WriteString("rule"u8, reason.Rule);
        json.WriteString("text"u8, words.Span);
        json.WriteEndObject();
    }
}
