namespace Terminus.Fuzz.Targets;

/// <summary>What must hold of every dating.</summary>
internal static class Lawful
{
    private const double Tolerance = 1e-9;

    /// <summary>The whole, its parts, and what is said of them.</summary>
    internal static void Piece(PieceDating dating)
    {
        Dating(dating.Dating, dating.Confidence);
        foreach (PartDating part in dating.Parts)
        {
            Dating(part.Dating, dating.Confidence);
        }

        Ordered(dating.OverHundredYears.Belief, dating.OverHundredYears.Plausibility);
        Demand.That((dating.Stated is null) == (dating.Piece.Stated is null), "A stated date is tested.");
        Demand.That(Statement.Of(dating).Length > 0, "A dating has a statement.");
    }

    /// <summary>One combination of evidence.</summary>
    internal static void Dating(Dating dating, double confidence)
    {
        Demand.That(dating.Conflict is >= 0 and <= 1, "The conflict lies from 0 to 1.");
        Interval(dating, dating.Interval(confidence));
        Interval(dating, dating.Interval(Terminus.Dating.LikelyLevel));
        foreach (DatedInterval step in dating.Steps)
        {
            Interval(dating, step);
        }

        foreach (Disagreement pair in dating.Disagreements)
        {
            Demand.That(pair.Mass is >= 0 and <= 1 && pair.DaysApart > 0, "What disagrees lies apart.");
        }

        Demand.That(!dating.Qualified || dating.Evidence.Count == 0 || dating.Readings.Count > 0, "A contradiction has its readings.");
        foreach (Evidence item in dating.Evidence)
        {
            Demand.Nested(item.StatedWindows(dating.Assumptions));
            Demand.Worded(item.Reasons);
            bool bindsAll = item is PatentIssued && item.StatedWindows(dating.Assumptions) is [{ } widest, ..] && widest.Confidence >= dating.Assumptions.FirmAt;
            Demand.That(!bindsAll || dating.Possible is not { } possible || item.StatedWindows(dating.Assumptions)[0].Window.NotBefore is not { } issued
                || possible.NotBefore >= issued, "No piece is older than the patent it bears.");
        }
    }

    private static void Interval(Dating dating, DatedInterval? interval)
    {
        if (interval is null)
        {
            return;
        }

        Ordered(interval.Belief, interval.Plausibility);
        Ordered(dating.Belief(interval.Window), dating.Plausibility(interval.Window));
        Demand.That(interval.Belief >= interval.Confidence - (2 * Tolerance), "An interval reaches its level.");
    }

    private static void Ordered(double belief, double plausibility)
        => Demand.That(belief >= 0 && belief <= plausibility + Tolerance && plausibility <= 1 + Tolerance, "0 <= belief <= plausibility <= 1.");
}
