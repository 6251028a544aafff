using System.Text.Json;

namespace Terminus;

/// <summary>Dates batches and writes their answers, one batch after another, with buffers that are used again. For one thread at a time.</summary>
internal sealed class BatchWriter : IDisposable
{
    // The answers of most batches, so that they seldom have to move.
    private const int UsualLength = 256 * 1024;

    private readonly InventoryOptions options;
    private readonly ReadyEvidence ready = new();
    private readonly Utf8JsonWriter json = new(Stream.Null, DocumentWriting.Compact);
    private readonly ResultWriter results;

    /// <param name="options">How the lines are dated.</param>
    internal BatchWriter(InventoryOptions options)
    {
        this.options = options;
        results = new ResultWriter(json, ready);
    }

    /// <summary>The answers to a batch, one on each line.</summary>
    internal WrittenBatch Write(LineBatch batch)
    {
        var lines = new ByteBuffer(UsualLength);
        var tally = new InventoryTally();
        json.Reset(lines);
        for (int i = 0; i < batch.Count; i++)
        {
            InventoryResult result = batch.Date(i, options);
            result.Write(json, results, options.Steps);
            json.Flush();
            json.Reset();
            lines.Add((byte)'\n');
            tally.Add(result);
        }

        return new WrittenBatch(lines, new InventorySummary(tally));
    }

    public void Dispose()
    {
        json.Dispose();
        ready.Dispose();
    }
}

/// <summary>The answers to a batch, in a buffer from the pool, and their summary.</summary>
internal sealed class WrittenBatch(ByteBuffer lines, InventorySummary summary) : IDisposable
{
    internal ByteBuffer Lines { get; } = lines;

    internal InventorySummary Summary { get; } = summary;

    public void Dispose() => Lines.Dispose();
}
