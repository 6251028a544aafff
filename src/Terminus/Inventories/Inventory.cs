using System.Runtime.CompilerServices;

namespace Terminus;

/// <summary>
/// Dates whole collections: a stream of piece documents, one on each line (JSON Lines), answered one by one, in order, on all cores and in
/// memory that does not grow with the stream.
/// </summary>
/// <remarks>
/// <para>A line that holds no piece is answered by its error and the rest goes on: text that is not JSON to its end, UTF-8 or Unicode that is
/// broken, no <c>id</c>, nesting deeper than 64 levels, more than <see cref="LongestLine"/> bytes (the rest of such a line is passed over, not
/// kept). Blank lines are passed over without an answer. Lines end with a line feed; a carriage return before it and a byte order mark are
/// allowed, and the last line may lack its end.</para>
/// <para>The answer to a line depends on that line and the options alone, so a collection may be split between lines, dated in
/// pieces anywhere, and joined again.</para>
/// </remarks>
public static class Inventory
{
    /// <summary>The most bytes a line may have: 1 MiB.</summary>
    public const int LongestLine = 1024 * 1024;

    /// <summary>Dates one line; null where it is blank.</summary>
    /// <param name="line">The piece document in UTF-8, without its line feed.</param>
    /// <param name="options">How to date it.</param>
    public static InventoryResult? DateLine(ReadOnlySpan<byte> line, InventoryOptions options)
    {
        Guard.NotNull(options, nameof(options));
        return LineText.Trim(line).Length == 0 ? null
            : line.Length > LongestLine ? InventoryResult.TooLong(line.Slice(0, InventoryError.BytesShown))
            : InventoryResult.Of(line, options);
    }

    /// <summary>Dates each line of a stream as it is asked for. The answers come in the order of the lines.</summary>
    /// <param name="lines">The stream, which is read to its end and left open.</param>
    /// <param name="options">How to date them.</param>
    /// <param name="cancellation">Ends the work; the enumeration then throws <see cref="OperationCanceledException"/>.</param>
    public static async IAsyncEnumerable<InventoryResult> DateAsync(
        Stream lines, InventoryOptions options, [EnumeratorCancellation] CancellationToken cancellation = default)
    {
        Guard.NotNull(lines, nameof(lines));
        Guard.NotNull(options, nameof(options));
        var reader = new LineReader(lines);
        IAsyncEnumerable<List<InventoryResult>> answers = OrderedWork.RunAsync(reader.ReadAsync, b => Date(b, options), options.BatchesAtOnce, cancellation);
        await foreach (List<InventoryResult> batch in answers.ConfigureAwait(false))
        {
            foreach (InventoryResult result in batch)
            {
                yield return result;
            }
        }
    }

    /// <summary>Dates each line of a stream and writes the answers into another, one a line, in order.</summary>
    /// <remarks>Each write holds whole lines, so a run that is ended between two writes leaves no half line.</remarks>
    /// <param name="lines">The stream, which is read to its end and left open.</param>
    /// <param name="results">The stream to write into, which is left open.</param>
    /// <param name="options">How to date them.</param>
    /// <param name="progress">Is told the summary so far after each write, or null.</param>
    /// <param name="cancellation">Ends the work after the write it is in; the task is then cancelled.</param>
    /// <returns>The summary of all lines.</returns>
    public static async Task<InventorySummary> WriteAsync(
        Stream lines, Stream results, InventoryOptions options, IProgress<InventorySummary>? progress = null, CancellationToken cancellation = default)
    {
        Guard.NotNull(lines, nameof(lines));
        Guard.NotNull(results, nameof(results));
        Guard.NotNull(options, nameof(options));
        var reader = new LineReader(lines);
        using var writers = new BatchWriters(options);
        var summary = InventorySummary.None;
        IAsyncEnumerable<WrittenBatch> answers = OrderedWork.RunAsync(reader.ReadAsync, writers.Write, options.BatchesAtOnce, cancellation);
        await foreach (WrittenBatch batch in answers.ConfigureAwait(false))
        {
            using ByteBuffer buffer = batch.Lines;
            // Not cancelled half way: a line that is begun is ended.
#pragma warning disable CA1835, CA2016 // One overload for both targets.
            await results.WriteAsync(buffer.Bytes, 0, buffer.Length, CancellationToken.None).ConfigureAwait(false);
#pragma warning restore CA1835, CA2016
            summary = summary.Plus(batch.Summary);
            progress?.Report(summary);
        }

        await results.FlushAsync(CancellationToken.None).ConfigureAwait(false);
        return summary;
    }

    private static List<InventoryResult> Date(LineBatch batch, InventoryOptions options)
    {
        using (batch)
        {
            var results = new List<InventoryResult>(batch.Count);
            for (int i = 0; i < batch.Count; i++)
            {
                results.Add(batch.Date(i, options));
            }

            return results;
        }
    }
}
