namespace Terminus.Tests.Demo.Commands;

public class CheckCommandTest
{
    private const string Sound = """
        { "format": 1, "name": "invented", "version": "1",
          "features": [ { "id": "x.clip", "name": "clip", "introduced": "1920", "common": "1930", "basis": "trade", "source": "invented", "origin": "invented" } ] }
        """;

    [Fact]
    public void Check_SoundFile_HasNothingToSay()
    {
        DemoRun run = DemoRun.Of(Sound, "check", "-");
        Assert.Equal((0, ""), (run.Code, run.Errors));
        Assert.Equal("standard input: 1 entry, 0 problems of form, 0 of sense.\n", run.Output);
    }

    [Fact]
    public void Check_DatesOutOfOrder_AreFoundWithTheirPlace()
    {
        DemoRun run = DemoRun.Of(Sound.Replace("1930", "1910", StringComparison.Ordinal), "check", "-", "--format", "json");
        Assert.Equal(1, run.Code);
        System.Text.Json.JsonElement finding = Assert.Single(run.Json.GetProperty("findings").EnumerateArray());
        Assert.Equal("x.clip", finding.GetProperty("id").GetString());
        Assert.Equal(2, finding.GetProperty("line").GetInt32());
        Assert.StartsWith("$.features[0]", finding.GetProperty("path").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Check_MisspeltMember_IsAProblemOfForm()
    {
        string wrong = Sound.Replace("introduced", "introdced", StringComparison.Ordinal);
        DemoRun text = DemoRun.Of(wrong, "check", "-");
        Assert.Equal(1, text.Code);
        Assert.Contains("introdced", text.Errors, StringComparison.Ordinal);
        Assert.NotEqual(0, DemoRun.Of(wrong, "check", "-", "--format", "json").Json.GetProperty("problems").GetArrayLength());
    }

    [Fact]
    public void Check_EntryOfALowerLayer_IsSaidToBeReplaced()
    {
        DemoRun run = DemoRun.WithFile(Sound, Sound, "check", "-", "--reference", "{file}", "--format", "json");
        Assert.Equal("x.clip", Assert.Single(run.Json.GetProperty("replaces").EnumerateArray()).GetString());
    }

    [Fact]
    public void Check_NoJson_IsADataProblem() => Assert.Equal(1, DemoRun.Of("nonsense", "check", "-").Code);

    [Fact]
    public void Check_NoFile_IsUsage() => Assert.Equal(2, DemoRun.Of("", "check").Code);
}
