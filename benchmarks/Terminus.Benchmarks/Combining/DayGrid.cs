using System.Numerics.Tensors;

namespace Terminus.Benchmarks.Combining;

/// <summary>
/// The usual way: the product of what each item allows on every day of a period, with vector instructions, then normalised. It is the contour,
/// not belief, and depends on the period.
/// </summary>
internal sealed class DayGrid
{
    private readonly StatedDays items;
    private readonly int firstDay;
    private readonly double[] days;

    internal DayGrid(StatedDays items, int firstDay, int lastDay)
    {
        this.items = items;
        this.firstDay = firstDay;
        days = new double[lastDay - firstDay + 1];
    }

    /// <summary>The shortest window of days that holds a share of the product.</summary>
    internal (int Low, int High) Shortest(double level)
    {
        double needed = level * Multiply();
        (int low, int high, int shortest) = (0, days.Length - 1, int.MaxValue);
        double sum = 0;
        for (int start = 0, end = 0; start < days.Length; sum -= days[start++])
        {
            while (sum < needed && end < days.Length)
            {
                sum += days[end++];
            }

            if (sum < needed)
            {
                break;
            }

            if (end - start < shortest)
            {
                (low, high, shortest) = (start, end - 1, end - start);
            }
        }

        return (firstDay + low, firstDay + high);
    }

    /// <summary>The share of the product that lies in a window.</summary>
    internal double Share(int low, int high)
    {
        double total = Multiply();
        return TensorPrimitives.Sum<double>(days.AsSpan(low - firstDay, high - low + 1)) / total;
    }

    private double Multiply()
    {
        days.AsSpan().Fill(1);
        for (int item = 0; item < items.Items; item++)
        {
            // Outside the widest window, then in each ring between a window and the next: one factor for each side.
            (int low, int high) = (0, days.Length - 1);
            foreach (StatedDay window in items[item])
            {
                int from = Math.Clamp(window.Low, firstDay, firstDay + days.Length) - firstDay;
                int to = Math.Clamp(window.High, firstDay - 1, firstDay + days.Length - 1) - firstDay;
                Scale(low, Math.Min(from - 1, high), 1 - window.Confidence);
                Scale(Math.Max(to + 1, low), high, 1 - window.Confidence);
                (low, high) = (from, to);
            }
        }

        return TensorPrimitives.Sum<double>(days);
    }

    private void Scale(int low, int high, double factor)
    {
        if (low <= high)
        {
            Span<double> ring = days.AsSpan(low, high - low + 1);
            TensorPrimitives.Multiply(ring, factor, ring);
        }
    }
}
