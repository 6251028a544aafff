namespace Terminus;

/// <summary>What is known of one end of an EDTF date.</summary>
public enum EdtfBoundKind
{
    /// <summary>The date has no end on this side: <c>..</c> in EDTF.</summary>
    Open,

    /// <summary>A day: see <see cref="EdtfBound.Year"/>, <see cref="EdtfBound.Month"/> and <see cref="EdtfBound.Day"/>.</summary>
    Known,

    /// <summary>There is an end, but nobody knows which: an empty end of an interval in EDTF.</summary>
    Unknown,
}

/// <summary>
/// One end of an EDTF date: a day of the proleptic Gregorian calendar whose year may have 64 bits, or an end that is open or unknown.
/// The default value is an open end, and is valid. Year 0 is 1 BCE.
/// </summary>
public readonly struct EdtfBound : IEquatable<EdtfBound>
{
    private readonly byte month;
    private readonly byte day;

    private EdtfBound(EdtfBoundKind kind, long year, int month, int day)
    {
        Kind = kind;
        Year = year;
        this.month = (byte)month;
        this.day = (byte)day;
    }

    /// <summary>An open end, which is the default value.</summary>
    public static EdtfBound Open => default;

    /// <summary>An unknown end.</summary>
    public static EdtfBound Unknown => new(EdtfBoundKind.Unknown, 0, 0, 0);

    /// <summary>Whether the end is a known day, open, or unknown.</summary>
    public EdtfBoundKind Kind { get; }

    /// <summary>The year of a known end, by astronomical count (-1 is 2 BCE); 0 where the end is open or unknown.</summary>
    public long Year { get; }

    /// <summary>The month of a known end, 1 to 12; 0 where the end is open or unknown.</summary>
    public int Month => month;

    /// <summary>The day of the month of a known end, 1 to 31; 0 where the end is open or unknown.</summary>
    public int Day => day;

    /// <summary>Whether the end is known and lies outside the ISO calendar, years -9998 to 9999.</summary>
    internal bool IsBeyondCalendar => Kind == EdtfBoundKind.Known && Year is < -9998 or > 9999;

    /// <summary>The end as a day number; open for one that is open or unknown. It lies inside the calendar.</summary>
    internal int DayNumber => Kind == EdtfBoundKind.Known ? Terminus.DayNumber.Of((int)Year, Month, Day) : Terminus.DayNumber.Open;

    /// <summary>A known day, which exists.</summary>
    internal static EdtfBound On(long year, int month, int day) => new(EdtfBoundKind.Known, year, month, day);

    /// <summary>Whether this known day is earlier than the other.</summary>
    internal bool IsBefore(EdtfBound other)
        => Year != other.Year ? Year < other.Year : month != other.month ? month < other.month : day < other.day;

    /// <inheritdoc/>
    public bool Equals(EdtfBound other) => Kind == other.Kind && Year == other.Year && month == other.month && day == other.day;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is EdtfBound other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((((Year.GetHashCode() * 397) ^ (month * 32) ^ day) * 3) + (int)Kind);

    /// <summary>Whether two ends are the same.</summary>
    public static bool operator ==(EdtfBound left, EdtfBound right) => left.Equals(right);

    /// <summary>Whether two ends differ.</summary>
    public static bool operator !=(EdtfBound left, EdtfBound right) => !left.Equals(right);

    /// <summary>
    /// Such as <c>1985-04-12</c>, <c>-0044-03-15</c>, <c>170000002-01-01</c>, <c>open</c> or <c>unknown</c>; never in a culture's
    /// format.
    /// </summary>
    public override string ToString() => Kind switch
    {
        EdtfBoundKind.Known => DateText.Iso(Year, Month, Day),
        EdtfBoundKind.Unknown => "unknown",
        _ => "open",
    };
}
