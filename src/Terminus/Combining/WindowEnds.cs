namespace Terminus;

/// <summary>
/// The ends of all stated windows in day order: first the starts that are not after asOf, then the ends before it. An end at or after
/// asOf never comes into play, as nothing is made after the day of the opinion; a start after it never happens.
/// </summary>
internal readonly struct WindowEnds
{
    // A day and its item in one integer, so that sorting moves four bytes: day numbers take 23 bits.
    private const int ItemBits = 8;

    private readonly int[] keys;

    internal WindowEnds(StatedDays items, int asOf)
    {
        int count = 0;
        for (int item = 0; item < items.Items; item++)
        {
            foreach (StatedDay window in items[item])
            {
                Starts += window.Low != int.MinValue && window.Low <= asOf ? 1 : 0;
                count += window.High < asOf ? 1 : 0;
            }
        }

        Count = Starts + count;
        keys = new int[Count];
        (int start, int end) = (0, Starts);
        for (int item = 0; item < items.Items; item++)
        {
            foreach (StatedDay window in items[item])
            {
                if (window.Low != int.MinValue && window.Low <= asOf)
                {
                    keys[start++] = (window.Low << ItemBits) | item;
                }

                if (window.High < asOf)
                {
                    keys[end++] = (window.High << ItemBits) | item;
                }
            }
        }

        Array.Sort(keys, 0, Starts);
        Array.Sort(keys, Starts, count);
    }

    /// <summary>The most items that the packing has room for.</summary>
    internal const int MostItems = 1 << ItemBits;

    /// <summary>How many starts there are; the ends follow them.</summary>
    internal int Starts { get; }

    /// <summary>How many starts and ends there are in all.</summary>
    internal int Count { get; }

    internal int Day(int index) => keys[index] >> ItemBits;

    internal int Item(int index) => keys[index] & (MostItems - 1);

    /// <summary>The index of the first start on or after a day, or the number of starts.</summary>
    internal int FirstStart(int day) => FirstNotBefore(0, Starts, day);

    /// <summary>The index of the first end after a day, or the number of all.</summary>
    internal int FirstEndAfter(int day) => FirstNotBefore(Starts, Count, day + 1);

    private int FirstNotBefore(int from, int to, int day)
    {
        while (from < to)
        {
            int middle = (from + to) >> 1;
            (from, to) = Day(middle) < day ? (middle + 1, to) : (from, middle);
        }

        return from;
    }
}
