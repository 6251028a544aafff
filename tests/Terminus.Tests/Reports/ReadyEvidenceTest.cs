using System.Text;
using System.Text.Json;

namespace Terminus.Tests.Reports;

public class ReadyEvidenceTest
{
    private static readonly Evidence Item = new KnownBy(EvidenceDate.InYear(1963), "sales receipt", boughtNew: true);

    [Fact]
    public void Find_AnItem_IsKeptWhenItComesAgain()
    {
        using var ready = new ReadyEvidence();
        Assert.Equal("", Find(ready, Item));
        string kept = Find(ready, Item);
        Assert.Equal(kept, Find(ready, Item));
        using JsonDocument document = JsonDocument.Parse(kept);
        Assert.Equal("known-by", document.RootElement.GetProperty("kind").GetString());
    }

    [Fact]
    public void Find_AnEqualItem_IsAnotherItem()
    {
        using var ready = new ReadyEvidence();
        Find(ready, Item);
        Assert.Equal("", Find(ready, Item with { }));
    }

    [Fact]
    public void Find_AVeryLongItem_IsNotKept()
    {
        using var ready = new ReadyEvidence();
        var longItem = new KnownBy(EvidenceDate.InYear(1963), new string('x', 10_000), boughtNew: true);
        Assert.All(Enumerable.Range(0, 3), _ => Assert.Equal("", Find(ready, longItem)));
    }

    [Fact]
    public void Write_PiecesThatComeAgain_AreTheSameBytesAsAtFirst()
    {
        PieceDating[] pieces = [Samples.Pending, Samples.Granted, Samples.Disputed, Samples.Contradicted, Samples.Undated];
        using var ready = new ReadyEvidence();
        using var stream = new MemoryStream();
        using var json = new Utf8JsonWriter(stream, DocumentWriting.Compact);
        var writer = new ResultWriter(json, ready);
        foreach (PieceDating piece in pieces.Concat(pieces).Concat(pieces))
        {
            stream.SetLength(0);
            json.Reset();
            writer.Write(piece, steps: true);
            json.Flush();
            Assert.Equal(
                DocumentWriting.ToText(DocumentWriting.Compact, plain => ResultDocument.Write(plain, piece, steps: true)),
                Encoding.UTF8.GetString(stream.ToArray()));
        }
    }

    [Fact]
    public void Find_ManyThatComeOnce_DriveNothingOut()
    {
        using var ready = new ReadyEvidence();
        Find(ready, Item);
        string kept = Find(ready, Item);
        for (int i = 0; i < 5_000; i++)
        {
            Find(ready, Item with { });
        }

        Assert.NotEqual("", kept);
        Assert.Equal(kept, Find(ready, Item));
    }

    private static string Find(ReadyEvidence ready, Evidence item)
        => Encoding.UTF8.GetString(ready.Find(item, Dating.Of([item], Samples.AsOf).Stated[0], ReferenceSet.BuiltIn).ToArray());
}
