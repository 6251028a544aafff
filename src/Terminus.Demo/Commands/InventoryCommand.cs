using System.CommandLine;

namespace Terminus.Demo.Commands;

/// <summary><c>inventory FILE</c>: dates a whole collection, one piece a line, and answers one result a line.</summary>
internal static class InventoryCommand
{
    internal static Command Create(DemoConsole console)
    {
        var file = new Argument<string>("FILE") { Description = "The collection, one piece a line (JSON Lines) or a row (CSV); - for standard input." };
        var output = new Option<string?>("--output", "-o") { HelpName = "FILE", Description = "The file to write; it is replaced. Default: standard output." };
        var input = new Option<string?>("--input") { Description = "What the collection is. Default: csv where the file is called .csv, else json." };
        input.AcceptOnlyFromAmong("json", "csv");
        var format = new Option<string>("--format") { Description = "How to answer.", DefaultValueFactory = _ => "json" };
        format.AcceptOnlyFromAmong("json", "csv");
        var html = new Option<bool>("--html")
        {
            Description = FormattableString.Invariant($"Answers with one web page that stands alone, for up to {HtmlAnswers.MostPieces:N0} lines."),
        };
        var steps = new Option<bool>("--steps") { Description = "Adds the answers at all levels to JSON." };
        var options = new DatingOptions();
        var command = new Command("inventory", "Dates a collection, one piece a line, in order.") { file, output, input, format, html, steps };
        options.AddTo(command);
        command.Validators.Add(parsed =>
        {
            if (parsed.GetValue(html) && (parsed.GetResult(format) is { Implicit: false } || parsed.GetValue(steps)))
            {
                parsed.AddError("--html is a form of answer of its own: leave out --format and --steps.");
            }
        });
        command.SetAction((parsed, cancellation) => console.SafelyAsync(() =>
        {
            DatingSettings settings = options.Settings(parsed, console);
            var run = new InventoryRun(console)
            {
                File = parsed.GetValue(file)!,
                Output = parsed.GetValue(output),
                IsCsv = parsed.GetValue(input) is { } said ? said == "csv" : parsed.GetValue(file)!.EndsWith(".csv", StringComparison.OrdinalIgnoreCase),
                Form = parsed.GetValue(html) ? AnswerForm.Html : parsed.GetValue(format) == "csv" ? AnswerForm.Csv : AnswerForm.Json,
                Options = new InventoryOptions(
                    settings.AsOf, settings.Reference, settings.Assumptions, settings.Confidence, parsed.GetValue(steps)),
            };
            return run.RunAsync(settings, cancellation);
        }));
        return command;
    }
}
