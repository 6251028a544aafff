namespace Terminus.Benchmarks.Combining;

/// <summary>Sampling: each draw takes one window of every item and notes what they have in common.</summary>
internal sealed class MonteCarlo(StatedDays items, int asOf, int draws)
{
    private readonly Dictionary<(int Low, int High), double> focal = [];
    private double total;

    /// <summary>The share of draws, of those with anything in common, that lie in a window.</summary>
    internal double Belief(int low, int high)
    {
        var random = new Random(20261125);
        for (int draw = 0; draw < draws; draw++)
        {
            (int from, int to) = (int.MinValue, asOf);
            for (int item = 0; item < items.Items && from <= to; item++)
            {
                double chance = random.NextDouble();
                foreach (StatedDay window in items[item])
                {
                    if (chance >= window.Confidence)
                    {
                        break;
                    }

                    (from, to) = (Math.Max(from, window.Low), Math.Min(to, window.High));
                }
            }

            if (from <= to)
            {
                focal[(from, to)] = focal.GetValueOrDefault((from, to)) + 1;
                total++;
            }
        }

        return FocalMass.Belief(focal, low, high) / total;
    }
}
