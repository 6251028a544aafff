namespace Terminus;

/// <summary>
/// One row of a register, and all that a register knows: the numbers from first to last bear a date within the window.
/// </summary>
/// <remarks>
/// The row of a year is its first number, its last, and the year; a dated number is a row with one number and one day; where
/// two sources disagree on where a year begins, the numbers between them are a row of their own, with both years.
/// </remarks>
public sealed record RegisterRow
{
    /// <summary>States that the numbers from first to last bear a date within the window.</summary>
    /// <param name="first">The lowest number, 1 or more.</param>
    /// <param name="last">The highest number, not lower than the first.</param>
    /// <param name="dates">The window of their dates, closed at both ends.</param>
    /// <param name="origin">The standing of the figure.</param>
    /// <param name="source">Where it was read; empty where it was recalled.</param>
    /// <param name="series">The series, where an office counts more than once. Numbers rise with dates within a series only.</param>
    /// <param name="allowanceDays">How many days the truth may lie outside the window, on either side.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number, the allowance or the window is not as said.</exception>
    public RegisterRow(
        int first, int last, DateWindow dates, RowOrigin origin, string source, string series = "", int allowanceDays = 0)
    {
        First = first >= 1 ? first : throw new ArgumentOutOfRangeException(nameof(first), first, "Numbers start at 1.");
        Last = last >= first ? last : throw new ArgumentOutOfRangeException(nameof(last), last, "A row ends no lower than it starts.");
        Dates = dates.Days is not null
            ? dates
            : throw new ArgumentOutOfRangeException(nameof(dates), dates, "The window of a row is closed at both ends.");
        Origin = origin;
        Source = Guard.NotNull(source, nameof(source));
        Series = Guard.NotNull(series, nameof(series));
        AllowanceDays = allowanceDays is >= 0 and <= 36_525
            ? allowanceDays
            : throw new ArgumentOutOfRangeException(nameof(allowanceDays), allowanceDays, "An allowance is from 0 to 36,525 days.");
    }

    /// <summary>The lowest number.</summary>
    public int First { get; }

    /// <summary>The highest number.</summary>
    public int Last { get; }

    /// <summary>The window of the dates, closed at both ends.</summary>
    public DateWindow Dates { get; }

    /// <summary>The standing of the figure.</summary>
    public RowOrigin Origin { get; }

    /// <summary>Where it was read; empty where it was recalled.</summary>
    public string Source { get; }

    /// <summary>The series; empty where an office counts once.</summary>
    public string Series { get; }

    /// <summary>How many days the truth may lie outside the window, on either side.</summary>
    public int AllowanceDays { get; }
}
