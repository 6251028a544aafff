namespace Terminus.Tests.Reference;

public class ReferenceFileTest
{
    /// <summary>One entry of each kind with every member, all invented.</summary>
    internal const string Whole = """
        {
          "format": 1,
          "name": "quay house",
          "version": "3",
          "features": [
            {
              "id": "cuff.tumbler", "name": "tumbler back", "group": "cuff fastening", "description": "a bar that tumbles",
              "introduced": "1956-03-06", "common": "196X", "fading": "1970~", "gone": "1980",
              "basis": "patent", "grade": "high", "endedBy": "law", "patentOfWiderClass": true,
              "patents": [ "US utility 2999999" ], "question": "cuff.closing",
              "sightings": [ { "date": "1957", "source": "Quay catalogue" }, { "date": "1958-04-01", "source": "Harbour gazette" } ],
              "estimate": "introduced", "source": "a made-up handbook", "origin": "invented", "note": "nothing else"
            }
          ],
          "questions": [ { "id": "cuff.closing", "text": "How does it close?", "objects": [ "cuff fastening" ], "part": "back", "source": "s", "origin": "memory", "note": "n" } ],
          "patents": [ { "id": "US utility 2999999", "filed": "1956-03-06", "issued": "1961-07-11", "title": "Tumbler", "assignee": "Larkfield", "source": "s", "origin": "invented" } ],
          "makers": [
            {
              "id": "larkfield", "name": "Larkfield", "from": "1920", "until": "1965",
              "forms": [ { "name": "Larkfield & Daughter", "from": "1931", "until": "1965" } ],
              "addresses": [ { "address": "2 Quay House", "from": "1920" } ], "source": "s", "origin": "invented"
            }
          ],
          "adverts": [ { "id": "ad-1", "date": "1955-11", "what": "catalogue, p. 14", "model": "Tumbler 5", "feature": "cuff.tumbler", "maker": "larkfield", "source": "s" } ],
          "marks": [ { "id": "lark", "text": "LARK", "office": "US", "maker": "larkfield", "from": "1921", "until": "1964", "basis": "law", "ended": "lapsed", "source": "s" } ]
        }
        """;

    [Fact]
    public void Read_WholeDocument_HasEveryMember()
    {
        ReferenceFile file = ReferenceFile.Read(Whole, "quay.json").OrThrow();
        FeatureEntry feature = Assert.Single(file.Features);
        Assert.Equal(("quay house", "3"), (file.Name, file.Version));
        Assert.Equal(EvidenceBasis.Patent, feature.Basis);
        Assert.Equal(EvidenceBasis.Trade, feature.CountsAs);
        Assert.True(feature.IsEndedByFact);
        Assert.Equal(EstimatedEnds.Introduced, feature.Estimate);
        Assert.Equal(DateWindow.InYear(1957), feature.Sightings[0].Date);
        Assert.Equal(("US", "utility", "2999999"), (file.Patents[0].Office, file.Patents[0].Right, file.Patents[0].Number));
        Assert.Equal("Larkfield & Daughter", file.Makers[0].Forms[0].Text);
        Assert.Equal("2 Quay House", file.Makers[0].Addresses[0].Text);
        Assert.Equal("Tumbler 5", file.Adverts[0].Model);
        Assert.True(file.Marks[0].ByLaw);
        Assert.Equal(MarkEnd.Lapsed, file.Marks[0].Ended);
        Assert.Equal("$.features[0]", feature.Place!.Path);
        Assert.Equal(6, feature.Place.Line);
    }

    [Fact]
    public void Read_WholeDocument_EachEntryKnowsItsPlace()
        => Assert.Equal(
            ["$.features[0]", "$.questions[0]", "$.patents[0]", "$.makers[0]", "$.adverts[0]", "$.marks[0]"],
            ReferenceFile.Read(Whole).OrThrow().Entries.Select(entry => entry.Place!.Path));

    [Fact]
    public void ToJson_ReadAgain_GivesAnEqualFile()
    {
        ReferenceFile file = ReferenceFile.Read(Whole).OrThrow();
        Assert.Equal(file, ReferenceFile.Read(file.ToJson(), "elsewhere.json").OrThrow());
    }

    [Fact]
    public void Read_WholeDocument_IsTheFileBuiltByHand()
    {
        static EdtfDate Date(string edtf) => EdtfDate.Parse(edtf);
        var feature = new FeatureEntry(
            "cuff.tumbler", "tumbler back", "cuff fastening", "a bar that tumbles", Date("1956-03-06"), Date("196X"), Date("1970~"), Date("1980"), EvidenceBasis.Patent,
            EvidenceGrade.High, EvidenceBasis.Law, true, ["US utility 2999999"], "cuff.closing",
            [new Sighting(DateWindow.InYear(1957), "Quay catalogue"), new Sighting(DateWindow.On(new NodaTime.LocalDate(1958, 4, 1)), "Harbour gazette")],
            EstimatedEnds.Introduced, "a made-up handbook", ReferenceOrigin.Invented, "nothing else");
        var file = new ReferenceFile(
            "quay house",
            "3",
            [feature],
            [new QuestionEntry("cuff.closing", "How does it close?", ["cuff fastening"], "back", "s", ReferenceOrigin.Memory, "n")],
            [new PatentEntry("US utility 2999999", Date("1956-03-06"), Date("1961-07-11"), "Tumbler", "Larkfield", "s", ReferenceOrigin.Invented)],
            [
                new MakerEntry(
                    "larkfield", "Larkfield", Date("1920"), Date("1965"), [new MakerDetail("Larkfield & Daughter", Date("1931"), Date("1965"))],
                    [new MakerDetail("2 Quay House", Date("1920"))], "s", ReferenceOrigin.Invented),
            ],
            [new AdvertEntry("ad-1", Date("1955-11"), "catalogue, p. 14", "Tumbler 5", "cuff.tumbler", "larkfield", "s")],
            [new MarkEntry("lark", "LARK", "US", "larkfield", Date("1921"), Date("1964"), true, MarkEnd.Lapsed, "s")]);
        Assert.Equal(file, ReferenceFile.Read(Whole).OrThrow());
    }

    [Theory]
    [InlineData("features", "\"basis\": \"style\", \"grade\": \"none\", \"endedBy\": \"none\", \"estimate\": \"none\", \"patentOfWiderClass\": 7, \"name\": \"n\"")]
    [InlineData("questions", "\"text\": \"n\"")]
    [InlineData("makers", "\"name\": \"n\", \"from\": 7")]
    [InlineData("marks", "\"text\": \"n\", \"basis\": \"style\", \"ended\": \"none\"")]
    public void Read_WordsThatAreNone_LeaveWhatIsUsual(string list, string members)
    {
        ReferenceFile read = ReferenceFile.Read($$"""{ "name": "a", "version": "1", "{{list}}": [ { "id": "i", {{members}}, "origin": "none" } ] }""").Value!;
        ReferenceFile expected = new(
            "a",
            "1",
            list == "features" ? [new FeatureEntry("i", "n")] : [],
            list == "questions" ? [new QuestionEntry("i", "n")] : [],
            makers: list == "makers" ? [new MakerEntry("i", "n")] : [],
            marks: list == "marks" ? [new MarkEntry("i", "n")] : []);
        Assert.Equal(expected, read);
    }

    [Theory]
    [InlineData("features", "{ \"id\": \"i\", \"basis\": \"trade\", \"source\": \"s\" }")]
    [InlineData("features", "{ \"name\": \"n\", \"basis\": \"trade\", \"source\": \"s\" }")]
    [InlineData("questions", "{ \"id\": \"i\" }")]
    [InlineData("questions", "{ \"text\": \"n\" }")]
    [InlineData("patents", "{ \"source\": \"s\" }")]
    [InlineData("makers", "{ \"id\": \"i\", \"source\": \"s\" }")]
    [InlineData("makers", "{ \"name\": \"n\", \"source\": \"s\" }")]
    [InlineData("adverts", "{ \"date\": \"1950\", \"source\": \"s\" }")]
    [InlineData("marks", "{ \"id\": \"i\", \"source\": \"s\" }")]
    [InlineData("marks", "{ \"text\": \"n\", \"source\": \"s\" }")]
    [InlineData("marks", "7")]
    public void Read_EntryWithoutWhatItMustHave_IsLeftOut(string list, string entry)
    {
        DocumentResult<ReferenceFile> read = ReferenceFile.Read($$"""{ "name": "a", "version": "1", "{{list}}": [ {{entry}} ] }""");
        Assert.Equal(new ReferenceFile("a", "1"), read.Value);
        Assert.Equal($"$.{list}[0]", Assert.Single(read.Problems).Path);
    }

    [Theory]
    [InlineData("{ \"version\": \"1\" }")]
    [InlineData("{ \"name\": \"a\" }")]
    [InlineData("[]")]
    public void Read_NoNameOrNoVersion_IsNoFile(string json) => Assert.Null(ReferenceFile.Read(json).Value);

    [Theory]
    [InlineData("\"1956-03-06\", \"common\"", "\"1956-13-06\", \"common\"", "$.features[0].introduced", "is no EDTF date")]
    [InlineData("\"1956-03-06\", \"common\"", "1956, \"common\"", "$.features[0].introduced", "Found the number 1956 where a date")]
    [InlineData("\"1956-03-06\", \"common\"", "\"Y17000\", \"common\"", "$.features[0].introduced", "outside the years")]
    [InlineData("\"basis\": \"patent\"", "\"basis\": \"style\"", "$.features[0].basis", "(\"patent\", \"law\", \"event\", \"trade\")")]
    [InlineData("\"basis\": \"patent\", ", "", "$.features[0]", "\"basis\" is missing")]
    [InlineData("\"grade\": \"high\"", "\"grade\": \"highest\"", "$.features[0].grade", "a grade")]
    [InlineData("\"estimate\": \"introduced\"", "\"estimate\": \"all\"", "$.features[0].estimate", "\"both\"")]
    [InlineData("{ \"date\": \"1957\", ", "{ ", "$.features[0].sightings[0]", "\"date\" is missing")]
    [InlineData("{ \"id\": \"US utility 2999999\"", "{ \"id\": \"US 2,999,999\"", "$.patents[0].id", "such as \"US utility 2999999\"")]
    [InlineData("{ \"name\": \"Larkfield & Daughter\"", "{ \"nome\": \"Larkfield\"", "$.makers[0].forms[0].nome", "Did you mean \"name\"?")]
    [InlineData("\"ended\": \"lapsed\"", "\"ended\": \"bygone\"", "$.marks[0].ended", "\"forbidden\", \"replaced\", \"lapsed\", \"custom\"")]
    [InlineData("\"date\": \"1955-11\", ", "", "$.adverts[0]", "\"date\" is missing")]
    public void Read_OneFault_IsSaidWithItsPathAndTheRestIsRead(string sound, string broken, string path, string message)
    {
        DocumentResult<ReferenceFile> result = ReferenceFile.Read(Whole.Replace(sound, broken, StringComparison.Ordinal), "quay.json");
        Assert.Contains(result.Problems, p => p.Path == path && p.Message.Contains(message, StringComparison.Ordinal) && p.File == "quay.json");
        Assert.Equal("quay house", result.Value!.Name);
        Assert.Throws<DocumentException>(result.OrThrow);
    }
}
