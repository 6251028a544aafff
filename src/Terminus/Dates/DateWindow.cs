using NodaTime;

namespace Terminus;

/// <summary>
/// A closed range of days in the ISO calendar: both ends belong to it, and either may be open.
/// </summary>
/// <remarks>
/// An open end is null at the surface and never throws. The default value is <see cref="Any"/>, open at both ends, and is
/// valid. Two windows are equal when their ends are. Dates of other calendars are converted to ISO. The type is immutable
/// and safe on any thread.
/// </remarks>
public readonly struct DateWindow : IEquatable<DateWindow>
{
    private readonly int first;
    private readonly int last;

    private DateWindow(int first, int last)
    {
        this.first = first;
        this.last = last;
    }

    /// <summary>Any date: open at both ends, and the default value.</summary>
    public static DateWindow Any => default;

    /// <summary>The first day, or null where the window is open at its start (any day before).</summary>
    public LocalDate? NotBefore => first == DayNumber.Open ? null : DayNumber.ToDate(first);

    /// <summary>The last day, or null where the window is open at its end (any day after).</summary>
    public LocalDate? NotAfter => last == DayNumber.Open ? null : DayNumber.ToDate(last);

    /// <summary>True when both ends are open, so that the window says nothing.</summary>
    public bool IsAny => first == DayNumber.Open && last == DayNumber.Open;

    /// <summary>The number of days in the window, or null where an end is open. A single day counts 1.</summary>
    public int? Days => first == DayNumber.Open || last == DayNumber.Open ? null : last - first + 1;

    /// <summary>The first day as a number, 0 where open.</summary>
    internal int FirstDay => first;

    /// <summary>The last day as a number, 0 where open.</summary>
    internal int LastDay => last;

    /// <summary>The first day as a number for comparing: the least integer where open.</summary>
    internal int Low => first == DayNumber.Open ? int.MinValue : first;

    /// <summary>The last day as a number for comparing: the greatest integer where open.</summary>
    internal int High => last == DayNumber.Open ? int.MaxValue : last;

    /// <summary>A window that starts on <paramref name="date"/>, which belongs to it, and has no end.</summary>
    public static DateWindow From(LocalDate date) => new(DayNumber.Of(date), DayNumber.Open);

    /// <summary>A window that ends on <paramref name="date"/>, which belongs to it, and has no start.</summary>
    public static DateWindow Until(LocalDate date) => new(DayNumber.Open, DayNumber.Of(date));

    /// <summary>A window of one day.</summary>
    public static DateWindow On(LocalDate date) => Between(date, date);

    /// <summary>The window from <paramref name="notBefore"/> to <paramref name="notAfter"/>, both belonging to it.</summary>
    /// <param name="notBefore">The first day, or null for an open start.</param>
    /// <param name="notAfter">The last day, or null for an open end.</param>
    /// <exception cref="ArgumentOutOfRangeException">The first day is later than the last.</exception>
    public static DateWindow Between(LocalDate? notBefore, LocalDate? notAfter)
    {
        int first = notBefore is { } f ? DayNumber.Of(f) : DayNumber.Open;
        int last = notAfter is { } l ? DayNumber.Of(l) : DayNumber.Open;
        if (first != DayNumber.Open && last != DayNumber.Open && first > last)
        {
            throw new ArgumentOutOfRangeException(
                nameof(notBefore), notBefore, $"The first day of a window is not later than its last, {DateText.Iso(last)}.");
        }

        return new DateWindow(first, last);
    }

    /// <summary>The window of a whole calendar year, 1 January to 31 December.</summary>
    /// <param name="year">The year, from -9998 to 9999; 0 is 1 BCE.</param>
    /// <exception cref="ArgumentOutOfRangeException">The year lies outside the ISO calendar.</exception>
    public static DateWindow InYear(int year) => BetweenYears(year, year);

    /// <summary>The window from 1 January of one year to 31 December of another.</summary>
    /// <param name="firstYear">The first year, from -9998 to 9999.</param>
    /// <param name="lastYear">The last year, not before the first.</param>
    /// <exception cref="ArgumentOutOfRangeException">A year lies outside the ISO calendar, or the first is later than the last.</exception>
    public static DateWindow BetweenYears(int firstYear, int lastYear)
        => Between(new LocalDate(firstYear, 1, 1), new LocalDate(lastYear, 12, 31));

    /// <summary>A window from day numbers (0 = open), or null where the first is later than the last.</summary>
    internal static DateWindow? TryBetweenDays(int firstDay, int lastDay)
        => firstDay != DayNumber.Open && lastDay != DayNumber.Open && firstDay > lastDay ? null : new DateWindow(firstDay, lastDay);

    /// <summary>A window from day numbers (0 = open) that are known to be in order.</summary>
    internal static DateWindow OfDays(int firstDay, int lastDay) => new(firstDay, lastDay);

    /// <summary>A window from comparing numbers, where the extreme integers stand for open ends.</summary>
    internal static DateWindow OfBounds(int low, int high)
        => new(low == int.MinValue ? DayNumber.Open : low, high == int.MaxValue ? DayNumber.Open : high);

    /// <summary>Whether <paramref name="date"/> lies in the window; its ends do.</summary>
    public bool Contains(LocalDate date) => ContainsDay(DayNumber.Of(date));

    /// <summary>Whether every day of <paramref name="other"/> lies in this window.</summary>
    public bool Contains(DateWindow other) => Low <= other.Low && High >= other.High;

    internal bool ContainsDay(int day) => Low <= day && High >= day;

    /// <summary>Whether the two windows have a day in common.</summary>
    public bool Meets(DateWindow other) => Low <= other.High && other.Low <= High;

    /// <summary>The days that both windows have, or null where there are none.</summary>
    public DateWindow? Intersect(DateWindow other)
    {
        // Day numbers are positive and 0 is open. An open start is so the least of starts as it stands; an open end, one taken from it, wraps
        // round to the greatest of ends.
        unchecked
        {
            int start = Math.Max(first, other.first);
            uint end = Math.Min((uint)last - 1, (uint)other.last - 1);
            return start > DayNumber.Open && (uint)start - 1 > end ? null : new DateWindow(start, (int)(end + 1));
        }
    }

    /// <summary>The shortest window that contains both, with any days between them.</summary>
    public DateWindow Hull(DateWindow other) => OfBounds(Math.Min(Low, other.Low), Math.Max(High, other.High));

    /// <summary>
    /// This window with each closed end moved outwards by a number of years; a negative number moves them inwards, but not past each other.
    /// Ends stay inside the ISO calendar.
    /// </summary>
    internal DateWindow Widen(int yearsBefore, int yearsAfter)
        => new(DayNumber.PlusYears(first, -yearsBefore), DayNumber.PlusYears(last, yearsAfter));

    /// <inheritdoc/>
    public bool Equals(DateWindow other) => first == other.first && last == other.last;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is DateWindow other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((first * 397) ^ last);

    /// <summary>Whether two windows have the same ends.</summary>
    public static bool operator ==(DateWindow left, DateWindow right) => left.Equals(right);

    /// <summary>Whether two windows differ in an end.</summary>
    public static bool operator !=(DateWindow left, DateWindow right) => !left.Equals(right);

    /// <summary>The window as an EDTF interval, such as <c>1956-03-06/1961-07-11</c>, <c>1949-01-01/..</c>, or <c>any date</c>; never in a culture's format.</summary>
    public override string ToString() => IsAny ? "any date" : ToEdtf()!;

    /// <summary>
    /// The window as an EDTF interval (ISO 8601-2:2019), with <c>..</c> for an open end, or null for any date, which EDTF cannot write.
    /// A window of one day is written as that day.
    /// </summary>
    public string? ToEdtf() => IsAny ? null : DateText.Edtf(this);
}
