namespace Terminus;

/// <summary>
/// The register of one office and right: from a number the window of its date, and from a window the numbers. Built from rows.
/// </summary>
/// <remarks>Immutable and safe on any thread.</remarks>
public sealed class Register
{
    private readonly NumberSeries[] series;
    private readonly IssueCurve? curve;

    /// <summary>Builds a register from its rows.</summary>
    /// <param name="office">The office as a code of WIPO standard ST.3, such as <c>US</c>.</param>
    /// <param name="right">The right, such as <c>patent</c> or <c>registered-design</c>.</param>
    /// <param name="rows">The rows, at least one, in any order. Rows that contradict each other widen the windows.</param>
    /// <exception cref="ArgumentException">There are no rows.</exception>
    public Register(string office, string right, IEnumerable<RegisterRow> rows)
    {
        Office = RegisterSet.OfficeCode(Guard.NotNull(office, nameof(office)));
        Right = RegisterSet.RightName(Guard.NotNull(right, nameof(right)));
        Rows = ValueList.Of(Guard.NotNull(rows, nameof(rows)));
        if (Rows.Count == 0)
        {
            throw new ArgumentException("A register has at least one row.", nameof(rows));
        }

        bool byTuesday = Office == "US" && Right is "utility" or "design" or "reissue" or "plant";
        IEnumerable<RegisterRow> table = Rows;
        if (byTuesday && Rows.Any(r => r.Dates.Days > 1))
        {
            // Single days only place a number inside its year: one slip among them must not move the outer window. A day before all years stands for itself.
            int first = Rows.Where(r => r.Dates.Days > 1).Min(r => r.First);
            table = Rows.Where(r => r.Dates.Days > 1 || r.Last < first);
        }

        series = [.. table.GroupBy(r => r.Series, StringComparer.Ordinal).Select(g => new NumberSeries(g.Key, g)).OrderBy(s => s.First)];
        IssuesOnTuesdays = byTuesday && series.Length == 1;
        curve = IssuesOnTuesdays ? IssueCurve.Of(series[0], Rows.Where(r => r.Dates.Days == 1)) : null;
    }

    /// <summary>The office as a code of WIPO standard ST.3.</summary>
    public string Office { get; }

    /// <summary>The right.</summary>
    public string Right { get; }

    /// <summary>The rows that the register was built from.</summary>
    public IReadOnlyList<RegisterRow> Rows { get; }

    /// <summary>Whether the days of issue are estimated by week: the US patents, designs, reissues and plant patents.</summary>
    internal bool IssuesOnTuesdays { get; }

    /// <summary>The series in the order of their first numbers; where an office counts anew each year, one a year.</summary>
    internal IReadOnlyList<NumberSeries> Series => series;

    /// <summary>The outer window of a number. Two binary searches, and nothing is allocated.</summary>
    /// <param name="number">The number.</param>
    /// <param name="window">The window; where several series hold the number it covers them all.</param>
    /// <returns>False where no series holds the number.</returns>
    public bool TryWindow(int number, out DateWindow window)
    {
        int low = int.MaxValue;
        int high = int.MinValue;
        foreach (NumberSeries one in series)
        {
            if (one.Contains(number))
            {
                DateWindow outer = one.Outer(number);
                low = Math.Min(low, outer.Low);
                high = Math.Max(high, outer.High);
            }
        }

        window = low <= high ? DateWindow.OfDays(low, high) : DateWindow.Any;
        return low <= high;
    }

    /// <summary>The numbers whose outer window meets a window of dates, one range for each series that has any.</summary>
    /// <param name="dates">The window of dates.</param>
    public IReadOnlyList<NumberRange> Numbers(DateWindow dates)
        => ValueList.Of(series.Select(s => s.Numbers(dates)).OfType<NumberRange>().Select(r => WithLikely(r, dates)));

    /// <summary>Reads a number as people type it, whole or in part; see <see cref="RegisterSet.Read"/>.</summary>
    /// <param name="number">The number, such as <c>2,474,442</c>, <c>2,4?4,1?2</c> or <c>10811/97</c>.</param>
    public NumberReading Read(string number)
        => NumberText.TryRead(Guard.NotNull(number, nameof(number)), out NumberPattern pattern)
            ? Read(pattern)
            : RegisterReader.NotANumber(Office, Right, number);

    private NumberRange WithLikely(NumberRange range, DateWindow dates)
        => curve is not null && curve.TryNumbers(dates, out int lowest, out int highest)
            ? range with { Likely = new NumberRange(range.Series, lowest, highest) }
            : range;

    internal NumberReading Read(NumberPattern pattern) => new RegisterReader(this, pattern).Read();

    /// <summary>The weeks in which a number can have issued; false where days of issue are not estimated.</summary>
    internal bool TryLocate(int number, out IssueWeeks weeks)
    {
        weeks = default;
        return curve is not null && curve.TryLocate(number, out weeks);
    }
}
