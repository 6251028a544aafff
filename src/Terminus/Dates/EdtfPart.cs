namespace Terminus;

/// <summary>What the text of one date says: a whole expression, an end of an interval, or a member of a set.</summary>
internal struct EdtfPart
{
    internal EdtfBound Earliest;
    internal EdtfBound Latest;
    internal int Level;
    internal bool IsUncertain;
    internal bool IsApproximate;

    /// <summary>Whether a digit is X.</summary>
    internal bool IsUnspecified;

    /// <summary>Whether a time of day follows.</summary>
    internal bool HasTime;

    /// <summary>Where the T of the time of day stands.</summary>
    internal int TimePosition;

    internal EdtfPrecision Precision;

    internal void AtLeast(int level) => Level = Math.Max(Level, level);

    internal void Qualify(char qualifier)
    {
        IsUncertain |= qualifier != '~';
        IsApproximate |= qualifier != '?';
    }
}

/// <summary>The smallest component that a date has.</summary>
internal enum EdtfPrecision
{
    Year,
    Grouping,
    Month,
    Day,
}
