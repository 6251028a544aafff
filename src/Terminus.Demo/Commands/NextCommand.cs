using System.CommandLine;

namespace Terminus.Demo.Commands;

/// <summary><c>next FILE</c>: what to look at next on a piece, or on each of a list.</summary>
internal static class NextCommand
{
    internal static Command Create(DemoConsole console)
    {
        var file = new Argument<string>("FILE") { Description = "A piece, or a list of pieces, as JSON; - for standard input." };
        Option<string> format = FormatOption.TextOrJson();
        var options = new DatingOptions();
        var command = new Command("next", "Says what to look at next, and by how much each answer would move the date.") { file, format };
        options.AddTo(command);
        command.SetAction(parsed => console.Safely(() => Run(
            console, parsed.GetValue(file)!, options.Settings(parsed, console), parsed.IsJson(format))));
        return command;
    }

    private static int Run(DemoConsole console, string file, DatingSettings settings, bool json)
    {
        byte[] document = console.ReadAll(file);
        List<NextSteps> advice = [.. settings.DateAll(document, file, console).Select(dating => NextSteps.Of(dating))];
        if (!json)
        {
            console.WriteParagraphs(advice.Select(a => AdviceText.Of(a).TrimEnd('\n')));
        }
        else if (!JsonText.IsList(document))
        {
            advice.ForEach(a => console.WriteLine(AdviceDocument.ToJson(a)));
        }
        else
        {
            console.WriteLine(JsonText.Write(w =>
            {
                w.WriteStartArray();
                advice.ForEach(a => AdviceDocument.Write(w, a));
                w.WriteEndArray();
            }));
        }

        return settings.HasProblems ? ExitCode.DataProblems : ExitCode.Fine;
    }
}
