using Terminus.Demo;
using Terminus.Tests.Inventories;

namespace Terminus.Tests.Demo;

public class DemoConsoleTest
{
    private const string Piece = """{ "id": "X-1", "records": [ { "date": "1950", "what": "an invented receipt" } ] }""";

    [Fact]
    public void Run_NoCommand_DatesTheDemoInventoryExplainsItsTableAndSaysHowToGoOn()
    {
        DemoRun run = DemoRun.Of("");
        Assert.Equal(0, run.Code);
        Assert.Contains("QH-028", run.Output, StringComparison.Ordinal);
        Assert.Contains("YES marks evidence that contradicts itself.", run.Output, StringComparison.Ordinal);
        Assert.EndsWith("terminus-demo --help.\n", run.Output, StringComparison.Ordinal);
        Assert.All(run.Output.Split('\n'), line => Assert.InRange(line.Length, 0, 110));
    }

    [Fact]
    public void Run_Help_NamesEveryCommandAndWhatIsReturned()
    {
        DemoRun run = DemoRun.Of("", "--help");
        Assert.Equal((0, ""), (run.Code, run.Errors));
        foreach (string command in new[] { "date", "inventory", "edtf", "read", "number", "next", "sightings", "check", "changes" })
        {
            Assert.Contains("\n  " + command + " <", run.Output, StringComparison.Ordinal);
        }

        Assert.Contains("It returns 0, 1", string.Join(' ', run.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("--version")]
    [InlineData("edtf", "1956")]
    public void Run_AnswersThatCannotBeWritten_EndWithAMessage(params string[] arguments)
    {
        using var full = new FailingStream(1);
        using var errors = new StringWriter();
        Assert.Equal(1, new DemoConsole(Stream.Null, full, errors).Run(arguments));
        Assert.StartsWith("terminus-demo: ", errors.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_WhatIsNotAllowed_IsSaidOnOneLineWithWhatIs()
    {
        DemoRun run = DemoRun.Of(Piece, "date", "-", "--format", "pdf");
        Assert.Equal((2, ""), (run.Code, run.Output));
        Assert.Equal(2, run.Errors.TrimEnd().Split('\n').Length);
        Assert.Contains("'linked-art'", run.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("date")]
    [InlineData("next")]
    [InlineData("inventory")]
    [InlineData("sightings")]
    public void Run_ALevelThatIsNone_IsUsageThatQuotesIt(string command)
    {
        foreach (string level in new[] { "0", "90", "0,9", "-0.5", "NaN", "sure", "" })
        {
            DemoRun run = DemoRun.Of(Piece, command, "-", "--confidence", level);
            Assert.Equal((2, ""), (run.Code, run.Output));
            Assert.Contains($"such as 0.9, not \"{level}\"", run.Errors, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Run_FileThatIsNotThere_IsNamedAsItWasTyped()
    {
        DemoRun run = DemoRun.Of("", "date", "no-such/piece.json");
        Assert.Equal((1, ""), (run.Code, run.Output));
        Assert.Equal("terminus-demo: There is no file no-such/piece.json.", run.Errors.TrimEnd());
    }

    [Fact]
    public void Run_AFolder_IsSaidToBeOne()
        => Assert.Contains("is a folder, where a file is wanted", DemoRun.Of("", "inventory", Path.GetTempPath()).Errors, StringComparison.Ordinal);

    [Theory]
    [InlineData("no-such/answers", "There is no folder for no-such/answers.")]
    [InlineData(".", ". is a folder, where a file is wanted.")]
    public void Run_AnAnswerThatHasNoPlace_SaysWhy(string place, string message)
    {
        foreach (string[] form in new string[][] { [], ["--html"] })
        {
            DemoRun run = DemoRun.Of(Piece, ["inventory", "-", "-o", place, .. form]);
            Assert.Equal((1, ""), (run.Code, run.Output));
            Assert.Equal("terminus-demo: " + message, run.Errors.TrimEnd());
        }
    }

    [Theory]
    [InlineData("date")]
    [InlineData("next")]
    public void Run_AListWithoutPieces_SaysSoAndAnswersNothing(string command)
    {
        DemoRun run = DemoRun.Of("[]", command, "-");
        Assert.Equal((0, ""), (run.Code, run.Output));
        Assert.Contains("holds no piece", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void StandardInput_NamedTwice_IsUsage()
    {
        DemoRun run = DemoRun.Of("{\"id\":\"A\"}", "date", "-", "--reference", "-");
        Assert.Equal((2, ""), (run.Code, run.Output));
        Assert.Contains("Standard input can be read once", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Date_ALongStatedDate_StandsApartFromWhatIsSaidOfIt()
    {
        DemoRun run = DemoRun.Of("{\"id\":\"A\",\"stated\":\"1890-04-17/1890-05-01\"}", "date", "-", "--as-of", "2026-11-25");
        Assert.Contains("  stated          1890-04-17/1890-05-01: ", run.Output, StringComparison.Ordinal);
        Assert.False(run.Output.EndsWith("\n\n", StringComparison.Ordinal));
    }

    [Fact]
    public void Date_AWordingWhoseReasonNamesItsSource_DoesNotRepeatIt()
    {
        DemoRun run = DemoRun.Of("{\"id\":\"A\",\"marks\":[{\"text\":\"STERLING\"}]}", "date", "-", "--as-of", "2026-11-25");
        Assert.Contains("in use from 1850 by custom", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("\n       source: ", run.Output, StringComparison.Ordinal);
    }
}
