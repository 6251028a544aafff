using NodaTime;

namespace Terminus.Tests.Combining;

/// <summary>A simulated piece: the day it was made and the answer that its evidence gives.</summary>
internal sealed record SimulatedPiece(int TrueDay, Dating Dating);

/// <summary>How the evidence of a simulation errs.</summary>
/// <param name="Delivered">What share of items is right that state a confidence; the confidence itself where evidence is as good as it says.</param>
/// <param name="MissYears">The most years by which a window that is wrong misses the true day; null for any miss.</param>
internal sealed record Erring(Func<double, double> Delivered, int? MissYears = null)
{
    internal static Erring AsStated { get; } = new(stated => stated);
}

/// <summary>
/// The declared generator of pieces. The true day is drawn evenly from 1850 to 1929. For each item the innermost of its windows that is true is
/// drawn with the masses that the item states; then the item is moved in time so that exactly that window is the innermost that holds the
/// true day, evenly over all places within <see cref="ReachYears"/>. So each window holds it exactly as often as stated, and items err independently.
/// </summary>
internal sealed class Simulation(SplitMix64 random, Erring erring)
{
    internal const double DaysInYear = 365.2425;

    private const int ReachYears = 80;
    private const int MostTries = 1_000;

    private static readonly int FirstDay = DayNumber.Of(1850, 1, 1);
    private static readonly int LastDay = DayNumber.Of(1929, 12, 31);

    internal static LocalDate AsOf { get; } = new(2026, 11, 25);

    /// <summary>A piece with some independent items of evidence, of kinds that are drawn one by one.</summary>
    internal SimulatedPiece Next(int items, Func<SplitMix64, Func<int, Evidence>> kind)
    {
        int trueDay = TrueDay();
        return new SimulatedPiece(trueDay, Dating.Of([.. Enumerable.Range(0, items).Select(_ => Witness(kind(random), trueDay))], AsOf));
    }

    /// <summary>A day from the prior.</summary>
    internal int TrueDay() => FirstDay + random.NextInt(LastDay - FirstDay + 1);

    /// <summary>An item anchored so that each of its windows is right or wrong as drawn.</summary>
    internal Evidence Witness(Func<int, Evidence> anchored, int trueDay)
    {
        IReadOnlyList<StatedWindow> windows = anchored(trueDay).StatedWindows();
        double luck = random.NextDouble();
        int right = windows.Count(w => luck < erring.Delivered(w.Confidence));
        IReadOnlyList<(long From, long To)> places = Places(windows, right, trueDay);
        for (int i = 0; i < MostTries; i++)
        {
            // Dates known to the year do not move by days, so what comes out is looked at again.
            Evidence item = anchored((int)(trueDay - (Draw(places) - trueDay)));
            if (item.StatedWindows().Count(w => w.Window.Low <= trueDay && trueDay <= w.Window.High) == right)
            {
                return item;
            }
        }

        throw new InvalidOperationException($"No place was found for {anchored(trueDay)}.");
    }

    // The days that lie in just so many of an item's windows: inside the innermost of them, on either side of the next.
    private IReadOnlyList<(long From, long To)> Places(IReadOnlyList<StatedWindow> windows, int right, int trueDay)
    {
        const long Reach = (long)(ReachYears * DaysInYear);
        DateWindow inside = right == 0 ? DateWindow.Any : windows[right - 1].Window;
        (long from, long to) = (Math.Max(inside.Low, trueDay - Reach), Math.Min(inside.High, trueDay + Reach));
        if (right == windows.Count)
        {
            return [(from, to)];
        }

        DateWindow outside = windows[right].Window;
        long miss = (long)((erring.MissYears ?? ReachYears) * DaysInYear);
        (long From, long To)[] sides = [(Math.Max(from, outside.Low - miss), outside.Low - 1L), (outside.High + 1L, Math.Min(to, outside.High + miss))];
        return [.. sides.Where(side => side.From <= side.To)];
    }

    private long Draw(IReadOnlyList<(long From, long To)> places)
    {
        long day = (long)(random.NextDouble() * places.Sum(p => p.To - p.From + 1));
        foreach ((long from, long to) in places)
        {
            if (from + day <= to)
            {
                return from + day;
            }

            day -= to - from + 1;
        }

        throw new InvalidOperationException("There is no place.");
    }
}
