using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;

namespace Terminus.Tests.Docs;

/// <summary>The table of imagined pieces in docs/house-defaults.md against the answers that the house defaults give.</summary>
public partial class HouseDefaultsTest
{
    private const string Page = "docs/house-defaults.md";

    private static readonly LocalDate AsOf = new(2026, 11, 25);

    [Fact]
    public void Table_OfImaginedPieces_IsWhatTheHouseDefaultsAnswer()
    {
        string[] lines = [.. DocPage.Named(Page).Text.Split('\n').Where(l => l.StartsWith("| HD-", StringComparison.Ordinal))];
        Assert.Equal(Answers(), lines.Select(l => string.Join('|', l.Split('|').Take(7)) + "|"));
    }

    [Fact]
    public void Pieces_AsDescribed_HaveNoProblem()
    {
        Assert.All(Dated(), d => Assert.Empty(d.Problems));
        Assert.InRange(Dated().Count, 24, 32);
    }

    [Fact]
    public void Guide_TableOfKinds_HasTheFiguresOfTheHouse()
    {
        IEnumerable<double> house = typeof(Assumptions).GetProperties()
            .Where(p => p.PropertyType == typeof(double) && p.Name is not (nameof(Assumptions.FirmAt) or nameof(Assumptions.SaidFrom) or nameof(Assumptions.QualifiedAbove)))
            .Select(p => (double)p.GetValue(Assumptions.House)!);
        string guide = DocPage.Named("docs/guide.md").Text;
        string section = guide[guide.IndexOf("\n## Kinds of evidence", StringComparison.Ordinal)..guide.IndexOf("In a program the kinds are types", StringComparison.Ordinal)];
        IEnumerable<double> shown = Figure().Matches(section).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture));
        Assert.Equal(house.Distinct().Order(), shown.Distinct().Order());
    }

    private static List<PieceDating> Dated()
    {
        ReferenceSet reference = ReferenceSet.BuiltIn.With(
            ReferenceFile.Read(DocPage.FileText("house-defaults.reference.json"), "house-defaults.reference.json").OrThrow());
        byte[] pieces = System.Text.Encoding.UTF8.GetBytes(DocPage.FileText("house-defaults.pieces.json"));
        return [.. Piece.ReadAll(pieces, "house-defaults.pieces.json").Select(read => PieceDating.Of(read.OrThrow(), AsOf, reference))];
    }

    private static IEnumerable<string> Answers()
        => Dated().Select(d => $"| {d.Piece.Id} | {d.Piece.Title} | {Possible(d.Dating.Possible)} | {Years(d.Interval)} | {Years(d.Likely)} | {Conflict(d)} |");

    private static string Possible(DateWindow? possible)
        => possible is not { } window ? "contradiction"
            : window.NotBefore is { } first
                ? window.NotAfter is { } last && last < AsOf ? Year(first.Year) + "–" + Year(last.Year) : Year(first.Year) + " or later"
                : window.NotAfter is { } end && end < AsOf ? Year(end.Year) + " or earlier" : "any date";

    private static string Years(DatedInterval? interval)
        => interval is null ? "none"
            : interval.IsAnyDate ? "any date"
            : interval.EarliestYear is not { } first ? Year(interval.LatestYear) + " or earlier"
            : interval.EndsToday ? Year(first) + " or later"
            : first == interval.LatestYear ? Year(first) : Year(first) + "–" + Year(interval.LatestYear);

    private static string Conflict(PieceDating dating)
        => (Math.Floor(dating.Dating.Conflict * 100) / 100).ToString("0.##", CultureInfo.InvariantCulture) + (dating.Dating.Qualified ? ", qualified" : "");

    [GeneratedRegex(@"0\.\d+")]
    private static partial Regex Figure();

    private static string Year(int year) => year.ToString(CultureInfo.InvariantCulture);
}
