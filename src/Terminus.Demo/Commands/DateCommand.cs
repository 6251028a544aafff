using System.CommandLine;
using System.Text.Json;

namespace Terminus.Demo.Commands;

/// <summary><c>date FILE</c>: dates a piece, or each of a list.</summary>
internal static class DateCommand
{
    internal static Command Create(DemoConsole console)
    {
        var file = new Argument<string>("FILE") { Description = "A piece, or a list of pieces, as JSON; - for standard input." };
        var steps = new Option<bool>("--steps") { Description = "Adds the answers at all levels." };
        var format = new Option<string>("--format") { Description = "How to answer.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        var options = new DatingOptions();
        var command = new Command("date", "Dates a piece, or each of a list.") { file, steps, format };
        options.AddTo(command);
        command.SetAction(parsed => console.Safely(() => Run(
            console, parsed.GetValue(file)!, options.Settings(parsed, console), parsed.GetValue(format)!, parsed.GetValue(steps))));
        return command;
    }

    private static int Run(DemoConsole console, string file, DatingSettings settings, string format, bool steps)
    {
        byte[] document = console.ReadAll(file);
        IReadOnlyList<DocumentResult<Piece>> pieces = Piece.ReadAll(document, file == "-" ? null : file);
        var dated = new List<PieceDating>();
        foreach (DocumentResult<Piece> read in pieces)
        {
            if (settings.Date(read) is { } dating)
            {
                dated.Add(dating);
                settings.Report(dating.Problems, console);
            }
            else
            {
                settings.Report(read.Problems, console);
            }
        }

        if (format == "json")
        {
            WriteJson(console, dated, isList: JsonText.IsList(document), steps);
        }
        else
        {
            WriteText(console, dated, settings, steps);
        }

        return settings.HasProblems ? ExitCode.DataProblems : ExitCode.Fine;
    }

    private static void WriteJson(DemoConsole console, List<PieceDating> dated, bool isList, bool steps)
    {
        if (!isList)
        {
            if (dated.Count == 1)
            {
                console.WriteLine(ResultDocument.ToJson(dated[0], steps));
            }

            return;
        }

        console.WriteLine(JsonText.Write(json =>
        {
            json.WriteStartArray();
            foreach (PieceDating dating in dated)
            {
                ResultDocument.Write(json, dating, steps);
            }

            json.WriteEndArray();
        }));
    }

    private static void WriteText(DemoConsole console, List<PieceDating> dated, DatingSettings settings, bool steps)
    {
        string day = settings.IsToday ? " (today)" : "";
        for (int i = 0; i < dated.Count; i++)
        {
            if (i > 0)
            {
                console.WriteLine("");
            }

            console.WriteLine(Explanation.Of(dated[i], steps) + (day.Length == 0 ? "" : "The day of the opinion is today."));
        }
    }
}
