namespace Terminus;

/// <summary>What an EDTF text says, without the text.</summary>
internal struct EdtfReading
{
    internal EdtfBound Earliest;
    internal EdtfBound Latest;
    internal int Level;
    internal bool IsUncertain;
    internal bool IsApproximate;

    /// <summary>The days from the earliest to the latest; null where a known end lies outside the ISO calendar.</summary>
    internal readonly DateWindow? Window
        => Earliest.IsBeyondCalendar || Latest.IsBeyondCalendar ? null : DateWindow.OfDays(Earliest.DayNumber, Latest.DayNumber);

    /// <summary>Takes over the qualifiers of a part, and its level where that is higher.</summary>
    internal void Include(in EdtfPart part)
    {
        IsUncertain |= part.IsUncertain;
        IsApproximate |= part.IsApproximate;
        AtLeast(part.Level);
    }

    internal void AtLeast(int level) => Level = Math.Max(Level, level);
}
