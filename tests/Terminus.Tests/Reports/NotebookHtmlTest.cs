using System.Xml.Linq;

namespace Terminus.Tests.Reports;

public class NotebookHtmlTest
{
    private static readonly SightingEstimate Estimate = SightingEstimate.Of(
        [.. new[] { 1931, 1933, 1934, 1936, 1937 }.Select(y => new Sighting(DateWindow.InYear(y), "catalogue of " + y.ToString(System.Globalization.CultureInfo.InvariantCulture)))],
        SightingEnd.First);

    private static readonly object[] Values =
    [
        .. Samples.All, Samples.All, new List<PieceDating>(), Samples.Pending.Dating, Samples.Pending.Piece, Inscription.Read("PAT. JULY 11, 1961 QUAY"),
        RegisterSet.BuiltIn.Read("US", "utility", "2,966,681"), Estimate,
    ];

    public static TheoryData<int> Each => [.. Enumerable.Range(0, Values.Length)];

    [Theory]
    [MemberData(nameof(Each))]
    public void Of_AnyValue_IsAWellFormedFragmentWithoutScript(int index)
    {
        XElement root = XElement.Parse(NotebookHtml.Of(Values[index]));
        Assert.Equal("div", root.Name.LocalName);
        Assert.DoesNotContain(root.DescendantsAndSelf(), e => e.Name.LocalName is "script" or "link");
        Assert.Contains(NotebookHtml.Types, type => type.IsInstanceOfType(Values[index]));
    }

    [Fact]
    public void Of_ADatedPiece_HasItsStatementAndItsPicture()
    {
        XElement root = XElement.Parse(NotebookHtml.Of(Samples.Pending));
        Assert.Contains(Statement.Of(Samples.Pending), root.Value, StringComparison.Ordinal);
        Assert.Contains(root.Descendants(), e => e.Name.LocalName == "svg");
    }

    [Fact]
    public void Of_AnInventory_HasARowAPiece()
        => Assert.Equal(Samples.All.Count, XElement.Parse(NotebookHtml.Of(Samples.All)).Descendants("tbody").Single().Elements().Count());

    [Fact]
    public void Of_AnInscription_ShowsTheMarkAndTheRest()
        => Assert.Contains("QUAY", XElement.Parse(NotebookHtml.Of(Inscription.Read("PAT. JULY 11, 1961 QUAY"))).Value, StringComparison.Ordinal);

    [Fact]
    public void Of_AHostileTitle_StaysText()
        => Assert.Contains("<b>&</b>", XElement.Parse(NotebookHtml.Of(PieceDating.Of(new Piece("x", "<b>&</b>"), Samples.AsOf))).Value, StringComparison.Ordinal);

    [Fact]
    public void Of_AnyOtherValue_IsItsText() => Assert.Equal("<div>a &amp; b</div>", NotebookHtml.Of("a & b"));

    [Theory]
    [InlineData(100, false)]
    [InlineData(101, true)]
    public void Of_AnInventory_ShowsTheFirstHundredAndSaysSo(int count, bool said)
    {
        XElement root = XElement.Parse(NotebookHtml.Of(Enumerable.Repeat(Samples.Granted, count).ToList()));
        Assert.Equal(100, root.Descendants("tbody").Single().Elements().Count());
        Assert.Equal(said ? ["The first 100 pieces of 101."] : [], root.Elements("p").Select(p => p.Value));
    }

    [Fact]
    public void Of_AnInventory_GivesBothAnswersAndTheClaimOfEach()
    {
        PieceDating claimed = PieceDating.Of(Samples.Granted.Piece with { Stated = EdtfDate.Parse("1930") }, Samples.AsOf, Samples.Reference);
        XElement root = XElement.Parse(NotebookHtml.Of(new List<PieceDating> { claimed, Samples.Contradicted }));
        Assert.Equal(["Piece", "Title", "Interval", "Likely", "Stated"], root.Descendants("th").Select(th => th.Value));
        Assert.Equal(
            ["QH-020", "pair of cuff links", "1961 or later", "1961–1980", "1930: contradicted", "QH-022", "cuff links with a receipt", "in doubt", "in doubt", ""],
            root.Descendants("td").Select(td => td.Value));
    }

    [Fact]
    public void Of_ADating_GivesEachItemWithItsWindows()
    {
        Dating dating = Dating.Of([new KnownBy(EvidenceDate.InYear(1950), "a note", part: "lid"), new Opinion(DateWindow.BetweenYears(1930, 1940), 0.5, "a dealer")], Samples.AsOf);
        XElement root = XElement.Parse(NotebookHtml.Of(dating));
        Assert.Equal(["Part", "Evidence", "States"], root.Descendants("th").Select(th => th.Value));
        Assert.Equal(
            ["lid", "Known by a note of 1950: made by then.", "until 31 December 1950 (0.99)", "", "The opinion of a dealer: 1 January 1930 to 31 December 1940.", "1 January 1930 to 31 December 1940 (0.5)"],
            root.Descendants("td").Select(td => td.Value));
        Assert.Equal("1950 or earlier", root.Element("p")!.Value);
    }
}
