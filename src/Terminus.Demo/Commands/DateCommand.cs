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
        format.AcceptOnlyFromAmong("text", "json", "svg", "html", "linked-art");
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
        List<PieceDating> dated = settings.DateAll(document, file, console);
        bool isList = JsonText.IsList(document);
        if (dated.Count > 0 || isList)
        {
            Write(console, dated, isList, settings, format, steps);
        }

        return settings.HasProblems ? ExitCode.DataProblems : ExitCode.Fine;
    }

    // A list is answered by one list, one picture or one page, however many pieces it has.
    private static void Write(DemoConsole console, List<PieceDating> dated, bool isList, DatingSettings settings, string format, bool steps)
    {
        switch (format)
        {
            case "json" when isList:
                WriteList(console, dated, (json, dating) => ResultDocument.Write(json, dating, steps));
                break;
            case "json":
                console.WriteLine(ResultDocument.ToJson(dated[0], steps));
                break;
            case "linked-art" when isList:
                WriteList(console, dated, (json, dating) => LinkedArt.Write(json, dating));
                break;
            case "linked-art":
                console.WriteLine(LinkedArt.ToJson(dated[0]));
                break;
            case "svg":
                console.WriteLine((isList ? Timeline.ToSvg(dated) : Timeline.ToSvg(dated[0])).TrimEnd('\n'));
                break;
            case "html":
                console.WriteLine((isList ? HtmlPage.Of(dated) : HtmlPage.Of(dated[0])).TrimEnd('\n'));
                break;
            default:
                WriteText(console, dated, settings, steps);
                break;
        }
    }

    private static void WriteList(DemoConsole console, List<PieceDating> dated, Action<Utf8JsonWriter, PieceDating> write)
        => console.WriteLine(JsonText.Write(json =>
        {
            json.WriteStartArray();
            foreach (PieceDating dating in dated)
            {
                write(json, dating);
            }

            json.WriteEndArray();
        }));

    private static void WriteText(DemoConsole console, List<PieceDating> dated, DatingSettings settings, bool steps)
    {
        string day = settings.IsToday ? "\nThe day of the opinion is today." : "";
        console.WriteParagraphs(dated.Select(dating => Explanation.Of(dating, steps).TrimEnd('\n') + day));
    }
}
