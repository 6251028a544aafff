using System.Text;

namespace Terminus.Tests.Documents;

public class TextsReadBeforeTest
{
    private readonly TextsReadBefore<string> texts = new();

    [Fact]
    public void Find_TextKept_IsWhatItWasReadAs()
    {
        Keep("back");
        Assert.Equal("back", texts.Find("back"u8));
        Assert.Null(texts.Find("bacK"u8));
        Assert.Null(texts.Find(""u8));
    }

    [Fact]
    public void Keep_TextThatCameOnce_IsNotKept()
    {
        texts.Keep("back"u8, "back");
        Assert.Null(texts.Find("back"u8));
    }

    [Fact]
    public void Find_LongText_IsNotKept()
    {
        byte[] text = new byte[33];
        texts.Keep(text, "long");
        texts.Keep(text, "long");
        Assert.Null(texts.Find(text));
    }

    [Fact]
    public void Find_MoreTextsThanPlaces_IsTheRightOneOrNone()
    {
        for (int i = 0; i < 10_000; i++)
        {
            Keep("text " + i);
        }

        Assert.Equal("text 9999", texts.Find("text 9999"u8));
        for (int i = 0; i < 10_000; i++)
        {
            Assert.True(texts.Find(Encoding.UTF8.GetBytes("text " + i)) is not { } found || found == "text " + i);
        }
    }

    [Fact]
    public void Read_NameThatWasRefused_IsRefusedAgain()
    {
        for (int i = 0; i < 2; i++)
        {
            DocumentResult<Piece> read = Piece.Read("""{ "id": "A", "features": [ { "feature": " t.hook" } ] }""");
            Assert.Contains("no space at either end", Assert.Single(read.Problems).Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Read_NameAndDateOfOneText_AreEachReadAsWhatTheyAre()
    {
        Piece piece = Piece.Read("""{ "id": "A", "stated": "1955", "features": [ { "feature": "1955", "part": "1955" } ] }""").Value!;
        Assert.Equal("1955", piece.Features[0].Part);
        Assert.Equal(EdtfDate.InYear(1955), piece.Stated);
    }

    // What comes for the second time is kept.
    private void Keep(string text)
    {
        texts.Keep(Encoding.UTF8.GetBytes(text), text);
        texts.Keep(Encoding.UTF8.GetBytes(text), text);
    }
}
