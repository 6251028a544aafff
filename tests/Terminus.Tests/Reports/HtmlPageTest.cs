using System.Xml;
using System.Xml.Linq;

namespace Terminus.Tests.Reports;

public class HtmlPageTest
{
    private static readonly XNamespace Html = "http://www.w3.org/1999/xhtml";

    public static TheoryData<string> Pages => [.. Samples.All.Select(HtmlPage.Of), HtmlPage.Of(Samples.All), HtmlPage.Of([])];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Of_AnyPieces_IsWellFormedAndFetchesNothing(string page)
    {
        XElement root = Parse(page);
        Assert.Equal("en", root.Attribute("lang")!.Value);
        Assert.NotEmpty(root.Descendants(Html + "title").First().Value);
        Assert.Single(root.Descendants(Html + "h1"));
        Assert.DoesNotContain(root.Descendants().Attributes(), a => a.Name.LocalName is "src");
        Assert.All(root.Descendants().Attributes("href"), a => Assert.Equal("data:,", a.Value));
        Assert.StartsWith("default-src 'none';", root.Descendants(Html + "meta").Attributes("content").First().Value, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Of_AnyPieces_SaysThatItIsAnOpinion(string page)
        => Assert.Contains("not an appraisal, an authentication or legal advice", page, StringComparison.Ordinal);

    [Fact]
    public void Of_APiece_HasTheWordsForUseAndEveryItem()
    {
        string text = Parse(HtmlPage.Of(Samples.Pending)).Value;
        Assert.Contains(Statement.Of(Samples.Pending), text, StringComparison.Ordinal);
        Assert.Contains(Phrasing.ListingLine(Samples.Pending), text, StringComparison.Ordinal);
        Assert.All(Samples.Pending.Dating.Evidence, e => Assert.Contains(ReasonText.Of(EvidenceReasons.Main(e, Samples.Reference)), text, StringComparison.Ordinal));
    }

    [Fact]
    public void Of_AnInventory_HasARowAPieceAndAButtonAHeading()
    {
        XElement table = Parse(HtmlPage.Of(Samples.All)).Descendants(Html + "table").Single();
        Assert.Equal(Samples.All.Count, table.Element(Html + "tbody")!.Elements().Count());
        Assert.All(table.Descendants(Html + "th"), head => Assert.NotEmpty(head.Element(Html + "button")!.Value));
        Assert.All(table.Descendants(Html + "td"), cell => Assert.NotNull(cell.Attribute("data-key")));
    }

    [Fact]
    public void Of_AnInventory_ShowsWhatWasNotUnderstoodAndThatNothingSpeaks()
    {
        var piece = new Piece("X-1", features: [new PieceFeature("x.nowhere")]);
        PieceDating dating = PieceDating.Of(piece, Samples.AsOf, Samples.Reference);
        XElement row = Parse(HtmlPage.Of([dating])).Descendants(Html + "tbody").Single().Elements().Single();
        Assert.Contains(Assert.Single(dating.Problems).Message, row.Value, StringComparison.Ordinal);
        Assert.Equal("none", row.Elements().Last().Value);
    }

    [Theory]
    [InlineData(200, false)]
    [InlineData(201, true)]
    public void Of_AnInventory_DrawsTheFirstTwoHundredAndSaysSo(int count, bool said)
    {
        PieceDating[] many = [.. Enumerable.Repeat(Samples.Granted, count)];
        Assert.Equal(said, Parse(HtmlPage.Of(many)).Value.Contains("The first 200 pieces of 201.", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_AnInventory_SaysOfEachPieceWhetherItsEvidenceAgrees()
    {
        XElement body = Parse(HtmlPage.Of(Samples.All)).Descendants(Html + "tbody").Single();
        Assert.Equal(["agrees", "agrees", "disagrees", "contradicts itself", "none"], body.Elements().Select(row => row.Elements().Last().Value));
        Assert.Equal(["0", "0", "1", "1", ""], body.Elements().Select(row => row.Elements().Last().Attribute("data-key")!.Value));
        Assert.Equal(["1956–1961", "1961 or later"], body.Elements().Take(2).Select(row => row.Elements().ElementAt(1).Value));
        Assert.Equal(["in doubt", "any date"], body.Elements().Skip(3).Select(row => row.Elements().ElementAt(1).Value));
        Assert.Equal(["1956", "1961", "–", "–"], new[] { 0, 1, 3, 4 }.Select(i => body.Elements().ElementAt(i).Elements().ElementAt(3).Value));
    }

    [Fact]
    public void Of_AnInventory_ListsWhatWasNotDated()
    {
        XElement page = Parse(HtmlPage.Of(Samples.All, ["A-1: no id", "A-2: no object"]));
        Assert.Contains(page.Descendants(Html + "h2"), h => h.Value == "Not dated");
        Assert.Equal(["A-1: no id", "A-2: no object"], page.Descendants(Html + "li").Select(li => li.Value));
        Assert.DoesNotContain(Parse(HtmlPage.Of(Samples.All)).Descendants(Html + "h2"), h => h.Value == "Not dated");
    }

    [Theory]
    [InlineData("</title><script>alert(1)</script>")]
    [InlineData("\u0000 {lone} ]]> -->")]
    public void Of_AnyTitle_StaysText(string written)
    {
        string title = written.Replace("{lone}", "\ud800", StringComparison.Ordinal);
        PieceDating dating = PieceDating.Of(new Piece(title, title), Samples.AsOf, Samples.Reference);
        Assert.Empty(Parse(HtmlPage.Of(dating)).Descendants(Html + "script"));
        Assert.Single(Parse(HtmlPage.Of([dating])).Descendants(Html + "script"));
    }

    private static XElement Parse(string page)
    {
        using var reader = XmlReader.Create(new StringReader(page), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
        return XElement.Load(reader);
    }

    [Fact]
    public void Of_APiece_HasTheYearsToSearchByAndItsParts()
    {
        Assert.Equal(["1956–61; cuff fastening patent applied for 1956, granted 1961", "1956–1961", "1956 to 1961", "1956-03-06/1961-07-11", "no"], Terms(Samples.Pending));
        Assert.Equal(["undated", "undated", "– to 2026", "–", "cannot tell"], Terms(Samples.Undated));
        string text = Parse(HtmlPage.Of(Samples.Disputed)).Value;
        Assert.Contains("box: 1961 or later, likely 1961–1980; not original (later), left out of the whole", text, StringComparison.Ordinal);
        Assert.Contains("left: ", text, StringComparison.Ordinal);

        static string[] Terms(PieceDating dating) => [.. Parse(HtmlPage.Of(dating)).Descendants(Html + "dl").First().Elements(Html + "dd").Select(dd => dd.Value)];
    }

    [Fact]
    public void Of_APartThatIsNotOriginalForNoReason_SaysNoReason()
    {
        PieceDating dating = PieceDating.Of(Samples.Disputed.Piece with { Parts = [new PiecePart("box", false)] }, Samples.AsOf, Samples.Reference);
        Assert.Contains("; not original, left out of the whole", Parse(HtmlPage.Of(dating)).Value, StringComparison.Ordinal);
        Assert.Contains("; not original, left out of the whole", Explanation.Of(dating).ReplaceLineEndings(" "), StringComparison.Ordinal);
    }
}
