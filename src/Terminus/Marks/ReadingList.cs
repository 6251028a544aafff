namespace Terminus;

/// <summary>The dates that a stamped date can mean, in room on the stack as long as they are few, as nearly all are.</summary>
internal ref struct ReadingList
{
    /// <summary>The usual room.</summary>
    internal const int Usual = 8;

    private Span<CalendarReading> items;

    internal ReadingList(Span<CalendarReading> room)
    {
        items = room;
        Count = 0;
    }

    internal int Count { get; private set; }

    internal readonly CalendarReading this[int index] => items[index];

    internal void Add(CalendarReading reading)
    {
        if (Count == items.Length)
        {
            Span<CalendarReading> more = new CalendarReading[4 * Count];
            items.CopyTo(more);
            items = more;
        }

        items[Count++] = reading;
    }

    /// <summary>Adds a date where the calendar has it.</summary>
    internal void AddIfExists(CalendarReading reading)
    {
        if (reading.Exists)
        {
            Add(reading);
        }
    }

    internal void Clear() => Count = 0;
}
