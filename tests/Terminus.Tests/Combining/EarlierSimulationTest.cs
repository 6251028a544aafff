using NodaTime;

namespace Terminus.Tests.Combining;

/// <summary>
/// Single windows against the figures of an earlier simulation with another program, 1,500 cases a row, printed to two digits: what the interval at
/// 0.9 covers and how wide it is, in a period of 100 with windows of 6 to 60 and reliabilities of 0.6, 0.75, 0.9 and 0.97.
/// </summary>
/// <remarks>
/// The figures come without the law of the widths. Drawn evenly in the logarithm and cut to the period they give the same coverage, and widths
/// about a tenth smaller; so coverage is checked within the error of both simulations, and widths to a sixth.
/// </remarks>
public class EarlierSimulationTest
{
    private const int Cases = 4_000;
    private const int DaysInUnit = 100;
    private const int Period = 100 * DaysInUnit;

    private static readonly double[] Reliabilities = [0.6, 0.75, 0.9, 0.97];
    private static readonly int Start = DayNumber.Of(1900, 1, 1);
    private static readonly LocalDate AsOf = DayNumber.ToDate(Start + Period - 1);

    // Firm evidence bounds nothing here: the earlier simulation knew only the shortest window.
    private static readonly Assumptions NothingFirm = Assumptions.House with { FirmAt = 1 };

    [Theory]
    [InlineData(1, .98, 63)]
    [InlineData(3, .99, 26)]
    [InlineData(5, 1.00, 15)]
    public void Interval_OfSingleWindows_CoversWhatTheEarlierSimulationFound(int windows, double coverage, double width)
    {
        SplitMix64 random = new(Situation.Seed);
        (int hits, double units) = (0, 0);
        for (int i = 0; i < Cases; i++)
        {
            int trueDay = Start + random.NextInt(Period);
            Dating dating = Dating.Of([.. Enumerable.Range(0, windows).Select(_ => Window(random, trueDay))], AsOf, NothingFirm);
            DateWindow interval = dating.Interval(0.9)!.Window;
            hits += interval.Low <= trueDay && trueDay <= interval.High ? 1 : 0;
            units += (double)(interval.High - Math.Max(interval.Low, Start) + 1) / DaysInUnit;
        }

        // Size 0.001 on both simulations, and half a hundredth of rounding. A share printed as 1.00 may have been 0.995.
        double share = Math.Min(coverage, 0.995);
        double error = 3.2905 * Math.Sqrt(share * (1 - share) * ((1.0 / Cases) + (1.0 / 1_500)));
        Assert.InRange((double)hits / Cases, coverage - error - 0.005, 1);
        Assert.InRange(units / Cases, width * 5 / 6, width * 7 / 6);
    }

    // It found 0.63 with eight advertisements counted as eight, and does not say how far apart they lie: ours agree when they lie within a year.
    [Fact]
    public void Interval_OfEightAdvertisementsWithinAYear_CoversWhatTheEarlierSimulationFound()
    {
        SplitMix64 random = new(Situation.Seed);
        var causes = new SharedCauses(random);
        Coverage coverage = Coverage.Of(() => causes.AdvertsOfOneModel(merged: false, SimulatedEvidence.Years(random, 0, 1)));
        double error = 3.2905 * Math.Sqrt(.63 * .37 * ((1.0 / Coverage.Pieces) + (1.0 / 1_500)));
        Assert.InRange((double)coverage.Hits[2] / Coverage.Pieces, .63 - error - 0.005, .63 + error + 0.005);
    }

    private static Opinion Window(SplitMix64 random, int trueDay)
    {
        int days = (int)(6 * Math.Pow(10, random.NextDouble()) * DaysInUnit);
        double reliability = Reliabilities[random.NextInt(Reliabilities.Length)];
        int low = random.NextDouble() < reliability
            ? trueDay - random.NextInt(days)
            : Start - (days / 2) + random.NextInt(Period);
        int high = Math.Min(low + days - 1, Start + Period - 1);
        return new Opinion(DateWindow.OfDays(Math.Max(low, Start), high), reliability);
    }
}
