namespace Terminus;

/// <summary>One year that a date with two digits of year can mean.</summary>
/// <param name="Year">The year in full.</param>
/// <param name="Day">The day as a number, or 0 where month or day are not known.</param>
/// <param name="Why">What the weekday says, or null where the day is not known.</param>
internal sealed record IssueYear(int Year, int Day, Reason? Why)
{
    /// <summary>Whether a US patent can have issued on the day; true where the day is not known.</summary>
    internal bool IsPossible => Day == DayNumber.Open || IssueDay.IsPossible(Day);
}
