using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace Terminus.Tests.Registers;

public class TautStringTest
{
    /// <summary>
    /// The conditions of Karush, Kuhn and Tucker for the smallest sum of squared steps in a tube: the path steepens only where it
    /// touches the upper bound, and flattens only where it touches the lower one. The problem is convex, so they are enough.
    /// </summary>
    [Property(MaxTest = 500)]
    public Property ThePathStaysInTheTubeAndBendsOnlyWhereTheTubeMakesIt()
        => Prop.ForAll(Arb.From(Tubes), tube =>
        {
            (int[] lower, int[] upper) = tube;
            int last = lower.Length - 1;
            double[] path = new double[lower.Length];
            TautString.Pull(lower, upper, 0, last, path);
            for (int i = 0; i <= last; i++)
            {
                if (path[i] < lower[i] - 1e-9 || path[i] > upper[i] + 1e-9)
                {
                    return false;
                }

                double bend = i is 0 || i == last ? 0 : path[i + 1] - (2 * path[i]) + path[i - 1];
                if ((bend > 1e-9 && path[i] < upper[i] - 1e-9) || (bend < -1e-9 && path[i] > lower[i] + 1e-9))
                {
                    return false;
                }
            }

            return path[0] == lower[0] && path[last] == lower[last];
        });

    // Bounds that never fall, as those of first numbers do, and that meet at both ends.
    private static Gen<(int[] Lower, int[] Upper)> Tubes
        => from length in Gen.Choose(1, 30)
           from steps in Gen.Choose(0, 20).ArrayOf(length)
           from slack in Gen.Choose(0, 60).ArrayOf(length + 1)
           select Tube(steps, slack);

    private static (int[] Lower, int[] Upper) Tube(int[] steps, int[] slack)
    {
        int[] lower = new int[steps.Length + 1];
        int[] upper = new int[steps.Length + 1];
        for (int i = 1; i < lower.Length; i++)
        {
            lower[i] = lower[i - 1] + steps[i - 1];
        }

        for (int i = 0; i < lower.Length; i++)
        {
            bool end = i == 0 || i == steps.Length;
            upper[i] = end ? lower[i] : Math.Min(lower[steps.Length], lower[i] + slack[i]);
        }

        for (int i = upper.Length - 2; i > 0; i--)
        {
            upper[i] = Math.Min(upper[i], upper[i + 1]);
        }

        return (lower, upper);
    }
}
