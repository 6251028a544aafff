using System.Text.Json;

namespace Terminus;

/// <summary>Writes the items of evidence of a result, each with its windows and its reasons in words.</summary>
internal sealed class EvidenceWriter
{
    // The names of the members, two days and a number.
    private const int LongestWindow = 128;

    private readonly Utf8JsonWriter json;
    private readonly ReadyEvidence? ready;
    private readonly TextBuffer words = new();
    private readonly ReasonDraft reasons;

    /// <param name="json">The writer, which does not indent: windows are copied into it as bytes.</param>
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

    private void WriteWindows(ReadOnlySpan<StatedDay> windows)
    {
        json.WriteStartArray("windows"u8);
        foreach (StatedDay window in windows)
        {
            Write(window);
        }

        json.WriteEndArray();
    }

    private void Write(StatedDay window)
    {
        var stated = new PlainJson(stackalloc byte[LongestWindow]);
        stated.Add("{"u8);
        stated.AddEnds(DateWindow.OfBounds(window.Low, window.High));
        stated.Add(",\"confidence\":"u8);
        stated.AddRounded(window.Confidence);
        stated.Add("}"u8);
        json.WriteRawValue(stated.Bytes, skipInputValidation: true);
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
