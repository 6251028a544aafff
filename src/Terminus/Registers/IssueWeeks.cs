namespace Terminus;

/// <summary>Weeks of issue, counted from 4 January 1848: the estimated one and the bounds on it.</summary>
internal readonly struct IssueWeeks(int earliest, int likeliest, int latest)
{
    internal int Earliest { get; } = earliest;

    internal int Likeliest { get; } = likeliest;

    internal int Latest { get; } = latest;

    /// <summary>How many weeks the dated numbers leave possible; 1 is certainty.</summary>
    internal int Possible => Latest - Earliest + 1;

    /// <summary>The Tuesdays within so many weeks of the estimate, as far as they are possible.</summary>
    internal DateWindow Within(int weeks)
        => DateWindow.OfDays(
            IssueDay.DayOf(Math.Max(Earliest, Likeliest - weeks)),
            IssueDay.DayOf(Math.Min(Latest, Likeliest + weeks)));
}
