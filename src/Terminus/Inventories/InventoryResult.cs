using System.Text.Json;

namespace Terminus;

/// <summary>The answer to one line of an inventory: a dated piece, or why there is none.</summary>
public sealed class InventoryResult
{
    private InventoryResult(PieceDating? dating, InventoryError? error) => (Dating, Error) = (dating, error);

    /// <summary>The dated piece, or null where the line holds none.</summary>
    public PieceDating? Dating { get; }

    /// <summary>Why the line holds no piece, or null where it does.</summary>
    public InventoryError? Error { get; }

    /// <summary>The answer as JSON on one line, without a line break at its end.</summary>
    /// <param name="steps">Whether to add the answers at all levels.</param>
    public string ToJson(bool steps = false) => DocumentWriting.ToText(DocumentWriting.Compact, json => Write(json, steps));

    /// <summary>Writes the answer into a writer, as one object: the result of the piece, or <c>error</c>, <c>path</c> and <c>text</c>.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="steps">Whether to add the answers at all levels.</param>
    public void Write(Utf8JsonWriter json, bool steps = false)
        => DocumentWriting.WriteCopied(Guard.NotNull(json, nameof(json)), compact => Write(compact, new ResultWriter(compact), steps));

    /// <summary>Writes the answer with a writer of results, which is used again.</summary>
    internal void Write(Utf8JsonWriter json, ResultWriter results, bool steps)
    {
        if (Dating is not null)
        {
            results.Write(Dating, steps);
        }
        else
        {
            Error!.Write(json);
        }
    }

    // A line that stops being JSON half way holds no piece, whatever its first half says.
    internal static InventoryResult Of(ReadOnlySpan<byte> line, InventoryOptions options)
    {
        var reader = new DocumentReader(line);
        Piece? piece = PieceReader.ReadPiece(ref reader);
        IReadOnlyList<DocumentProblem> problems = reader.Finish();
        if (piece is null || reader.IsDefective)
        {
            DocumentProblem problem = problems[reader.IsDefective ? problems.Count - 1 : 0];
            return new InventoryResult(null, new InventoryError(problem.Message, problem.Path, line));
        }

        var read = new DocumentResult<Piece>(piece, problems);
        return new InventoryResult(
            PieceDating.Of(read, options.AsOf, options.Reference, options.Assumptions, options.Confidence), null);
    }

    internal static InventoryResult TooLong(ReadOnlySpan<byte> start)
        => new(null, new InventoryError("The line is longer than " + DateText.Digits(Inventory.LongestLine) + " bytes, which is not read.", "$", start));
}
