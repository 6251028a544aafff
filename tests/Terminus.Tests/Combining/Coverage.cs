namespace Terminus.Tests.Combining;

/// <summary>How often the intervals of simulated pieces hold the true day, and how wide they are; beside them a plain intersection of windows.</summary>
internal sealed class Coverage
{
    /// <summary>Pieces of a simulation, and the levels looked at with the same draws.</summary>
    internal const int Pieces = 2_000;

    internal static readonly double[] Levels = [0.5, 0.8, 0.9, 0.95];

    // Widths count from here to the day of the opinion, so that an open end has one.
    private static readonly int PeriodStart = DayNumber.Of(1800, 1, 1);

    private readonly int[] hits = new int[Levels.Length];
    private readonly double[] years = new double[Levels.Length];

    private Coverage()
    {
    }

    /// <summary>How many intervals hold the true day, by level.</summary>
    internal IReadOnlyList<int> Hits => hits;

    /// <summary>The mean width of the intervals in years, by level.</summary>
    internal IReadOnlyList<double> Years => [.. years.Select(y => y / Pieces)];

    /// <summary>What the items' widest windows have in common.</summary>
    internal Intersection Widest { get; } = new();

    /// <summary>What the items' narrowest windows have in common.</summary>
    internal Intersection Narrowest { get; } = new();

    /// <summary>Simulates <see cref="Pieces"/> pieces.</summary>
    internal static Coverage Of(Func<SimulatedPiece> next)
    {
        var coverage = new Coverage();
        for (int i = 0; i < Pieces; i++)
        {
            coverage.Add(next());
        }

        return coverage;
    }

    private void Add(SimulatedPiece piece)
    {
        for (int level = 0; level < Levels.Length; level++)
        {
            if (piece.Dating.Interval(Levels[level]) is { } interval)
            {
                hits[level] += interval.Window.Low <= piece.TrueDay && piece.TrueDay <= interval.Window.High ? 1 : 0;
                years[level] += Width(interval.Window.Low, interval.Window.High, piece.Dating.AsOfDay);
            }
        }

        Widest.Add(piece, windows => windows[0]);
        Narrowest.Add(piece, windows => windows[^1]);
    }

    private static double Width(int low, int high, int asOf) => (Math.Min(high, asOf) - Math.Max(low, PeriodStart) + 1) / Simulation.DaysInYear;

    /// <summary>What a user gets who intersects windows and asks for no confidence.</summary>
    internal sealed class Intersection
    {
        private double years;

        /// <summary>How many intersections hold the true day.</summary>
        internal int Hits { get; private set; }

        /// <summary>How many are empty, and so no answer.</summary>
        internal int Empty { get; private set; }

        /// <summary>The mean width in years of those that are not empty.</summary>
        internal double Years => years / (Pieces - Empty);

        internal void Add(SimulatedPiece piece, Func<IReadOnlyList<StatedWindow>, StatedWindow> choose)
        {
            (int low, int high) = (int.MinValue, piece.Dating.AsOfDay);
            foreach (IReadOnlyList<StatedWindow> windows in piece.Dating.Evidence.Select(e => e.StatedWindows()).Where(w => w.Count > 0))
            {
                DateWindow chosen = choose(windows).Window;
                (low, high) = (Math.Max(low, chosen.Low), Math.Min(high, chosen.High));
            }

            Hits += low <= piece.TrueDay && piece.TrueDay <= high ? 1 : 0;
            Empty += low > high ? 1 : 0;
            years += low > high ? 0 : Width(low, high, piece.Dating.AsOfDay);
        }
    }
}
