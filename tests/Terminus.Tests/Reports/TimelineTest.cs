using System.Xml.Linq;

namespace Terminus.Tests.Reports;

public class TimelineTest
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Pictures => [.. Samples.All.Select(Timeline.ToSvg), Timeline.ToSvg(Samples.All), Timeline.ToSvg([])];

    [Theory]
    [MemberData(nameof(Pictures))]
    public void ToSvg_AnyPieces_IsAnImageWithATitleAndADescription(string svg)
    {
        XElement root = XElement.Parse(svg);
        Assert.Equal(Svg + "svg", root.Name);
        Assert.Equal("img", root.Attribute("role")!.Value);
        Assert.NotEmpty(root.Element(Svg + "title")!.Value);
        Assert.NotEmpty(root.Element(Svg + "desc")!.Value);
        Assert.Equal("100%", root.Attribute("width")!.Value);
    }

    [Theory]
    [MemberData(nameof(Pictures))]
    public void ToSvg_AnyPieces_FetchesNothing(string svg)
        => Assert.DoesNotContain("http", svg.Replace("xmlns=\"http://www.w3.org/2000/svg\"", "", StringComparison.Ordinal).Replace("Invented", "", StringComparison.Ordinal), StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Pictures))]
    public void ToSvg_AnyPieces_StandsOutInLightAndInDark(string svg)
    {
        foreach (Palette palette in new[] { Palette.Light(svg), Palette.Dark(svg) })
        {
            Assert.NotEmpty(palette.Texts);
            Assert.All(palette.Texts, text => Assert.True(palette.Contrast(text) >= 4.5, $"text {text} at {palette.Contrast(text):0.00}"));
            Assert.NotEmpty(palette.Shapes);
            Assert.All(palette.Shapes, shape => Assert.True(palette.Contrast(shape) >= 3, $"shape {shape} at {palette.Contrast(shape):0.00}"));
        }
    }

    [Fact]
    public void ToSvg_FirmAndUsual_DifferInMoreThanColour()
    {
        XElement root = XElement.Parse(Timeline.ToSvg(Samples.Pending));
        string style = root.Element(Svg + "style")!.Value;
        Assert.Contains(".usual{fill:url(#terminus-hatch)", style, StringComparison.Ordinal);
        Assert.Contains(".out{fill:none", style, StringComparison.Ordinal);
        Assert.Equal(["firm", "usual", "left out"], root.Descendants(Svg + "text").Select(t => t.Value).TakeLast(3));
    }

    [Fact]
    public void ToSvg_ADisagreement_HasAWordAndACross()
    {
        XElement root = XElement.Parse(Timeline.ToSvg(Samples.Disputed));
        Assert.Contains(root.Descendants(Svg + "text"), t => t.Attribute("class")?.Value == "warn" && t.Value.Contains("does not fit 2", StringComparison.Ordinal));
        Assert.Contains(root.Descendants(Svg + "line"), l => l.Attribute("class")?.Value == "against");
    }

    [Fact]
    public void ToSvg_EveryItem_HasEachOfItsWindows()
    {
        string svg = Timeline.ToSvg(Samples.Pending);
        foreach (StatedWindow window in Samples.Pending.Dating.Evidence.SelectMany(e => e.StatedWindows()))
        {
            Assert.Contains($"{WindowWords.Days(window.Window)}, stated at {WindowWords.Share(window.Confidence)}", svg, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void ToSvg_AnInventory_HasTheEarliestFirstAndTheUndatedLast()
    {
        string[] heads = [.. XElement.Parse(Timeline.ToSvg(Samples.All)).Descendants(Svg + "text").Where(t => t.Attribute("class")?.Value == "head").Select(t => t.Value)];
        Assert.Equal(5, heads.Length);
        Assert.EndsWith("undated", heads[^1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<b>&\"'</b>")]
    [InlineData("\u0000 {lone} \ufffe")]
    public void ToSvg_AnyTitle_IsWellFormed(string written)
    {
        string title = written.Replace("{lone}", "\ud800", StringComparison.Ordinal);
        PieceDating dating = PieceDating.Of(new Piece(title, title, title, parts: [new PiecePart(title, false, title)]), Samples.AsOf, Samples.Reference);
        Assert.NotNull(XElement.Parse(Timeline.ToSvg(dating)));
        Assert.NotNull(XElement.Parse(Timeline.ToSvg([dating, dating])));
    }

    [Fact]
    public void ToSvg_ADisagreement_SaysItsMassAndWhetherItIsAtFaceValue()
    {
        string[] face = Warnings(Samples.Opinions((1900, 1910, 0.8), (1950, 1960, 0.5)));
        Assert.Equal(["does not fit 2 (0.4, at face value)", "does not fit 1 (0.4, at face value)"], face);
        Assert.Contains(Warnings(Samples.Disputed), text => text.EndsWith(", in usage)", StringComparison.Ordinal));

        static string[] Warnings(PieceDating dating)
            => [.. XElement.Parse(Timeline.ToSvg(dating)).Descendants(Svg + "text").Where(t => t.Attribute("class")?.Value == "warn").Select(Shown)];
    }

    [Fact]
    public void ToSvg_AnItemOfAPartThatIsNotOriginal_HasNoNumberAndIsLeftOut()
    {
        IEnumerable<string> texts = XElement.Parse(Timeline.ToSvg(Samples.Disputed)).Descendants(Svg + "text").Select(Shown);
        Assert.Contains("–  The patent mark 2999999, left out", texts);
        Assert.Contains("1  The feature tumbler back", texts);
        Assert.Contains("Part: box", texts);
    }

    [Theory]
    [InlineData(0, "0 pieces: 0 with evidence that disagrees, 0 without a date.")]
    [InlineData(1, "1 piece: 0 with evidence that disagrees, 0 without a date.")]
    [InlineData(5, "5 pieces: 2 with evidence that disagrees, 2 without a date.")]
    public void Summary_OfAnInventory_CountsWhatDisagreesAndWhatHasNoDate(int count, string summary)
        => Assert.Equal(summary, InventoryTimeline.Summary([.. Samples.All.Take(count)]));

    /// <summary>What stands in the picture, without its tooltip.</summary>
    private static string Shown(XElement text) => string.Concat(text.Nodes().OfType<XText>().Select(node => node.Value));
}
