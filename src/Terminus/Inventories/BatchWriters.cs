using System.Collections.Concurrent;

namespace Terminus;

/// <summary>As many writers of batches as were at work at once, each used again by whoever comes next.</summary>
internal sealed class BatchWriters(InventoryOptions options) : IDisposable
{
    private readonly ConcurrentBag<BatchWriter> idle = [];

    /// <summary>Dates a batch, gives its lines back to the pool, and returns the answers.</summary>
    internal WrittenBatch Write(LineBatch batch)
    {
        using (batch)
        {
            BatchWriter writer = idle.TryTake(out BatchWriter? free) ? free : new BatchWriter(options);
            WrittenBatch answers = writer.Write(batch);
            idle.Add(writer);
            return answers;
        }
    }

    public void Dispose()
    {
        while (idle.TryTake(out BatchWriter? writer))
        {
            writer.Dispose();
        }
    }
}
