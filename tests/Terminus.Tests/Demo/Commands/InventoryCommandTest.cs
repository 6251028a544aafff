using System.Text;
using System.Xml.Linq;
using Terminus.Tests.Inventories;

namespace Terminus.Tests.Demo.Commands;

public sealed class InventoryCommandTest
{
    private const string Good = "{\"id\":\"A\",\"records\":[{\"date\":\"1950\",\"what\":\"sales receipt\",\"new\":true}]}\n";

    [Fact]
    public void Inventory_StandardInput_IsAFilter()
    {
        DemoRun run = DemoRun.Of(Good + "bad\n" + Good, "inventory", "-", "--as-of", "2026-11-25");

        string[] lines = run.Output.Split('\n');
        Assert.Equal(4, lines.Length);
        Assert.Equal(lines[0], lines[2]);
        Assert.StartsWith("{\"error\":\"This is not JSON", lines[1], StringComparison.Ordinal);
        Assert.Equal("3 lines: 0 dated, 2 open-ended, 0 undatable, 1 refused; 0 disagree, 0 with problems\n", run.Errors.ReplaceLineEndings("\n"));
        Assert.Equal(1, run.Code);
    }

    [Fact]
    public void Inventory_SoundCollection_EndsWithZero()
        => Assert.Equal(0, DemoRun.Of(Good, "inventory", "-", "--as-of", "2026-11-25").Code);

    [Fact]
    public void Inventory_Csv_HasTheAnswersOfTheDocumentsItStandsFor()
    {
        string csv = "id,title,receipts,features.back,replaced\nA,,1950 sales receipt,,\n\"B\",\"links, \"\"gilt\"\"\",,cuff.toggle_swivel | cuff.snap_apart,pin\n";
        string json = Good
            + "{\"id\":\"B\",\"title\":\"links, \\\"gilt\\\"\",\"features\":[{\"feature\":\"cuff.toggle_swivel\",\"part\":\"back\"},{\"feature\":\"cuff.snap_apart\",\"part\":\"back\"}],"
            + "\"parts\":[{\"part\":\"pin\",\"original\":false}]}\n";

        Assert.Equal(
            DemoRun.Of(json, "inventory", "-", "--as-of", "2026-11-25").Output,
            DemoRun.Of(csv, "inventory", "-", "--input", "csv", "--as-of", "2026-11-25").Output);
    }

    [Fact]
    public void Inventory_Html_IsOnePageThatNamesWhatWasNotDated()
    {
        DemoRun run = DemoRun.Of(Good + "bad <line>\n" + Good, "inventory", "-", "--html", "--as-of", "2026-11-25");

        XElement page = XElement.Parse(run.Output[run.Output.IndexOf("<html", StringComparison.Ordinal)..]);
        string text = string.Concat(page.DescendantNodes().OfType<XText>().Select(t => t.Value));
        Assert.Contains("2 pieces:", text, StringComparison.Ordinal);
        Assert.Contains("Not dated", text, StringComparison.Ordinal);
        Assert.Contains("bad <line>", text, StringComparison.Ordinal);
        Assert.Equal(1, run.Code);
        Assert.StartsWith("3 lines:", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Inventory_HtmlOfMoreThanAPageHolds_IsRefusedAndTheFileIsLeftAlone()
    {
        string many = string.Concat(Enumerable.Repeat("{\"id\":\"A\"}\n", 10_001));
        DemoRun run = DemoRun.WithFile("kept", many, "inventory", "-", "--html", "-o", "{file}");
        Assert.Equal((2, ""), (run.Code, run.Output));
        Assert.Contains("at most 10,000 lines", run.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--format", "csv")]
    [InlineData("--steps")]
    public void Inventory_HtmlWithAnotherForm_IsRefused(params string[] options)
        => Assert.Equal(2, DemoRun.Of(Good, ["inventory", "-", "--html", .. options]).Code);

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("-LARKFIELD-", "'-LARKFIELD-")]
    [InlineData("'@home", "''@home")]
    [InlineData("'plain", "'plain")]
    [InlineData("QH-1", "QH-1")]
    public void Inventory_WordsThatASpreadsheetWouldRun_AreGuardedInCsvAndReadBack(string id, string cell)
    {
        string json = "{\"id\":\"" + id + "\"}\n";
        string csv = DemoRun.Of(json, "inventory", "-", "--format", "csv").Output;
        Assert.Equal(cell, csv.Split('\n')[1].Split(',')[0]);
        Assert.Equal(
            DemoRun.Of(json, "inventory", "-", "--as-of", "2026-11-25").Output,
            DemoRun.Of("id,title\n" + cell + ",\n", "inventory", "-", "--input", "csv", "--as-of", "2026-11-25").Output);
    }

    [Fact]
    public void Inventory_AList_IsSaidToBeForDateAndAnsweredLineByLine()
    {
        DemoRun run = DemoRun.WithFile("\uFEFF [\n" + Good + "]\n", "", "inventory", "{file}", "--format", "csv");
        Assert.Equal(1, run.Code);
        Assert.Contains("begins as a list, which is for date", run.Errors, StringComparison.Ordinal);
        Assert.Equal(4, run.Output.Split('\n').Count(line => line.Length > 0));
    }

    [Fact]
    public void Inventory_CsvRowThatIsWrong_IsAnsweredAndTheRestGoesOn()
    {
        DemoRun run = DemoRun.Of("id,title\n,no id\nA,x,beyond\nB\n", "inventory", "-", "--input", "csv", "--as-of", "2026-11-25");

        string[] lines = run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("{\"error\":\"The member \\\"id\\\" is missing; a piece must have it.\",\"path\":\"$\",\"text\":\"{\\\"title\\\":\\\"no id\\\"}\"}", lines[0]);
        Assert.Contains("column 3", lines[1], StringComparison.Ordinal);
        Assert.Contains("\"id\":\"B\"", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Inventory_CsvColumnThatIsNotKnown_IsRefusedWithThoseThatAre()
    {
        DemoRun run = DemoRun.Of("id,maker name\nA,x\n", "inventory", "-", "--input", "csv");

        Assert.Equal((1, ""), (run.Code, run.Output));
        Assert.Contains("The column \"maker name\" is not known; a collection has id, title, object, stated, marks,", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Inventory_CsvAnswers_AreOneRowALine()
    {
        DemoRun run = DemoRun.Of(Good + "bad\n", "inventory", "-", "--format", "csv", "--as-of", "2026-11-25");

        string[] rows = run.Output.Split('\n');
        Assert.StartsWith("id,title,possibleNotBefore,possibleNotAfter,notBefore,", rows[0], StringComparison.Ordinal);
        Assert.StartsWith("A,,,1950-12-31,", rows[1], StringComparison.Ordinal);
        Assert.EndsWith("$,bad", rows[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Inventory_OutputFile_HasWhatStandardOutputWouldHave()
    {
        string path = Path.Combine(Path.GetTempPath(), "terminus-" + Guid.NewGuid().ToString("N"));
        try
        {
            DemoRun run = DemoRun.Of(Good, "inventory", "-", "--as-of", "2026-11-25", "-o", path);

            Assert.Equal((0, ""), (run.Code, run.Output));
            Assert.Equal(DemoRun.Of(Good, "inventory", "-", "--as-of", "2026-11-25").Output, File.ReadAllText(path, Encoding.UTF8));
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void Inventory_OutputOverItsInput_IsAUsageError()
    {
        DemoRun run = DemoRun.WithFile(Good, "", "inventory", "{file}", "-o", "{file}");

        Assert.Equal(2, run.Code);
        Assert.Contains("would be lost", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Inventory_FileThatIsNotThere_IsADataProblem()
    {
        string output = Path.Combine(Path.GetTempPath(), "terminus-" + Guid.NewGuid().ToString("N"));

        Assert.Equal(1, DemoRun.Of("", "inventory", "/no/such/file", "-o", output).Code);
        Assert.False(File.Exists(output));
    }

    [Fact]
    public void Inventory_OutputThatCannotBeWritten_EndsWithTheReason()
    {
        using var full = new FailingStream(1000);
        using var errors = new StringWriter();
        using var input = new MemoryStream(InventoryGenerator.Utf8(9, 200));

        int code = new Terminus.Demo.DemoConsole(input, full, errors).Run(["inventory", "-", "--as-of", "2026-11-25"]);

        Assert.Equal(1, code);
        Assert.Contains("No space is left.", errors.ToString(), StringComparison.Ordinal);
    }
}
