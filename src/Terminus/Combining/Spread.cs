using NodaTime;

namespace Terminus;

/// <summary>A stretch of days over which the spread is even.</summary>
public readonly struct SpreadCell : IEquatable<SpreadCell>
{
    internal SpreadCell(DateWindow window, double mass)
    {
        Window = window;
        Mass = mass;
    }

    /// <summary>The days, both ends closed.</summary>
    public DateWindow Window { get; }

    /// <summary>The mass on them, from 0 to 1.</summary>
    public double Mass { get; }

    /// <inheritdoc/>
    public bool Equals(SpreadCell other) => Window == other.Window && Mass.Equals(other.Mass);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is SpreadCell other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Window.GetHashCode() * 397) ^ Mass.GetHashCode());

    /// <summary>Whether two cells are the same.</summary>
    public static bool operator ==(SpreadCell left, SpreadCell right) => left.Equals(right);

    /// <summary>Whether two cells differ.</summary>
    public static bool operator !=(SpreadCell left, SpreadCell right) => !left.Equals(right);
}

/// <summary>
/// The pignistic density: the mass of each combined window spread evenly over its days, from a house year to the day of the
/// opinion. For pictures, medians and the worth of a question; never a confidence.
/// </summary>
/// <remarks>Source: Smets and Kennes, The transferable belief model, Artificial Intelligence 66 (1994), from memory.</remarks>
public sealed class Spread
{
    private readonly ValueList<SpreadCell> cells;

    internal Spread(Combination combination, int from, int asOf)
    {
        if (combination.IsContradiction || from > asOf)
        {
            cells = ValueList<SpreadCell>.Empty;
            Before = combination.IsContradiction ? 0 : 1;
            return;
        }

        // Breaks are the first days of cells; the density of a combined window is added at its first day and taken off after its last.
        List<int> starts = Distinct(combination.Ends, 0, combination.Ends.Starts, int.MinValue);
        List<int> ends = Distinct(combination.Ends, combination.Ends.Starts, combination.Ends.Count, asOf);
        var changes = new SortedDictionary<int, double> { [from] = 0, [asOf + 1] = 0 };
        foreach (int start in starts)
        {
            foreach (int end in ends)
            {
                double mass = start > end ? 0 : Mass(combination, starts, ends, start, end) / combination.Total;
                if (end < from)
                {
                    Before += mass;
                }
                else if (mass > 0)
                {
                    int first = Math.Max(start, from);
                    double density = mass / (end - first + 1);
                    Add(changes, first, density);
                    Add(changes, end + 1, -density);
                }
            }
        }

        cells = ValueList.Of(ToCells(changes));
    }

    /// <summary>The cells in order, without gaps, from the house year to the day of the opinion; none where the conflict is total.</summary>
    public IReadOnlyList<SpreadCell> Cells => cells;

    /// <summary>The mass that ends before the period, which is not spread.</summary>
    public double Before { get; }

    /// <summary>The day before and on which half of the spread mass lies, or null where there is none.</summary>
    public LocalDate? Median => Quantile(0.5);

    /// <summary>The first day up to which a share of the spread mass lies, or null where there is none.</summary>
    /// <param name="share">From 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share lies outside [0, 1].</exception>
    public LocalDate? Quantile(double share)
    {
        Guard.Confidence(share, nameof(share));
        double wanted = share * cells.Sum(c => c.Mass);
        double sum = 0;
        foreach (SpreadCell cell in cells)
        {
            if (cell.Mass > 0 && sum + cell.Mass >= wanted - 1e-12)
            {
                int days = cell.Window.LastDay - cell.Window.FirstDay + 1;
                int into = (int)Math.Ceiling((wanted - sum) / cell.Mass * days - 1e-9);
                return DayNumber.ToDate(cell.Window.FirstDay + Math.Min(days, Math.Max(1, into)) - 1);
            }

            sum += cell.Mass;
        }

        return null;
    }

    /// <summary>The spread mass inside a window, from 0 to 1.</summary>
    public double MassIn(DateWindow window)
    {
        double mass = 0;
        foreach (SpreadCell cell in cells)
        {
            if (cell.Window.Intersect(window) is { } common)
            {
                mass += cell.Mass * common.Days!.Value / cell.Window.Days!.Value;
            }
        }

        return mass;
    }

    private static double Mass(Combination combination, List<int> starts, List<int> ends, int start, int end)
    {
        // Second differences of P(start <= a, end >= b) over neighbouring ends.
        int startIndex = starts.BinarySearch(start);
        int endIndex = ends.BinarySearch(end);
        int? earlier = startIndex > 0 ? starts[startIndex - 1] : null;
        int? later = endIndex < ends.Count - 1 ? ends[endIndex + 1] : null;
        double mass = Joint(combination, start, end) - Joint(combination, start, later)
            - Joint(combination, earlier, end) + Joint(combination, earlier, later);
        return Math.Max(0, mass);
    }

    private static double Joint(Combination combination, int? startedBy, int? notEndedBefore)
        => startedBy is { } a && notEndedBefore is { } b ? combination.Joint(a, b) : 0;

    private static List<int> Distinct(WindowEnds all, int from, int to, int extra)
    {
        var days = new SortedSet<int> { extra };
        for (int i = from; i < to; i++)
        {
            days.Add(all.Day(i));
        }

        return [.. days];
    }

    private static void Add(SortedDictionary<int, double> changes, int day, double density)
        => changes[day] = (changes.TryGetValue(day, out double already) ? already : 0) + density;

    private static List<SpreadCell> ToCells(SortedDictionary<int, double> changes)
    {
        var result = new List<SpreadCell>(changes.Count);
        double density = 0;
        int? first = null;
        foreach (KeyValuePair<int, double> change in changes)
        {
            if (first is { } start)
            {
                result.Add(new SpreadCell(DateWindow.OfDays(start, change.Key - 1), Math.Max(0, density) * (change.Key - start)));
            }

            density += change.Value;
            first = change.Key;
        }

        return result;
    }
}
