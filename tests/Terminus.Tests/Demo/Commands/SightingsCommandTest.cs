namespace Terminus.Tests.Demo.Commands;

public class SightingsCommandTest
{
    // Invented sightings in invented catalogues.
    private const string Csv = """
        date,source,feature
        1950,"Larkfield list, spring",x.clip
        1952,Larkfield list 2,x.clip
        1955-06,Tarn list,x.clip
        1960,Tarn list 2,x.clip
        1940,one source,x.once
        """;

    [Fact]
    public void Sightings_TwoFeatures_AreEstimatedApart()
    {
        DemoRun run = DemoRun.Of(Csv, "sightings", "-", "--format", "json");
        Assert.Equal((0, ""), (run.Code, run.Errors));
        System.Text.Json.JsonElement estimates = run.Json.GetProperty("estimates");
        Assert.Equal(2, estimates.GetArrayLength());
        Assert.Equal("x.clip", estimates[0].GetProperty("feature").GetString());
        Assert.Equal(4, estimates[0].GetProperty("sources").GetInt32());
        Assert.False(estimates[0].GetProperty("refused").GetBoolean());
        Assert.Equal("1950-01-01", estimates[0].GetProperty("extreme").GetProperty("notBefore").GetString());
    }

    [Fact]
    public void Sightings_OneSource_IsRefusedWithTheReason_AndThatIsAnAnswer()
    {
        DemoRun run = DemoRun.Of(Csv, "sightings", "-");
        Assert.Equal(0, run.Code);
        Assert.Contains("x.once: 1 sighting, 1 independent source", run.Output, StringComparison.Ordinal);
        Assert.Contains("no estimate", run.Output, StringComparison.Ordinal);
        Assert.Contains("One independent source says nothing", run.Output, StringComparison.Ordinal);
    }

    private const string Reference = """
        {
          "name": "Sloe Lane", "version": "1.0.0",
          "features": [ { "id": "x.clip", "name": "invented clip", "basis": "trade", "grade": "medium", "origin": "invented", "source": "Invented." } ]
        }
        """;

    [Fact]
    public void Sightings_IntoAReferenceFile_AnswersWithTheFileAndItsEndEstimatedAnew()
    {
        string clips = string.Join('\n', Csv.ReplaceLineEndings("\n").Split('\n')[..5]);
        DemoRun run = DemoRun.WithFile(Reference, clips, "sightings", "-", "--end", "last", "--into", "{file}");

        Assert.Equal((0, ""), (run.Code, run.Errors));
        FeatureEntry entry = Assert.Single(ReferenceFile.Read(run.Output).OrThrow().Features);
        Assert.Equal(4, entry.Sightings.Count);
        Assert.Equal(EstimatedEnds.Gone, entry.Estimate);
        FeatureEntry expected = ReferenceFile.Read(Reference).OrThrow().Features[0] with { Sightings = entry.Sightings };
        Assert.Equal(expected.WithEstimate(EstimatedEnds.Gone), entry);
        Assert.NotNull(entry.Gone);
        Assert.Equal(run.Output, DemoRun.WithFile(run.Output, clips, "sightings", "-", "--end", "last", "--into", "{file}").Output);
    }

    [Fact]
    public void Sightings_OfNoFeatureIntoAFileOfTwo_SaysThatTheyNameNone()
    {
        string two = Reference.Replace("[ {", "[ { \"id\": \"x.hook\", \"name\": \"hook\", \"basis\": \"trade\", \"source\": \"Invented.\" }, {", StringComparison.Ordinal);
        DemoRun run = DemoRun.WithFile(two, "date,source\n1951,a\n", "sightings", "-", "--into", "{file}");
        Assert.Equal((1, "feature: Sightings name no feature, and the file has x.hook, x.clip."), (run.Code, run.Errors.TrimEnd()));
    }

    // The law and its day are made up.
    private static readonly string ByLaw = Reference.Replace(
        "\"basis\": \"trade\"", "\"introduced\": \"1932-10-01\", \"gone\": \"1966\", \"basis\": \"law\", \"endedBy\": \"event\"", StringComparison.Ordinal);

    [Theory]
    [InlineData("first", "\"introduced\", 1932-10-01 by law, stays")]
    [InlineData("last", "\"gone\", 1966 by an event, stays")]
    public void Sightings_IntoAnEntryThatALawDates_KeepsTheDateAndSaysSo(string end, string note)
    {
        string clips = string.Join('\n', Csv.ReplaceLineEndings("\n").Split('\n')[..5]);
        DemoRun run = DemoRun.WithFile(ByLaw, clips, "sightings", "-", "--end", end, "--into", "{file}");

        Assert.Equal(0, run.Code);
        Assert.StartsWith("x.clip: " + note, run.Errors, StringComparison.Ordinal);
        FeatureEntry entry = Assert.Single(ReferenceFile.Read(run.Output).OrThrow().Features);
        Assert.Equal(("1932-10-01", "1966", EstimatedEnds.None), (entry.Introduced!.Text, entry.Gone!.Text, entry.Estimate));
        Assert.Equal(4, entry.Sightings.Count);
    }

    [Fact]
    public void Sightings_IntoAnEntryThatALawDates_ReplacesTheDateWhereToldTo()
    {
        string clips = string.Join('\n', Csv.ReplaceLineEndings("\n").Split('\n')[..5]);
        DemoRun run = DemoRun.WithFile(ByLaw, clips, "sightings", "-", "--into", "{file}", "--replace-facts");

        Assert.Equal(0, run.Code);
        Assert.StartsWith("x.clip: \"introduced\", 1932-10-01 by law, gives way to", run.Errors, StringComparison.Ordinal);
        FeatureEntry entry = Assert.Single(ReferenceFile.Read(run.Output).OrThrow().Features);
        Assert.Equal((EstimatedEnds.Introduced, EvidenceBasis.Trade), (entry.Estimate, entry.CountsAs));
        Assert.NotEqual("1932-10-01", entry.Introduced!.Text);
        Assert.Equal("", DemoRun.WithFile(run.Output, clips, "sightings", "-", "--into", "{file}").Errors);
    }

    [Fact]
    public void Sightings_IntoAFileWithoutTheFeature_SaysSoAndTheRestGoesIn()
    {
        DemoRun run = DemoRun.WithFile(Reference, Csv, "sightings", "-", "--into", "{file}");

        Assert.Equal(1, run.Code);
        Assert.Contains("no feature \"x.once\"; it has x.clip.", run.Errors, StringComparison.Ordinal);
        Assert.NotNull(ReferenceFile.Read(run.Output).OrThrow().Features[0].Introduced);
    }

    [Theory]
    [InlineData("--into", "{file}", "--method", "linear")]
    [InlineData("--into", "{file}", "--format", "json")]
    [InlineData("--into", "{file}", "--confidence", "0.8")]
    [InlineData("-o", "{file}")]
    [InlineData("--replace-facts")]
    public void Sightings_IntoWithWhatItDoesNotHeed_IsRefused(params string[] options)
        => Assert.Equal((2, ""), DemoRun.WithFile(Reference, Csv, ["sightings", "-", .. options]) is var run ? (run.Code, run.Output) : default);

    [Fact]
    public void Sightings_IntoAFileThatIsNotSound_WritesNothing()
    {
        DemoRun run = DemoRun.WithFile(Reference.Replace("\"name\": \"Sloe", "\"nam\": \"Sloe", StringComparison.Ordinal), Csv, "sightings", "-", "--into", "{file}");
        Assert.Equal((1, ""), (run.Code, run.Output));
        Assert.Contains("nam", run.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("auto")]
    [InlineData("abrupt")]
    [InlineData("gradual")]
    [InlineData("linear")]
    public void Sightings_EachMethodAndEnd_AnswersAsTheLibraryDoes(string method)
    {
        DemoRun run = DemoRun.Of(Csv, "sightings", "-", "--end", "last", "--method", method, "--confidence", "0.8", "--format", "json");
        System.Text.Json.JsonElement estimate = run.Json.GetProperty("estimates")[0];
        Sighting[] clips =
        [
            new(DateWindow.InYear(1950), "a"), new(DateWindow.InYear(1952), "b"),
            new(DateWindow.Between(new(1955, 6, 1), new(1955, 6, 30)), "c"), new(DateWindow.InYear(1960), "d"),
        ];
        SightingEstimate expected = SightingEstimate.Of(clips, SightingEnd.Last, Enum.Parse<SightingMethod>(method, ignoreCase: true), 0.8);
        Assert.Equal(method, estimate.GetProperty("method").GetString());
        Assert.Equal(expected.Bound is { } day ? DateText.Iso(day) : null, estimate.GetProperty("bound").GetString());
    }

    [Fact]
    public void Sightings_BadDate_IsReportedWithItsLine_AndTheRestGoesOn()
    {
        DemoRun run = DemoRun.Of("date,source\n1950,a\nsoon,b\n1955,c\n", "sightings", "-", "--format", "json");
        Assert.Equal(1, run.Code);
        Assert.Contains("\"soon\" is no date", run.Errors, StringComparison.Ordinal);
        Assert.Contains("3:", run.Errors, StringComparison.Ordinal);
        Assert.Equal(2, run.Json.GetProperty("estimates")[0].GetProperty("sources").GetInt32());
    }

    [Fact]
    public void Sightings_NoHeader_IsADataProblem()
    {
        DemoRun run = DemoRun.Of("1950,a\n", "sightings", "-");
        Assert.Equal(1, run.Code);
        Assert.Contains("The header has the columns date and source", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Sightings_Nothing_AnswersNothing() => Assert.Equal(0, DemoRun.Of("date,source\n", "sightings", "-", "--format", "json").Json.GetProperty("estimates").GetArrayLength());

    [Theory]
    [InlineData("--end", "middle")]
    [InlineData("--method", "guess")]
    [InlineData("--confidence", "0")]
    public void Sightings_UsedWrongly_IsUsage(params string[] option) => Assert.Equal(2, DemoRun.Of(Csv, ["sightings", "-", .. option]).Code);
}
