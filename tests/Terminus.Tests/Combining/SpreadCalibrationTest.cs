using NodaTime;

namespace Terminus.Tests.Combining;

/// <summary>
/// The spread claims no coverage. It is exactly calibrated in one case alone, its own definition: the combined window is drawn by its mass and the
/// day evenly inside it. There the place of the day in the spread must be even (chi-square and Kolmogorov, size 0.001).
/// </summary>
public class SpreadCalibrationTest
{
    private const int Draws = 2_000;
    private const int Bins = 20;

    private static readonly LocalDate AsOf = new(1999, 12, 31);
    private static readonly int From = DayNumber.Of(Assumptions.House.SpreadFrom, 1, 1);
    private static readonly int To = DayNumber.Of(AsOf);

    [Fact]
    public void Places_OfDaysDrawnAsTheSpreadIsDefined_AreEven()
    {
        double[] places = Places(mass => mass);
        Assert.InRange(Acceptance.ChiSquare(places, Bins), 0, Acceptance.ChiSquare20);
        Assert.InRange(Math.Sqrt(Draws) * Acceptance.Distance(places), 0, Acceptance.Kolmogorov);
    }

    [Fact]
    public void Places_OfDaysDrawnWithTheSquares_AreFoundOut()
    {
        double[] places = Places(mass => mass * mass);
        Assert.True(Acceptance.ChiSquare(places, Bins) > Acceptance.ChiSquare20);
        Assert.True(Math.Sqrt(Draws) * Acceptance.Distance(places) > Acceptance.Kolmogorov);
    }

    private static double[] Places(Func<double, double> delivered)
    {
        SplitMix64 random = new(Situation.Seed);
        return [.. Enumerable.Range(0, Draws).Select(_ =>
        {
            Opinion[] items = [.. Enumerable.Range(0, 1 + random.NextInt(3)).Select(_ => Witness(random))];
            (int low, int high) = Combined(items, delivered, random);
            return Place(Dating.Of(items, AsOf).Spread, low + random.NextInt(high - low + 1), random.NextDouble());
        })];
    }

    // Windows of the beginning of the period, so that a day drawn too often outside them shows at one end.
    private static Opinion Witness(SplitMix64 random)
    {
        int low = From + 3_000 + random.NextInt(20_000);
        int high = low + 1_000 + random.NextInt(10_000);
        double wide = 0.5 + (0.4 * random.NextDouble());
        return new Opinion([
            new StatedWindow(DateWindow.OfDays(low, high), wide), new StatedWindow(DateWindow.OfDays(low + 200, low + 800), wide * random.NextDouble())]);
    }

    // Dempster's rule as a story: each item speaks with one of its windows or with none, again until they meet.
    private static (int Low, int High) Combined(Opinion[] items, Func<double, double> delivered, SplitMix64 random)
    {
        while (true)
        {
            (int low, int high) = (From, To);
            foreach (Opinion item in items)
            {
                double luck = random.NextDouble();
                foreach (StatedWindow window in item.Windows.Where(w => luck < delivered(w.Confidence)))
                {
                    (low, high) = (Math.Max(low, window.Window.Low), Math.Min(high, window.Window.High));
                }
            }

            if (low <= high)
            {
                return (low, high);
            }
        }
    }

    // The mass before a day and a random part of the day's own.
    private static double Place(Spread spread, int day, double part)
        => spread.Cells.Sum(cell => cell.Mass * Math.Clamp((day + part - cell.Window.Low) / (cell.Window.High - cell.Window.Low + 1), 0, 1));
}
