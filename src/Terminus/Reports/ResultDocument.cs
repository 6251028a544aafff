using System.Text.Json;

namespace Terminus;

/// <summary>The JSON document of a dated piece: its answer, its evidence and its problems.</summary>
/// <remarks>
/// Within a format members are only added. In <c>possible</c>, <c>interval</c> and <c>likely</c> only a start can be null; where the end is only the day of
/// the opinion, <c>notAfter</c> is that day and <c>edtf</c> has an open end. In <c>evidence</c> windows are unclipped and both ends can be null.
/// Numbers have at most 12 decimals.
/// </remarks>
public static class ResultDocument
{
    /// <summary>The document, indented.</summary>
    /// <param name="dating">The dated piece.</param>
    /// <param name="steps">Whether to add the answers at all levels.</param>
    public static string ToJson(PieceDating dating, bool steps = false)
        => DocumentWriting.ToText(DocumentWriting.Indented, json => Write(json, dating, steps));

    /// <summary>Writes the document into a writer, as one object.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="dating">The dated piece.</param>
    /// <param name="steps">Whether to add the answers at all levels.</param>
    public static void Write(Utf8JsonWriter json, PieceDating dating, bool steps = false)
    {
        Guard.NotNull(dating, nameof(dating));
        DocumentWriting.WriteCopied(Guard.NotNull(json, nameof(json)), compact => new ResultWriter(compact).Write(dating, steps));
    }
}
