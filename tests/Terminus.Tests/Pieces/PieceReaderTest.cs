using System.Text.Json.Nodes;

namespace Terminus.Tests.Pieces;

public class PieceReaderTest
{
    /// <summary>A piece with every member of every entry, each different.</summary>
    private const string Full = """
        { "format": 1, "id": "P-1", "title": "a pair of links", "object": "cuff fastening", "stated": "1955~",
          "parts":        [ { "part": "box", "original": false, "why": "later" }, { "part": "pin" } ],
          "marks":        [ { "text": "PAT. PEND.", "part": "back", "patent": "US utility 2999999" } ],
          "features":     [ { "feature": "t.snap", "part": "front", "absent": true }, { "feature": "t.hook" } ],
          "subjects":     [ { "subject": "sub.kite", "part": "face" } ],
          "inscriptions": [ { "date": "1962-06-14", "text": "to A from B", "of": "commemorative", "part": "rim" } ],
          "records":      [ { "date": "1963", "what": "a receipt", "new": true, "part": "lid" }, { "date": "1964" } ],
          "makers":       [ { "maker": "t.maker", "form": "OLD NAME", "address": "1 Mill Lane", "part": "bar" } ],
          "adverts":      [ { "date": "1955-11", "what": "a trade list", "model": "Model A", "part": "post" } ],
          "opinions":     [ { "windows": [ { "notBefore": "1950", "notAfter": "1970", "confidence": 0.7 }, { "notAfter": "1960", "confidence": 0.25 } ],
                              "by": "a dealer", "restsOn": [ "a letter", "t.hook" ], "label": "style", "part": "stem" } ] }
        """;

    private static readonly Piece Described = new(
        "P-1",
        "a pair of links",
        "cuff fastening",
        Date("1955~"),
        [new PiecePart("box", false, "later"), new PiecePart("pin")],
        [new PieceMark("PAT. PEND.", "back", "US utility 2999999")],
        [new PieceFeature("t.snap", "front", true), new PieceFeature("t.hook")],
        [new PieceSubject("sub.kite", "face")],
        [new PieceInscription(Date("1962-06-14"), InscriptionPurpose.Commemorative, "to A from B", "rim")],
        [new PieceRecord(Date("1963"), "a receipt", true, "lid"), new PieceRecord(Date("1964"))],
        [new PieceMaker("t.maker", "OLD NAME", "1 Mill Lane", "bar")],
        [new PieceAdvert(Date("1955-11"), "a trade list", "Model A", "post")],
        [new PieceOpinion([new PieceWindow(Date("1950"), Date("1970"), 0.7), new PieceWindow(null, Date("1960"), 0.25)], "a dealer", ["a letter", "t.hook"], "style", "stem")]);

    [Fact]
    public void Read_EveryMember_IsInItsPlace() => Assert.Equal(Described, Piece.Read(Full).OrThrow());

    [Fact]
    public void ToJson_EveryMember_IsTheDocumentAgain() => Assert.True(JsonNode.DeepEquals(JsonNode.Parse(Full), JsonNode.Parse(Described.ToJson())));

    [Theory]
    [InlineData("parts", "part", "why", "a part")]
    [InlineData("features", "feature", "part", "a feature")]
    [InlineData("subjects", "subject", "part", "a subject")]
    [InlineData("inscriptions", "date", "part", "an inscription")]
    [InlineData("records", "date", "part", "a record")]
    [InlineData("makers", "maker", "part", "a maker")]
    [InlineData("adverts", "date", "part", "an advert")]
    [InlineData("opinions", "windows", "part", "an opinion")]
    public void Read_EntryWithoutWhatItMustHave_IsLeftOutAndSaysSo(string list, string required, string other, string what)
    {
        DocumentResult<Piece> read = Piece.Read($$"""{ "id": "A", "{{list}}": [ { "{{other}}": "x" } ] }""");
        Assert.Equal(new Piece("A"), read.Value);
        DocumentProblem problem = Assert.Single(read.Problems);
        Assert.Equal($"$.{list}[0]", problem.Path);
        Assert.Equal($"The member \"{required}\" is missing; {what} must have it.", problem.Message);
    }

    [Theory]
    [InlineData("parts")]
    [InlineData("marks")]
    [InlineData("features")]
    [InlineData("subjects")]
    [InlineData("inscriptions")]
    [InlineData("records")]
    [InlineData("makers")]
    [InlineData("adverts")]
    [InlineData("opinions")]
    public void Read_ListOrEntryOfAnotherKind_IsLeftOutAndTheRestIsRead(string list)
    {
        DocumentResult<Piece> read = Piece.Read($$"""{ "id": "A", "{{list}}": [ 7, null, "x" ], "title": "a title" }""");
        Assert.Equal(new Piece("A", "a title"), read.Value);
        Assert.Equal([$"$.{list}[0]", $"$.{list}[1]", $"$.{list}[2]"], read.Problems.Select(p => p.Path));

        DocumentProblem problem = Assert.Single(Piece.Read($$"""{ "id": "A", "{{list}}": 7 }""").Problems);
        Assert.Equal($"$.{list}", problem.Path);
        Assert.Contains("the number 7 where a list of " + list, problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "id": 7 }""", "an id")]
    [InlineData("""{ "id": "A", "object": 7 }""", "a kind of object")]
    [InlineData("""{ "id": "A", "title": 7 }""", "a string")]
    [InlineData("""{ "id": "A", "parts": [ { "part": 7 } ] }""", "a part")]
    [InlineData("""{ "id": "A", "parts": [ { "part": "x", "why": 7 } ] }""", "a string")]
    [InlineData("""{ "id": "A", "parts": [ { "part": "x", "original": 7 } ] }""", "true or false")]
    [InlineData("""{ "id": "A", "marks": [ { "text": 7, "patent": "x" } ] }""", "a string")]
    [InlineData("""{ "id": "A", "marks": [ { "text": "x", "part": 7 } ] }""", "a part")]
    [InlineData("""{ "id": "A", "marks": [ { "text": "x", "patent": 7 } ] }""", "a patent")]
    [InlineData("""{ "id": "A", "features": [ { "feature": 7 } ] }""", "the id of a feature")]
    [InlineData("""{ "id": "A", "features": [ { "feature": "x", "part": 7 } ] }""", "a part")]
    [InlineData("""{ "id": "A", "features": [ { "feature": "x", "absent": 7 } ] }""", "true or false")]
    [InlineData("""{ "id": "A", "subjects": [ { "subject": 7 } ] }""", "the id of a subject")]
    [InlineData("""{ "id": "A", "subjects": [ { "subject": "x", "part": 7 } ] }""", "a part")]
    [InlineData("""{ "id": "A", "inscriptions": [ { "date": "1950", "text": 7 } ] }""", "a string")]
    [InlineData("""{ "id": "A", "inscriptions": [ { "date": "1950", "of": 7 } ] }""", "what the date is of")]
    [InlineData("""{ "id": "A", "inscriptions": [ { "date": "1950", "part": 7 } ] }""", "a part")]
    [InlineData("""{ "id": "A", "records": [ { "date": "1950", "what": 7 } ] }""", "a string")]
    [InlineData("""{ "id": "A", "records": [ { "date": "1950", "new": 7 } ] }""", "true or false")]
    [InlineData("""{ "id": "A", "records": [ { "date": "1950", "part": 7 } ] }""", "a part")]
    [InlineData("""{ "id": "A", "makers": [ { "maker": 7 } ] }""", "the id of a maker")]
    [InlineData("""{ "id": "A", "makers": [ { "maker": "x", "form": 7 } ] }""", "a string")]
    [InlineData("""{ "id": "A", "makers": [ { "maker": "x", "address": 7 } ] }""", "a string")]
    [InlineData("""{ "id": "A", "makers": [ { "maker": "x", "part": 7 } ] }""", "a part")]
    [InlineData("""{ "id": "A", "adverts": [ { "date": "1950", "what": 7 } ] }""", "a string")]
    [InlineData("""{ "id": "A", "adverts": [ { "date": "1950", "model": 7 } ] }""", "a model")]
    [InlineData("""{ "id": "A", "adverts": [ { "date": "1950", "part": 7 } ] }""", "a part")]
    [InlineData("""{ "id": "A", "opinions": [ { "windows": [], "by": 7 } ] }""", "a string")]
    [InlineData("""{ "id": "A", "opinions": [ { "windows": [], "restsOn": 7 } ] }""", "a list of what it rests on")]
    [InlineData("""{ "id": "A", "opinions": [ { "windows": [], "restsOn": [ 7 ] } ] }""", "an id or a name")]
    [InlineData("""{ "id": "A", "opinions": [ { "windows": [], "label": 7 } ] }""", "a string")]
    [InlineData("""{ "id": "A", "opinions": [ { "windows": [], "part": 7 } ] }""", "a part")]
    [InlineData("""{ "id": "A", "opinions": [ { "windows": 7 } ] }""", "a list of windows")]
    [InlineData("""{ "id": "A", "opinions": [ { "windows": [ 7 ] } ] }""", "a window")]
    [InlineData("""{ "id": "A", "opinions": [ { "windows": [ { "confidence": "x" } ] } ] }""", "a confidence")]
    public void Read_NumberWhereSomethingElseIsWanted_NamesWhatIsWanted(string json, string wanted)
        => Assert.Contains(" where " + wanted, Assert.Single(Piece.Read(json).Problems).Message, StringComparison.Ordinal);

    [Fact]
    public void Read_WrongFlags_AreAsIfTheyWereNotThere()
    {
        Piece piece = Piece.Read("""
            { "id": "A", "parts": [ { "part": "x", "original": "no" } ], "features": [ { "feature": "f", "absent": "no" } ], "records": [ { "date": "1950", "new": "no" } ] }
            """).Value!;
        Assert.True(piece.Parts[0].Original);
        Assert.False(piece.Features[0].Absent);
        Assert.False(piece.Records[0].BoughtNew);
    }

    [Theory]
    [InlineData("""{ "notBefore": "soon", "confidence": 0.5 }""")]
    [InlineData("""{ "notAfter": "soon", "confidence": 0.5 }""")]
    [InlineData("""{ "notBefore": "soon", "notAfter": "1950", "confidence": 0.5 }""")]
    [InlineData("""{ "notBefore": "1950" }""")]
    public void Read_WindowWithAWrongEndOrNoConfidence_IsLeftOut(string window)
    {
        DocumentResult<Piece> read = Piece.Read($$"""{ "id": "A", "opinions": [ { "windows": [ {{window}}, { "notBefore": "1940", "confidence": 0.5 } ] } ] }""");
        Assert.Equal([new PieceWindow(Date("1940"), null, 0.5)], read.Value!.Opinions[0].Windows);
        Assert.StartsWith("$.opinions[0].windows[0]", Assert.Single(read.Problems).Path, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_ListsOfAnyLength_KeepTheirOrder()
    {
        foreach (int count in Enumerable.Range(0, 10))
        {
            string[] names = [.. Enumerable.Range(0, count).Select(i => "p" + i)];
            string parts = string.Join(",", names.Select(name => "{ \"part\": \"" + name + "\" }"));
            Assert.Equal(names, Piece.Read("{ \"id\": \"A\", \"parts\": [" + parts + "] }").OrThrow().Parts.Select(p => p.Part));
        }
    }

    [Fact]
    public void ReadAll_ManyPieces_EachHasItsOwnProblemsWithPathsFromItsRoot()
    {
        string list = "[" + string.Join(",", Enumerable.Range(0, 12).Select(i => i is 1 or 11 ? "{ \"id\": \"P" + i + "\", \"stated\": 7 }" : "{ \"id\": \"P" + i + "\" }")) + "]";
        IReadOnlyList<DocumentResult<Piece>> read = Piece.ReadAll(list, "a.json");
        Assert.Equal(Enumerable.Range(0, 12).Select(i => "P" + i), read.Select(r => r.Value!.Id));
        Assert.All(read.Select((result, i) => (result, i)), r => Assert.Equal(r.i is 1 or 11 ? 1 : 0, r.result.Problems.Count));
        Assert.Equal(("$.stated", "a.json"), (read[11].Problems[0].Path, read[11].Problems[0].File));
    }

    [Fact]
    public void ReadAll_SomethingAfterTheList_IsAResultOfItsOwn()
    {
        IReadOnlyList<DocumentResult<Piece>> read = Piece.ReadAll("""[ { "id": "A" } ] 7""");
        Assert.Equal(["A", null], read.Select(r => r.Value?.Id));
        Assert.Empty(read[0].Problems);
        Assert.Single(read[1].Problems);
    }

    [Fact]
    public void ReadAll_NoList_IsOnePiece()
    {
        Assert.Equal("A", Assert.Single(Piece.ReadAll("""{ "id": "A" }""")).Value!.Id);
        Assert.Null(Assert.Single(Piece.ReadAll("7")).Value);
        Assert.Empty(Piece.ReadAll("[]"));
    }

    private static EdtfDate Date(string edtf) => EdtfDate.Parse(edtf);
}
