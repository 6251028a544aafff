namespace Terminus;

/// <summary>One nested window of an item in day numbers; the extreme integers stand for open ends.</summary>
internal readonly struct StatedDay(int low, int high, double confidence)
{
    internal int Low { get; } = low;

    internal int High { get; } = high;

    internal double Confidence { get; } = confidence;

    /// <summary>Windows as public values.</summary>
    internal static ValueList<StatedWindow> ToWindows(ReadOnlySpan<StatedDay> days)
    {
        var result = new StatedWindow[days.Length];
        for (int i = 0; i < days.Length; i++)
        {
            result[i] = new StatedWindow(DateWindow.OfBounds(days[i].Low, days[i].High), days[i].Confidence);
        }

        return ValueList<StatedWindow>.Owning(result);
    }
}

/// <summary>
/// The stated windows of several items in day numbers, one after another: the form in which evidence meets the engine.
/// </summary>
internal sealed class StatedDays
{
    private StatedDay[] windows;

    // Where the windows of each item start; those of the item after the last would start at the end.
    private readonly int[] starts;
    private int windowCount;

    /// <param name="items">How many items are to be added at most.</param>
    internal StatedDays(int items)
    {
        windows = new StatedDay[items * 3];
        starts = new int[items + 1];
    }

    /// <summary>How many items there are.</summary>
    internal int Items { get; private set; }

    /// <summary>How many windows there are in all.</summary>
    internal int Windows => windowCount;

    /// <summary>The windows of an item, widest first; none where it says nothing of the date.</summary>
    internal ReadOnlySpan<StatedDay> this[int item]
    {
        get
        {
            int start = starts[item];
            return new ReadOnlySpan<StatedDay>(windows, start, starts[item + 1] - start);
        }
    }

    /// <summary>Adds one more item with its windows.</summary>
    internal void AddItem(ReadOnlySpan<StatedDay> item)
    {
        int count = windowCount + item.Length;
        if (count > windows.Length)
        {
            Array.Resize(ref windows, Math.Max(count, windows.Length * 2));
        }

        item.CopyTo(windows.AsSpan(windowCount));
        windowCount = count;
        starts[++Items] = windowCount;
    }
}
