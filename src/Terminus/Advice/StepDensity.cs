namespace Terminus;

/// <summary>
/// A probability density that is even inside each of its cells, which follow one another without gaps. All its sums are exact but for
/// the rounding of doubles: nothing is sampled.
/// </summary>
/// <remarks>Widths have any one unit. Masses are made to sum to one; a cell may have none.</remarks>
internal sealed class StepDensity
{
    // Masses that differ by less are the same end of an interval.
    private const double Tolerance = 1e-12;

    private readonly double[] widths;
    private readonly double[] masses;

    /// <param name="widths">The widths of the cells, each above 0.</param>
    /// <param name="masses">Their masses, of which one at least is above 0.</param>
    internal StepDensity(IEnumerable<double> widths, IEnumerable<double> masses)
    {
        this.widths = [.. widths];
        this.masses = [.. masses];
        double total = this.masses.Sum();
        for (int i = 0; i < this.masses.Length; i++)
        {
            this.masses[i] /= total;
        }

        Entropy = this.masses.Select((mass, i) => mass > 0 ? mass * Log2(this.widths[i] / mass) : 0).Sum();
    }

    /// <summary>The masses of the cells, which sum to one.</summary>
    internal IReadOnlyList<double> Masses => masses;

    /// <summary>The differential entropy in bits: the logarithm of the width of the even density that is as uncertain.</summary>
    internal double Entropy { get; }

    /// <summary>The width of the cells with mass, with the empty ones between them.</summary>
    internal double Support
    {
        get
        {
            int first = Array.FindIndex(masses, m => m > 0);
            int last = Array.FindLastIndex(masses, m => m > 0);
            return widths.Skip(first).Take(last - first + 1).Sum();
        }
    }

    /// <summary>The same cells with each mass weighted anew.</summary>
    internal StepDensity Times(IReadOnlyList<double> weights) => new(widths, masses.Select((mass, i) => mass * weights[i]));

    /// <summary>The width of the shortest stretch that holds a share of the mass.</summary>
    /// <remarks>
    /// While both ends move inside cells its width changes evenly, so a shortest stretch has an end on the edge of a cell.
    /// </remarks>
    /// <param name="share">Above 0 and at most 1.</param>
    internal double ShortestWidth(double share)
    {
        double[] backwards = [.. masses];
        double[] backwardWidths = [.. widths];
        Array.Reverse(backwards);
        Array.Reverse(backwardWidths);
        return Math.Min(ShortestFromEdges(masses, widths, share), ShortestFromEdges(backwards, backwardWidths, share));
    }

    // The shortest stretch that starts on the edge of a cell: two pointers, since the end never moves back as the start moves on.
    private static double ShortestFromEdges(double[] masses, double[] widths, double share)
    {
        double shortest = double.PositiveInfinity;
        double held = 0;
        double width = 0;
        for (int start = 0, end = 0; start < masses.Length; start++)
        {
            while (held < share - Tolerance && end < masses.Length)
            {
                held += masses[end];
                width += widths[end++];
            }

            if (held < share - Tolerance)
            {
                break;
            }

            double spare = held - share;
            double cut = end > start && masses[end - 1] > 0 ? Math.Max(0, spare) / masses[end - 1] * widths[end - 1] : 0;
            shortest = Math.Min(shortest, width - cut);
            held -= masses[start];
            width -= widths[start];
        }

        return shortest;
    }

    /// <summary>The logarithm to base 2.</summary>
    internal static double Log2(double value) => Math.Log(value) / Math.Log(2);
}
