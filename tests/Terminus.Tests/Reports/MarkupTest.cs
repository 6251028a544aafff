using System.Xml.Linq;

namespace Terminus.Tests.Reports;

public class MarkupTest
{
    [Theory]
    [InlineData("<script>alert('x')</script> & \"quoted\"", "<script>alert('x')</script> & \"quoted\"")]
    [InlineData("a\u0000b\u0007c\u001fd", "a\ufffdb\ufffdc\ufffdd")]
    [InlineData("pair \ud83d\ude00", "pair \ud83d\ude00")]
    [InlineData("none \uffff \ufffe", "none \ufffd \ufffd")]
    [InlineData("tab\tline\nreturn\r", "tab line return ")]
    public void Text_Anything_ComesBackFromTheParserAsItWasOrReplaced(string content, string expected)
    {
        XElement read = XElement.Parse(new Markup().Open("a", "b", content).Text(content).Close().ToString());
        Assert.Equal(expected, read.Value);
        Assert.Equal(expected, read.Attribute("b")!.Value);
    }

    // Lone surrogates cannot stand in an attribute of a test, so they are made here.
    [Fact]
    public void Text_LoneSurrogates_AreReplaced()
    {
        const char high = '\ud83d';
        const char low = '\ude00';
        Assert.Equal("<a>\ufffd and \ufffd, \ud83d\ude00, \ufffd</a>", new Markup().Element("a", $"{low} and {high}, {high}{low}, {high}").ToString());
    }

    [Fact]
    public void Open_AnAttributeWithoutAValue_IsLeftOut() => Assert.Equal("<a b=\"1\"></a>", new Markup().Open("a", "b", "1", "c", null).Close().ToString());

    [Fact]
    public void Leaf_HasNoEndTag() => Assert.Equal("<a><b/></a>", new Markup().Open("a").Leaf("b").Close().ToString());
}
