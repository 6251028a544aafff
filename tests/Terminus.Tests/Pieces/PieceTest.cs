using FsCheck.Xunit;

namespace Terminus.Tests.Pieces;

[Properties(Arbitrary = [typeof(Gens)], MaxTest = 200)]
public class PieceTest
{
    [Property]
    public void A_piece_reads_back_from_its_own_document(Piece piece)
    {
        DocumentResult<Piece> read = Piece.Read(piece.ToJson());
        Assert.Empty(read.Problems);
        Assert.Equal(piece, read.Value);
        Assert.Equal(piece.GetHashCode(), read.Value!.GetHashCode());
    }

    [Property]
    public void A_list_of_pieces_reads_as_the_pieces(Piece one, Piece other)
    {
        byte[] list = System.Text.Encoding.UTF8.GetBytes("[" + one.ToJson() + "," + other.ToJson() + "]");
        Assert.Equal([one, other], Piece.ReadAll(list).Select(r => r.Value));
    }

    [Fact]
    public void Read_TheDocumentOfTheGuide_HasAllItsMembers()
    {
        Piece piece = Piece.Read("""
            { "id": "QH-014", "title": "pair of cuff links, swivel bar", "object": "cuff fastening", "stated": "1955~",
              "parts":        [ { "part": "box", "original": false, "why": "later" } ],
              "marks":        [ { "text": "PAT. PEND.", "part": "back", "patent": "US utility 2999999" } ],
              "features":     [ { "feature": "cuff.toggle_swivel", "part": "back" }, { "feature": "mk.us_origin", "absent": true } ],
              "subjects":     [ { "subject": "sub.jet" } ],
              "inscriptions": [ { "date": "1962-06-14", "text": "…", "of": "presentation" } ],
              "records":      [ { "date": "1963", "what": "sales receipt", "new": true } ],
              "makers":       [ { "maker": "larkfield" } ],
              "adverts":      [ { "date": "1955-11", "what": "trade catalogue, p. 14" } ],
              "opinions":     [ { "windows": [ { "notBefore": "1950", "notAfter": "1970", "confidence": 0.7 } ], "by": "…", "restsOn": [ ] } ] }
            """).OrThrow();
        Assert.Equal("cuff fastening", piece.ObjectKind);
        Assert.Equal("1955~", piece.Stated!.Text);
        Assert.Equal(new PiecePart("box", false, "later"), Assert.Single(piece.Parts));
        Assert.Equal(new PieceMark("PAT. PEND.", "back", "US utility 2999999"), Assert.Single(piece.Marks));
        Assert.True(piece.Features[1].Absent);
        Assert.True(Assert.Single(piece.Records).BoughtNew);
        Assert.Equal(0.7, Assert.Single(Assert.Single(piece.Opinions).Windows).Confidence);
    }

    [Theory]
    [InlineData("""{ "id": "A", "marsk": [] }""", "$.marsk", "not known")]
    [InlineData("""{ "title": "A" }""", "$", "\"id\" is missing")]
    [InlineData("""{ "id": "A", "id": "B" }""", "$.id", "twice")]
    [InlineData("""{ "id": 7 }""", "$.id", "the number 7")]
    [InlineData("""{ "id": "A", "stated": "1955-13" }""", "$.stated", "no EDTF date")]
    [InlineData("""{ "id": "A", "marks": [ { } ] }""", "$.marks[0]", "a \"text\", a \"patent\" or both")]
    [InlineData("""{ "id": "A", "inscriptions": [ { "date": "1911", "of": "gift" } ] }""", "$.inscriptions[0].of", "presentation")]
    [InlineData("""{ "id": "A", "opinions": [ { "windows": [ { "notBefore": "1950", "confidence": 1.5 } ] } ] }""", "$.opinions[0].windows[0].confidence", "from 0")]
    [InlineData("""{ "id": "A", "format": 2 }""", "$.format", "format 2")]
    public void Read_WhatIsWrong_IsReportedWithItsPath(string json, string path, string message)
    {
        DocumentProblem problem = Assert.Single(Piece.Read(json, "a.json").Problems);
        Assert.Equal(path, problem.Path);
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.Equal("a.json", problem.File);
    }

    [Fact]
    public void ReadAll_OneBadPiece_LeavesTheOthers()
    {
        IReadOnlyList<DocumentResult<Piece>> read = Piece.ReadAll("""
            [ { "id": "A" },
              { "id": "B", "records": [ { "date": "soon" } ] },
              { "title": "no id" },
              { "id": "D" } ]
            """u8);
        Assert.Equal(["A", "B", null, "D"], read.Select(r => r.Value?.Id));
        DocumentProblem date = Assert.Single(read[1].Problems);
        Assert.Equal("$.records[0].date", date.Path);
        Assert.Equal(2, date.Line);
        Assert.Equal("$", Assert.Single(read[2].Problems).Path);
    }

    [Fact]
    public void Read_OpenEndsAsNull_AreOpen()
    {
        Piece piece = Piece.Read("""{ "id": "A", "opinions": [ { "windows": [ { "notBefore": "1876", "notAfter": null, "confidence": 0.98 } ] } ] }""").OrThrow();
        Assert.Null(piece.Opinions[0].Windows[0].NotAfter);
    }
}
