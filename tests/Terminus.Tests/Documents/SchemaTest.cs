using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Terminus.Tests.Reference;

namespace Terminus.Tests.Documents;

/// <summary>Holds the JSON Schemas against the code: the same members, the same required ones, the same words.</summary>
public class SchemaTest
{
    private static readonly JsonObject ReferenceText = Load("reference");
    private static readonly JsonSchema ReferenceSchema = JsonSchema.FromText(ReferenceText.ToJsonString());
    private static readonly JsonSchema PieceSchema = JsonSchema.FromText(Load("piece").ToJsonString());

    internal const string WholePiece = """
        {
          "format": 1, "id": "QH-014", "title": "pair of cuff links", "object": "cuff fastening", "stated": "1955~",
          "parts": [ { "part": "box", "original": false, "why": "later" } ],
          "marks": [ { "text": "PAT. PEND.", "part": "back", "patent": "US utility 2999999" }, { "patent": "US utility 2999999" } ],
          "features": [ { "feature": "cuff.toggle_swivel", "part": "back" }, { "feature": "mk.us_origin", "absent": true } ],
          "subjects": [ { "subject": "sub.jet" } ],
          "inscriptions": [ { "date": "1962-06-14", "text": "…", "of": "presentation" } ],
          "records": [ { "date": "1963", "what": "sales receipt", "new": true } ],
          "makers": [ { "maker": "larkfield", "form": "Larkfield & Daughter", "address": "2 Quay House" } ],
          "adverts": [ { "date": "1955-11", "what": "trade catalogue, p. 14" } ],
          "opinions": [ { "windows": [ { "notBefore": "1950", "notAfter": "1970", "confidence": 0.7 } ], "by": "the desk", "restsOn": [ "cuff.toggle_swivel" ] } ]
        }
        """;

    public static TheoryData<string> ReferenceDefinitions => [.. ReferenceMembers.Keys];

    public static TheoryData<string> PieceDefinitions => [.. PieceMembers.Keys];

    private static Dictionary<string, MemberNames> ReferenceMembers { get; } = new()
    {
        ["file"] = ReferenceReader.File,
        ["feature"] = ReferenceReader.Feature,
        ["sighting"] = ReferenceReader.Sighting,
        ["question"] = ReferenceReader.Question,
        ["patent"] = ReferenceReader.Patent,
        ["maker"] = ReferenceReader.Maker,
        ["form"] = ReferenceReader.Form,
        ["address"] = ReferenceReader.Address,
        ["advert"] = ReferenceReader.Advert,
        ["mark"] = ReferenceReader.Mark,
    };

    private static Dictionary<string, MemberNames> PieceMembers { get; } = new()
    {
        ["piece"] = PieceWords.Piece,
        ["part"] = PieceWords.Part,
        ["mark"] = PieceWords.Mark,
        ["feature"] = PieceWords.Feature,
        ["subject"] = PieceWords.Subject,
        ["inscription"] = PieceWords.Inscription,
        ["record"] = PieceWords.Record,
        ["maker"] = PieceWords.Maker,
        ["advert"] = PieceWords.Advert,
        ["opinion"] = PieceWords.Opinion,
        ["window"] = PieceWords.Window,
    };

    [Theory]
    [MemberData(nameof(ReferenceDefinitions))]
    public void ReferenceSchema_Definition_HasTheMembersThatTheReaderKnows(string name)
        => AssertSame(ReferenceMembers[name], ReferenceText["$defs"]![name]!);

    [Theory]
    [MemberData(nameof(PieceDefinitions))]
    public void PieceSchema_Definition_HasTheMembersThatTheReaderKnows(string name)
        => AssertSame(PieceMembers[name], Load("piece")["$defs"]![name]!);

    [Fact]
    public void PieceSchema_Purposes_AreThoseThatTheReaderKnows()
        => Assert.Equal(
            PieceWords.Purposes.Words,
            Load("piece")["$defs"]!["inscription"]!["properties"]!["of"]!["enum"]!.AsArray().Select(w => w!.GetValue<string>()));

    [Fact]
    public void ReferenceSchema_Words_AreThoseThatTheReaderKnows()
    {
        Assert.Equal(ReferenceWords.Basis.Words, Words("feature", "basis"));
        Assert.Equal(ReferenceWords.Grade.Words, Words("feature", "grade"));
        Assert.Equal(ReferenceWords.EndedBy.Words, Words("feature", "endedBy"));
        Assert.Equal(ReferenceWords.Estimate.Words, Words("feature", "estimate"));
        Assert.Equal(ReferenceWords.Origin.Words, Words("feature", "origin"));
        Assert.Equal(ReferenceWords.MarkBasis.Words, Words("mark", "basis"));
        Assert.Equal(ReferenceWords.Ended.Words, Words("mark", "ended"));
    }

    [Fact]
    public void ReferenceSchema_SoundDocuments_AreValid()
    {
        Assert.True(IsValid(ReferenceFileTest.Whole));
        Assert.True(IsValid(ReferenceFile.Read(ReferenceFileTest.Whole).OrThrow().ToJson()));
        Assert.All(BuiltInReference.Documents(), d => Assert.True(IsValid(System.Text.Encoding.UTF8.GetString(d.Utf8)), d.Name));
    }

    [Theory]
    [InlineData("\"name\": \"quay house\"", "\"nom\": \"quay house\"")]
    [InlineData("\"name\": \"quay house\"", "\"name\": \" quay house\"")]
    [InlineData("\"format\": 1", "\"format\": 2")]
    [InlineData("\"basis\": \"patent\"", "\"basis\": \"style\"")]
    [InlineData("\"patentOfWiderClass\": true", "\"patentOfWiderClass\": \"yes\"")]
    [InlineData("\"introduced\": \"1956-03-06\"", "\"introduced\": 1956")]
    [InlineData("{ \"id\": \"US utility 2999999\"", "{ \"id\": \"US 2,999,999\"")]
    [InlineData("\"source\": \"s\", \"origin\": \"invented\" }", "\"origin\": \"invented\" }")]
    [InlineData("\"date\": \"1957\", ", "")]
    public void ReferenceSchema_FaultThatTheReaderRefuses_IsInvalidToo(string sound, string broken)
    {
        string json = ReferenceFileTest.Whole.Replace(sound, broken, StringComparison.Ordinal);
        Assert.NotEqual(ReferenceFileTest.Whole, json);
        Assert.False(IsValid(json));
        Assert.NotEmpty(ReferenceFile.Read(json).Problems);
    }

    [Fact]
    public void PieceSchema_APieceOrAListOfPieces_IsValid()
    {
        Assert.True(IsValid(WholePiece, PieceSchema));
        Assert.Empty(Piece.Read(WholePiece).Problems);
        Assert.True(IsValid("[" + WholePiece + ", { \"id\": \"QH-015\" }]", PieceSchema));
    }

    [Theory]
    [InlineData("\"id\": \"QH-014\", ", "")]
    [InlineData("\"stated\"", "\"stted\"")]
    [InlineData("\"original\": false", "\"original\": 0")]
    [InlineData("{ \"patent\": \"US utility 2999999\" }", "{ \"part\": \"back\" }")]
    [InlineData("\"of\": \"presentation\"", "\"of\": \"gift\"")]
    [InlineData("\"confidence\": 0.7", "\"confidence\": 1.7")]
    [InlineData("{ \"date\": \"1963\", ", "{ ")]
    [InlineData("\"date\": \"1955-11\"", "\"date\": 1955")]
    public void PieceSchema_Fault_IsInvalid(string sound, string broken)
    {
        string json = WholePiece.Replace(sound, broken, StringComparison.Ordinal);
        Assert.NotEqual(WholePiece, json);
        Assert.False(IsValid(json, PieceSchema));
        Assert.NotEmpty(Piece.Read(json).Problems);
    }

    internal static JsonObject Load(string name)
        => JsonNode.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "schemas", name + ".schema.json")))!.AsObject();

    internal static void AssertSame(MemberNames names, JsonNode definition)
    {
        Assert.Equal(names.Names, definition["properties"]!.AsObject().Select(p => p.Key));
        Assert.False(definition["additionalProperties"]!.GetValue<bool>());
        Assert.Equal(
            names.Names.Where((_, i) => (names.Required >> i & 1) != 0),
            definition["required"]?.AsArray().Select(r => r!.GetValue<string>()) ?? []);
    }

    private static IEnumerable<string> Words(string definition, string member)
        => ReferenceText["$defs"]![definition]!["properties"]![member]!["enum"]!.AsArray().Select(w => w!.GetValue<string>());

    private static bool IsValid(string json) => IsValid(json, ReferenceSchema);

    private static bool IsValid(string json, JsonSchema schema)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return schema.Evaluate(document.RootElement).IsValid;
    }
}
