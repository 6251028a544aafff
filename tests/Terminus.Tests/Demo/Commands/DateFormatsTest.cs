using System.Xml;
using System.Xml.Linq;

namespace Terminus.Tests.Demo.Commands;

/// <summary>The formats of <c>date</c> that are pictures, pages and records.</summary>
public class DateFormatsTest
{
    private const string Piece = "{ \"id\": \"X-1\", \"title\": \"links <&>\", \"records\": [ { \"date\": \"1963\" } ] }";
    private const string List = "[" + Piece + ", " + Piece + "]";

    [Theory]
    [InlineData(Piece, "svg", "svg", "Timeline of X-1, links <&>")]
    [InlineData(List, "svg", "svg", "Timeline of an inventory")]
    [InlineData("[]", "svg", "svg", "Timeline of an inventory")]
    [InlineData(Piece, "html", "html", "X-1, links <&>")]
    [InlineData(List, "html", "html", "Inventory")]
    public void Date_PictureOrPage_IsOneWellFormedDocument(string input, string format, string root, string title)
    {
        DemoRun run = DemoRun.Of(input, "date", "-", "--as-of", "2026-11-25", "--format", format);
        Assert.Equal((0, input == "[]"), (run.Code, run.Errors.Contains("holds no piece", StringComparison.Ordinal)));
        using var reader = XmlReader.Create(new StringReader(run.Output), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
        XElement document = XElement.Load(reader);
        Assert.Equal(root, document.Name.LocalName);
        Assert.Equal(title, document.Descendants().First(e => e.Name.LocalName == "title").Value);
    }

    [Fact]
    public void Date_LinkedArt_IsARecordOrAListOfThem()
    {
        Assert.Equal("HumanMadeObject", DemoRun.Of(Piece, "date", "-", "--format", "linked-art").Json.GetProperty("type").GetString());
        Assert.Equal(2, DemoRun.Of(List, "date", "-", "--format", "linked-art").Json.GetArrayLength());
    }

    [Theory]
    [InlineData("svg")]
    [InlineData("html")]
    [InlineData("linked-art")]
    public void Date_NoPieceToShow_AnswersNothing(string format)
    {
        DemoRun run = DemoRun.Of("{ }", "date", "-", "--format", format);
        Assert.Equal((1, ""), (run.Code, run.Output));
    }

    [Fact]
    public void Date_AnotherFormat_IsUsage() => Assert.Equal(2, DemoRun.Of(Piece, "date", "-", "--format", "png").Code);
}
