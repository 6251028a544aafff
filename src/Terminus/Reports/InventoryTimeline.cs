namespace Terminus;

/// <summary>The picture of many pieces.</summary>
internal static class InventoryTimeline
{
    private const double WideHeight = 5;
    private const double NarrowHeight = 8;

    internal static string Of(IReadOnlyList<PieceDating> datings)
    {
        List<PieceDating> sorted = [.. InOrder(datings)];
        int asOf = sorted.Count == 0 ? DayNumber.Of(2000, 1, 1) : sorted.Max(d => d.Dating.AsOfDay);
        var picture = new Picture(TimeScale.Over(sorted.SelectMany(d => Answers(d).Select(a => a.Window)), asOf));
        foreach (PieceDating dating in sorted)
        {
            AddRow(picture, dating);
        }

        return picture.ToSvg("Timeline of an inventory", Summary(sorted), ("usual", "the interval"), ("firm", "likely"));
    }

    /// <summary>The earliest interval first, ties by its end and then as given; those without a date last.</summary>
    internal static IEnumerable<PieceDating> InOrder(IEnumerable<PieceDating> datings)
        => datings.OrderBy(d => d.Interval is null or { IsAnyDate: true }).ThenBy(d => d.Interval?.Window.Low).ThenBy(d => d.Interval?.Window.High);

    /// <summary>How many pieces there are, and how many of them disagree or have no date.</summary>
    internal static string Summary(IReadOnlyList<PieceDating> datings)
        => $"{DateText.Digits(datings.Count)} {(datings.Count == 1 ? "piece" : "pieces")}: "
            + $"{DateText.Digits(datings.Count(d => Disagrees(d)))} with evidence that disagrees, "
            + $"{DateText.Digits(datings.Count(d => d.Interval is null or { IsAnyDate: true }))} without a date.";

    /// <summary>Whether it has a disagreement that the statement says, or is qualified.</summary>
    internal static bool Disagrees(PieceDating dating)
        => dating.Dating.Qualified || Statement.SaysDisagreement(dating.Dating);

    private static IEnumerable<(DateWindow Window, bool IsLikely)> Answers(PieceDating dating)
    {
        foreach ((DatedInterval? answer, bool isLikely) in new[] { (dating.Interval, false), (dating.Likely, true) })
        {
            if (answer is { IsAnyDate: false })
            {
                yield return (PieceTimeline.Drawn(answer.Window, dating.Dating.AsOfDay), isLikely);
            }
        }
    }

    // The wider answer as a thin hatched bar, the likely one as a thicker filled bar beneath it.
    private static void AddRow(Picture picture, PieceDating dating)
    {
        // The date stands before the title, which may be cut.
        string title = dating.Piece.Title is { } text ? " · " + text : "";
        string tooltip = PieceTimeline.NameOf(dating) + ". " + Statement.Of(dating);
        picture.Label(dating.Piece.Id + " · " + DisplayDate.Of(dating, brief: true) + title, "head", tooltip);
        foreach ((DateWindow window, bool isLikely) in Answers(dating))
        {
            string name = Likelihood.Of(isLikely ? Dating.LikelyLevel : dating.Confidence);
            picture.Bar(window, isLikely ? "firm" : "usual", isLikely ? NarrowHeight : WideHeight, name + ": " + WindowWords.Days(window));
        }

        if (Disagrees(dating))
        {
            picture.Warning(dating.Dating.Qualified ? "contradicts itself" : "disagrees");
        }

        picture.Space(4);
    }
}
