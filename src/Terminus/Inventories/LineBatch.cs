using System.Buffers;

namespace Terminus;

/// <summary>Some lines in a row, in a buffer from the pool.</summary>
internal sealed class LineBatch : IDisposable
{
    private readonly byte[] bytes;
    private readonly List<Line> lines;

    /// <param name="source">The bytes that hold the lines; they are copied.</param>
    /// <param name="lines">The lines, each by its place in these bytes.</param>
    internal LineBatch(ReadOnlySpan<byte> source, List<Line> lines)
    {
        this.lines = lines;
        bytes = ArrayPool<byte>.Shared.Rent(source.Length);
        source.CopyTo(bytes);
    }

    internal int Count => lines.Count;

    internal InventoryResult Date(int index, InventoryOptions options)
    {
        Line line = lines[index];
        ReadOnlySpan<byte> text = bytes.AsSpan(line.Start, line.Length);
        return line.IsTooLong ? InventoryResult.TooLong(text) : InventoryResult.Of(text, options);
    }

    public void Dispose() => ArrayPool<byte>.Shared.Return(bytes);

    /// <summary>A line by its place; of one that is too long only the start is kept.</summary>
    internal readonly struct Line(int start, int length, bool isTooLong)
    {
        internal int Start { get; } = start;

        internal int Length { get; } = length;

        internal bool IsTooLong { get; } = isTooLong;
    }
}
