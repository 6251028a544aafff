using System.Globalization;
using Terminus.Tests.Combining;

namespace Terminus.Tests.Docs;

/// <summary>The tables of docs/calibration.md are what the simulations give; a page that differs is left in the folder <c>received</c>.</summary>
public class CalibrationTest
{
    [Fact]
    public void Tables_OfThePage_AreWhatTheSimulationsGive()
    {
        DocPage page = DocPage.Named("docs/calibration.md");
        string text = WithRows(page.Text, "| situation | items | at 0.5", Situation.All.Select(ByLevel));
        PagesTest.Approve(page, WithRows(text, "| situation | items | interval", OnePerKind.Select(BesideIntersections)));
    }

    // Of situations that differ only in the number of items, the one with one to eight.
    private static IEnumerable<Situation> OnePerKind => Situation.All.GroupBy(s => s.Name).Select(same => same.Last());

    private static string ByLevel(Situation situation)
        => Row(situation, Coverage.Levels.Select((level, i) =>
        {
            int hits = situation.Coverage.Hits[i];
            string held = hits < Acceptance.AtLeast(Coverage.Pieces, level) ? "**" + Share(hits) + "**" : Share(hits);
            return $"{held} ({Years(situation.Coverage.Years[i])})";
        }));

    private static string BesideIntersections(Situation situation)
        => Row(situation,
        [
            $"{Share(situation.Coverage.Hits[2])} ({Years(situation.Coverage.Years[2])})",
            .. new[] { situation.Coverage.Widest, situation.Coverage.Narrowest }.Select(i => $"{Share(i.Hits)} ({Years(i.Years)}), none {Share(i.Empty)}"),
        ]);

    private static string Row(Situation situation, IEnumerable<string> cells) => $"| {situation.Name} | {situation.Items} | {string.Join(" | ", cells)} |";

    private static string Share(int pieces) => ((double)pieces / Coverage.Pieces).ToString("0.00", CultureInfo.InvariantCulture);

    private static string Years(double years) => years.ToString("0", CultureInfo.InvariantCulture);

    // The page with other rows under the table whose heading starts so.
    private static string WithRows(string page, string heading, IEnumerable<string> rows)
    {
        string[] lines = page.Split('\n');
        int first = Array.FindIndex(lines, line => line.StartsWith(heading, StringComparison.Ordinal)) + 2;
        int after = Array.FindIndex(lines, first, line => !line.StartsWith('|'));
        return string.Join('\n', [.. lines[..first], .. rows, .. lines[after..]]);
    }
}
