namespace Terminus;

/// <summary>
/// One series of a register, in which numbers rise with dates: from the rows, the earliest and the latest day of any number.
/// </summary>
/// <remarks>
/// A number is no earlier than any row that starts at or below it, and no later than any row that ends at or above it. Both bounds
/// never fall as numbers rise. Where two rows contradict each other the window covers both.
/// Finding a number is two binary searches and allocates nothing.
/// </remarks>
internal sealed class NumberSeries
{
    private readonly RegisterRow[] rows;
    private readonly Bound lows;
    private readonly Bound highs;

    /// <summary>Builds the series from its rows, which are not empty.</summary>
    internal NumberSeries(string name, IEnumerable<RegisterRow> source)
    {
        Name = name;
        rows = [.. source.OrderBy(r => r.First).ThenBy(r => r.Last)];
        First = rows[0].First;
        Last = rows.Max(r => r.Last);
        lows = Bound.OfStarts(rows);
        highs = Bound.OfEnds(rows);
    }

    internal string Name { get; }

    internal int First { get; }

    internal int Last { get; }

    /// <summary>The rows in the order of their first numbers.</summary>
    internal IReadOnlyList<RegisterRow> Rows => rows;

    internal bool Contains(int number) => number >= First && number <= Last;

    /// <summary>What the rows say of a number of the series, with what they allow for error.</summary>
    internal DateWindow Outer(int number)
    {
        int low = lows.UpTo(number);
        int high = highs.From(number);
        return lows.Outer[low] <= highs.Outer[high]
            ? DateWindow.OfDays(lows.Outer[low], highs.Outer[high])
            : Both(rows[highs.Row[high]], rows[lows.Row[low]]);
    }

    /// <summary>What the rows say of a number at their word; the outer window where they contradict each other.</summary>
    internal DateWindow Table(int number)
    {
        int low = lows.Table[lows.UpTo(number)];
        int high = highs.Table[highs.From(number)];
        return low <= high ? DateWindow.OfDays(low, high) : Outer(number);
    }

    /// <summary>The row that gives the first day of the outer window.</summary>
    internal RegisterRow LowRow(int number) => rows[lows.Row[lows.UpTo(number)]];

    /// <summary>The row that gives the last day of the outer window.</summary>
    internal RegisterRow HighRow(int number) => rows[highs.Row[highs.From(number)]];

    /// <summary>The numbers whose outer window meets a window of dates, or null where there are none.</summary>
    internal NumberRange? Numbers(DateWindow dates)
    {
        int first = Search(n => Outer(n).High >= dates.Low, First, Last);
        int last = Search(n => Outer(n).Low > dates.High, First, Last) - 1;
        return first > last ? null : new NumberRange(Name, first, last);
    }

    // The first number that passes a test which, once passed, stays passed; one more than the last where none does.
    private static int Search(Func<int, bool> passes, int low, int high)
    {
        high++;
        while (low < high)
        {
            int middle = low + ((high - low) / 2);
            if (passes(middle))
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return low;
    }

    private static DateWindow Both(RegisterRow earlier, RegisterRow later)
        => DateWindow.OfDays(earlier.Dates.FirstDay - earlier.AllowanceDays, later.Dates.LastDay + later.AllowanceDays);

    /// <summary>One side of the window as a step function of the number: at each step the tightest day and the row it is from.</summary>
    private sealed class Bound(int[] numbers, int[] outer, int[] table, int[] row)
    {
        internal int[] Outer => outer;

        internal int[] Table => table;

        internal int[] Row => row;

        internal static Bound OfStarts(RegisterRow[] rows)
        {
            int n = rows.Length;
            Bound bound = new(new int[n], new int[n], new int[n], new int[n]);
            for (int i = 0; i < n; i++)
            {
                int day = rows[i].Dates.FirstDay;
                bound.Set(i, i - 1, i, rows[i].First, day - rows[i].AllowanceDays, day, (a, b) => a > b);
            }

            return bound;
        }

        internal static Bound OfEnds(RegisterRow[] rows)
        {
            int n = rows.Length;
            int[] order = [.. Enumerable.Range(0, n).OrderBy(i => rows[i].Last)];
            Bound bound = new(new int[n], new int[n], new int[n], new int[n]);
            for (int i = n - 1; i >= 0; i--)
            {
                RegisterRow r = rows[order[i]];
                int day = r.Dates.LastDay;
                bound.Set(i, i == n - 1 ? -1 : i + 1, order[i], r.Last, day + r.AllowanceDays, day, (a, b) => a < b);
            }

            return bound;
        }

        /// <summary>The last step that starts at or below a number.</summary>
        internal int UpTo(int number)
        {
            int i = Array.BinarySearch(numbers, number);
            if (i < 0)
            {
                return Math.Max(0, ~i - 1);
            }

            while (i + 1 < numbers.Length && numbers[i + 1] == number)
            {
                i++;
            }

            return i;
        }

        /// <summary>The first step that ends at or above a number.</summary>
        internal int From(int number)
        {
            int i = Array.BinarySearch(numbers, number);
            if (i < 0)
            {
                return Math.Min(numbers.Length - 1, ~i);
            }

            while (i > 0 && numbers[i - 1] == number)
            {
                i--;
            }

            return i;
        }

        private void Set(int at, int before, int fromRow, int number, int outerDay, int tableDay, Func<int, int, bool> isTighter)
        {
            numbers[at] = number;
            bool tighter = before < 0 || isTighter(outerDay, outer[before]);
            outer[at] = tighter ? outerDay : outer[before];
            row[at] = tighter ? fromRow : row[before];
            table[at] = before < 0 || isTighter(tableDay, table[before]) ? tableDay : table[before];
        }
    }
}
