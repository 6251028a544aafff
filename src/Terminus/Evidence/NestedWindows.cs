namespace Terminus;

/// <summary>
/// Collects the nested windows of one item in day numbers: each window is cut to the one outside it and dropped if nothing is
/// left, a window open on both sides is left out, and a confidence never rises as the windows narrow.
/// </summary>
internal ref struct NestedWindows
{
    // Most items state two or three windows.
    private const int Usual = 3;

    private readonly double cap;
    private StatedDay[] stated;
    private int count;
    private int low;
    private int high;
    private double confidence;

    /// <summary>Starts an item, with no confidence above <paramref name="cap"/>.</summary>
    internal NestedWindows(double cap)
    {
        this.cap = cap;
        stated = new StatedDay[Usual];
        low = int.MinValue;
        high = int.MaxValue;
        confidence = 1;
    }

    /// <summary>States the window from one day to another, where <see cref="DayNumber.Open"/> is an open end.</summary>
    internal void State(int firstDay, int lastDay, double atLeast)
    {
        int from = Math.Max(low, firstDay == DayNumber.Open ? int.MinValue : firstDay);
        int to = Math.Min(high, lastDay == DayNumber.Open ? int.MaxValue : lastDay);
        if (from > to || (from == int.MinValue && to == int.MaxValue))
        {
            return;
        }

        double capped = Math.Min(Math.Min(atLeast, cap), confidence);
        if (capped <= 0 || (from == low && to == high))
        {
            return;
        }

        low = from;
        high = to;
        confidence = capped;
        if (count == stated.Length)
        {
            Array.Resize(ref stated, count * 2);
        }

        stated[count++] = new StatedDay(from, to, capped);
    }

    /// <summary>The windows of the item.</summary>
    internal readonly StatedDay[] ToArray() => count == stated.Length ? stated : count == 0 ? [] : stated.AsSpan(0, count).ToArray();

    /// <summary>The same rules on public windows; <paramref name="keepAny"/> keeps a first window that is any date.</summary>
    internal static List<StatedWindow> Cut(IEnumerable<StatedWindow> windows, bool keepAny = false)
    {
        var kept = new List<StatedWindow>();
        DateWindow outer = DateWindow.Any;
        double confidence = 1;
        foreach (StatedWindow stated in windows)
        {
            bool first = kept.Count == 0 && keepAny;
            if (outer.Intersect(stated.Window) is not { } cut || (cut == outer && !first))
            {
                continue;
            }

            outer = cut;
            confidence = Math.Min(confidence, stated.Confidence);
            kept.Add(new StatedWindow(cut, confidence));
        }

        return kept;
    }

    /// <summary>
    /// Whether every window lies in the one before it and no confidence rises: the form in which a person should state windows.
    /// </summary>
    internal static bool AreNested(IReadOnlyList<StatedWindow> windows)
    {
        for (int i = 1; i < windows.Count; i++)
        {
            if (!windows[i - 1].Window.Contains(windows[i].Window) || windows[i].Confidence > windows[i - 1].Confidence)
            {
                return false;
            }
        }

        return true;
    }
}
