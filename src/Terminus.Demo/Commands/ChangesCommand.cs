using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Terminus.Demo.Commands;

/// <summary><c>changes OLD NEW</c>: which pieces' dates moved between two result files, and which entry moved them.</summary>
internal static class ChangesCommand
{
    internal static Command Create(DemoConsole console)
    {
        var old = new Argument<string>("OLD") { Description = "The results before: one a line, or a list; - for standard input." };
        var now = new Argument<string>("NEW") { Description = "The results after, in the same or in another order; - for standard input." };
        Option<string> format = FormatOption.TextOrJson();
        var command = new Command("changes", "Says which pieces' dates moved between two result files, by how much, and which entry moved them.") { old, now, format };
        command.SetAction(parsed => console.Safely(() => Run(console, parsed.GetValue(old)!, parsed.GetValue(now)!, parsed.IsJson(format))));
        return command;
    }

    private static int Run(DemoConsole console, string old, string now, bool json)
    {
        if (old == "-" && now == "-")
        {
            throw new UsageException("changes reads only one of its two files from standard input.");
        }

        int code = ExitCode.Fine;
        IEnumerable<ChangesRecord> Sound(TextReader text, string file)
        {
            foreach (DocumentResult<ChangesRecord> read in ChangesRecord.ReadAll(text, file == "-" ? null : file))
            {
                if (console.Report(read.Problems))
                {
                    code = ExitCode.DataProblems;
                }

                if (read.Value is { } record)
                {
                    yield return record;
                }
            }
        }

        using StreamReader before = console.OpenText(old);
        using StreamReader after = console.OpenText(now);
        IEnumerable<ChangesPiece> changes = Changes.Between(Sound(before, old), Sound(after, now));
        if (json)
        {
            WriteJson(console, changes);
        }
        else
        {
            foreach (string paragraph in ChangesText.Of(changes))
            {
                console.WriteLine(paragraph.TrimEnd('\n'));
            }
        }

        return code;
    }

    private static void WriteJson(DemoConsole console, IEnumerable<ChangesPiece> changes)
    {
        using (var writer = new Utf8JsonWriter(
            console.Output, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            ChangesDocument.Write(writer, changes);
        }

        console.WriteLine("");
    }
}
