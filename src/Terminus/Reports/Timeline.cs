namespace Terminus;

/// <summary>Dated pieces as pictures in SVG.</summary>
/// <remarks>
/// A picture is as wide as the place it is put in and carries its own style for light and dark, a title and a description. The look is no promise;
/// the facts are those of <see cref="ResultDocument"/>.
/// </remarks>
public static class Timeline
{
    /// <summary>One piece: what is possible, the answers, the spread, and each item's nested windows by part.</summary>
    /// <param name="dating">The dated piece.</param>
    public static string ToSvg(PieceDating dating) => PieceTimeline.Of(Guard.NotNull(dating, nameof(dating)));

    /// <summary>Many pieces, one row each, the earliest first; those without a date come last.</summary>
    /// <param name="datings">The dated pieces.</param>
    public static string ToSvg(IEnumerable<PieceDating> datings) => InventoryTimeline.Of([.. Guard.NotNull(datings, nameof(datings))]);
}
