namespace Terminus;

/// <summary>
/// The shortest path through a tube: between a lower and an upper bound at each step, from a first to a last point that are fixed.
/// </summary>
/// <remarks>
/// Of all paths in the tube it also has the smallest sum of squared steps, so it is the evenest weekly output that agrees with
/// everything known (Davies and Kovac, Annals of Statistics 29, 2001, use it so).
/// </remarks>
internal static class TautString
{
    /// <summary>Writes the path from <paramref name="from"/> to <paramref name="to"/> into <paramref name="path"/>.</summary>
    /// <param name="lower">The lower bounds; at both ends equal to the upper.</param>
    /// <param name="upper">The upper bounds.</param>
    /// <param name="from">The first step.</param>
    /// <param name="to">The last step, later than the first.</param>
    /// <param name="path">Receives a value for each step from the first to the last.</param>
    internal static void Pull(int[] lower, int[] upper, int from, int to, double[] path)
    {
        int at = from;
        double height = lower[from];
        path[from] = height;
        while (at < to)
        {
            (int knee, double kneeHeight) = Knee(lower, upper, at, height, to);
            double slope = (kneeHeight - height) / (knee - at);
            for (int i = at + 1; i < knee; i++)
            {
                path[i] = height + (slope * (i - at));
            }

            path[knee] = kneeHeight;
            at = knee;
            height = kneeHeight;
        }
    }

    /// <summary>Where a string pulled from a point first bends: the corner of the tube that stops the view ahead.</summary>
    private static (int At, double Height) Knee(int[] lower, int[] upper, int at, double height, int to)
    {
        double floor = double.NegativeInfinity;
        double ceiling = double.PositiveInfinity;
        int floorAt = at + 1;
        int ceilingAt = at + 1;
        for (int i = at + 1; i <= to; i++)
        {
            double toLower = (lower[i] - height) / (i - at);
            double toUpper = (upper[i] - height) / (i - at);
            if (toLower > ceiling)
            {
                return (ceilingAt, upper[ceilingAt]);
            }

            if (toUpper < floor)
            {
                return (floorAt, lower[floorAt]);
            }

            if (toLower >= floor)
            {
                floor = toLower;
                floorAt = i;
            }

            if (toUpper <= ceiling)
            {
                ceiling = toUpper;
                ceilingAt = i;
            }
        }

        return (to, lower[to]);
    }
}
