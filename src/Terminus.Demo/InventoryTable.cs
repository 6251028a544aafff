using System.Text;

namespace Terminus.Demo;

/// <summary>A table of dated pieces for people, at most 100 columns wide, with open ends in words.</summary>
internal static class InventoryTable
{
    private const int TitleWidth = 35;

    internal static string Of(IReadOnlyList<PieceDating> dated)
    {
        var text = new StringBuilder();
        Line(text, "piece", "what it is", "not before", "very likely (0.9)", "likely (0.66)", "disagrees");
        text.Append('\n').Append('-', 99).Append('\n');
        foreach (PieceDating dating in dated)
        {
            Line(
                text,
                dating.Piece.Id,
                dating.Piece.Title ?? "",
                dating.Dating.Possible is { } possible ? possible.NotBefore is { } first ? Year(first.Year) : "–" : "contradiction",
                Words(dating.Interval),
                Words(dating.Likely),
                Disagrees(dating));
            text.Append('\n');
        }

        return text.ToString().TrimEnd('\n');
    }

    private static string Disagrees(PieceDating dating)
    {
        if (dating.Dating.Qualified)
        {
            return "YES";
        }

        double most = dating.Dating.Disagreements.Count == 0 ? 0 : dating.Dating.Disagreements[0].Mass;
        return most >= dating.Dating.Assumptions.SaidFrom ? "yes" : most > 0 ? "a little" : "no";
    }

    private static string Words(DatedInterval? interval)
        => interval is null ? "no single date"
            : interval.IsAnyDate ? "any date"
            : interval.EarliestYear is not { } first ? interval.LatestYear is var last ? Year(last) + " or earlier" : ""
            : interval.EndsToday ? Year(first) + " or later"
            : first == interval.LatestYear ? Year(first)
            : Year(first) + "–" + Year(interval.LatestYear);

    private static string Year(int year) => year.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static void Line(StringBuilder text, string id, string title, string notBefore, string interval, string likely, string disagrees)
        => text
            .Append(Cell(id, 7))
            .Append(Cell(title, TitleWidth))
            .Append(Cell(notBefore, 14))
            .Append(Cell(interval, 18))
            .Append(Cell(likely, 16))
            .Append(disagrees);

    private static string Cell(string value, int width)
        => (value.Length < width ? value : value[..(width - 2)] + "…").PadRight(width);
}
