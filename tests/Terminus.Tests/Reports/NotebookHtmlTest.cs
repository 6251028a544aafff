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
}
