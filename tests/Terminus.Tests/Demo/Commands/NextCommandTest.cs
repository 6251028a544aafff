namespace Terminus.Tests.Demo.Commands;

public class NextCommandTest
{
    private const string Brooch = "{ \"id\": \"X-1\", \"object\": \"brooch\" }";

    [Fact]
    public void Next_BroochWithNothingKnown_AsksForTheCatchFirst()
    {
        DemoRun run = DemoRun.Of(Brooch, "next", "-", "--as-of", "2026-11-25");
        Assert.Equal((0, ""), (run.Code, run.Errors));
        Assert.Contains("  1  Which catch holds the pin? [catch]", run.Output, StringComparison.Ordinal);
        Assert.Contains("It tells 0.", run.Output, StringComparison.Ordinal);
        Assert.All(run.Output.Split('\n'), line => Assert.True(line.Length <= 100, line));
    }

    [Fact]
    public void Next_Json_RanksTheQuestions()
    {
        DemoRun run = DemoRun.Of(Brooch, "next", "-", "--as-of", "2026-11-25", "--format", "json");
        Assert.Equal("brooch.catch", run.Json.GetProperty("steps")[0].GetProperty("question").GetString());
        Assert.True(run.Json.GetProperty("best").GetInt32() is >= 2 and <= 3);
    }

    [Fact]
    public void Next_List_GivesAList()
        => Assert.Equal(2, DemoRun.Of($"[{Brooch}, {Brooch}]", "next", "-", "--format", "json").Json.GetArrayLength());

    [Fact]
    public void Next_PieceWithAProblem_AnswersAndSaysSo()
    {
        DemoRun run = DemoRun.Of("{ \"id\": \"X-1\", \"features\": [ { \"feature\": \"x.unknown\" } ] }", "next", "-");
        Assert.Equal(1, run.Code);
        Assert.Contains("x.unknown", run.Errors, StringComparison.Ordinal);
        Assert.NotEmpty(run.Output);
    }

    [Theory]
    [InlineData("next")]
    [InlineData("next", "-", "--format", "xml")]
    [InlineData("next", "-", "--confidence", "2")]
    public void Next_UsedWrongly_IsUsage(params string[] arguments) => Assert.Equal(2, DemoRun.Of(Brooch, arguments).Code);

    [Fact]
    public void Next_FileThatIsNotThere_IsADataProblem() => Assert.Equal(1, DemoRun.Of("", "next", "no such file").Code);
}
