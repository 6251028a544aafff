namespace Terminus.Tests.Demo.Commands;

public class ChangesCommandTest
{
    private static readonly string Old = Result("1950");
    private static readonly string New = Result("1940");

    [Fact]
    public void Changes_MovedPiece_IsToldWithItsMove()
    {
        DemoRun run = DemoRun.WithFile(Old, New, "changes", "{file}", "-");
        Assert.Equal((0, ""), (run.Code, run.Errors));
        Assert.Contains("interval  1950 or earlier → 1940 or earlier (end 10 years earlier)", run.Output, StringComparison.Ordinal);
        Assert.Contains("1 compared, 1 moved", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Changes_Json_IsOneDocument()
    {
        DemoRun run = DemoRun.WithFile(Old, New, "changes", "{file}", "-", "--format", "json");
        Assert.Equal(1, run.Json.GetProperty("moved").GetInt32());
        Assert.Equal(-3652, run.Json.GetProperty("changes")[0].GetProperty("interval").GetProperty("endDays").GetInt32());
        Assert.EndsWith("}\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Changes_SameResults_HaveNone()
        => Assert.Equal(0, DemoRun.WithFile(Old, Old, "changes", "{file}", "-", "--format", "json").Json.GetProperty("changes").GetArrayLength());

    [Fact]
    public void Changes_BadLine_IsReportedAndTheRestIsCompared()
    {
        string line = Old.Replace("\n", "", StringComparison.Ordinal);
        DemoRun run = DemoRun.WithFile(line + "\nbad\n", line, "changes", "{file}", "-", "--format", "json");
        Assert.Equal(1, run.Code);
        Assert.Contains("This is no JSON.", run.Errors, StringComparison.Ordinal);
        Assert.Equal(1, run.Json.GetProperty("compared").GetInt32());
    }

    [Fact]
    public void Changes_TwiceStandardInput_IsUsage() => Assert.Equal(2, DemoRun.Of("", "changes", "-", "-").Code);

    [Fact]
    public void Changes_FileThatIsNotThere_IsADataProblem() => Assert.Equal(1, DemoRun.Of("", "changes", "-", "no such file").Code);

    private static string Result(string year) => DemoRun.Of(
        $$"""{ "id": "X-1", "records": [ { "date": "{{year}}", "what": "an invented receipt" } ] }""", "date", "-", "--as-of", "2026-11-25", "--format", "json").Output;
}
