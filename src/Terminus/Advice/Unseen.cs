namespace Terminus;

/// <summary>What no evidence of a kind can show, as a caution for each kind that a piece has.</summary>
internal static class Unseen
{
    /// <summary>One caution a kind, in the order in which the kinds are met.</summary>
    internal static IEnumerable<Reason> Of(PieceDating dating)
        => dating.Dating.Evidence.Concat(dating.LeftOut).Select(e => e.Kind).Distinct(StringComparer.Ordinal).Select(kind => new Reason("unseen." + kind));
}
