namespace Terminus;

/// <summary>Which dated numbers and which starts of years a curve of weekly issues can rest on.</summary>
internal static class IssueKnots
{
    /// <summary>
    /// The dated numbers that fall on a Tuesday and inside the window of their year, and of these the largest set in which dates
    /// rise with numbers, in that order.
    /// </summary>
    internal static List<Knot> Sound(NumberSeries table, IEnumerable<RegisterRow> dated)
    {
        var knots = new List<Knot>();
        foreach (RegisterRow row in dated)
        {
            int day = row.Dates.FirstDay;
            if (day < IssueDay.FirstTuesday || (day - IssueDay.FirstTuesday) % 7 != 0)
            {
                continue;
            }

            Add(row.First);
            if (row.Last != row.First)
            {
                Add(row.Last);
            }

            void Add(int number)
            {
                if (table.Contains(number) && table.Outer(number).ContainsDay(day))
                {
                    knots.Add(new Knot(number, IssueDay.IndexOf(day)));
                }
            }
        }

        // Of several weeks of one number no two rise, so one of them stays.
        knots.Sort((a, b) => a.Number != b.Number ? a.Number.CompareTo(b.Number) : b.Week.CompareTo(a.Week));
        return Rising(knots);
    }

    /// <summary>
    /// The starts of years that are known to fall on the first Tuesday, and the end of the table; without those that the dated
    /// numbers contradict.
    /// </summary>
    internal static List<Knot> Starts(NumberSeries table, List<Knot> knots)
    {
        var starts = new List<Knot>();
        IReadOnlyList<RegisterRow> rows = table.Rows;
        for (int i = 1; i < rows.Count; i++)
        {
            RegisterRow before = rows[i - 1];
            RegisterRow row = rows[i];
            if (before.Last + 1 == row.First && before.Dates.LastDay < row.Dates.FirstDay)
            {
                Add(new Knot(row.First, IssueDay.IndexOf(IssueDay.OnOrAfter(row.Dates.FirstDay))));
            }
        }

        RegisterRow end = rows[rows.Count - 1];
        Add(new Knot(end.Last + 1, IssueDay.IndexOf(end.Dates.LastDay) + 1));
        return starts;

        void Add(Knot start)
        {
            Knot last = starts.Count == 0 ? default : starts[starts.Count - 1];
            bool rises = starts.Count == 0 || (start.Number >= last.Number && start.Week > last.Week);
            if (start.Week >= 0 && rises && Agrees(start, knots))
            {
                starts.Add(start);
            }
        }
    }

    // Every number below the start is dated in an earlier week, and every other in its week or later.
    private static bool Agrees(Knot start, List<Knot> knots)
    {
        int i = knots.BinarySearch(start, Comparer<Knot>.Create((a, b) => a.Number.CompareTo(b.Number)));
        i = i < 0 ? ~i : i;
        while (i > 0 && knots[i - 1].Number == start.Number)
        {
            i--;
        }

        return (i == 0 || knots[i - 1].Week < start.Week) && (i == knots.Count || knots[i].Week >= start.Week);
    }

    // The longest subsequence whose weeks never fall, by patience sorting.
    private static List<Knot> Rising(List<Knot> knots)
    {
        var ends = new List<int>();
        int[] previous = new int[knots.Count];
        for (int i = 0; i < knots.Count; i++)
        {
            int low = 0;
            int high = ends.Count;
            while (low < high)
            {
                int middle = (low + high) / 2;
                if (knots[ends[middle]].Week <= knots[i].Week)
                {
                    low = middle + 1;
                }
                else
                {
                    high = middle;
                }
            }

            previous[i] = low == 0 ? -1 : ends[low - 1];
            if (low == ends.Count)
            {
                ends.Add(i);
            }
            else
            {
                ends[low] = i;
            }
        }

        var rising = new List<Knot>();
        for (int i = ends.Count == 0 ? -1 : ends[ends.Count - 1]; i >= 0; i = previous[i])
        {
            rising.Add(knots[i]);
        }

        rising.Reverse();
        return rising;
    }
}
