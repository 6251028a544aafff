using System.CommandLine;
using System.Text.Json;

namespace Terminus.Demo.Commands;

/// <summary><c>number OFFICE RIGHT NUMBER</c>: the window that a number gives.</summary>
internal static class NumberCommand
{
    internal static Command Create(DemoConsole console)
    {
        var words = new Argument<string[]>("OFFICE RIGHT NUMBER")
        {
            Description = "A WIPO ST.3 code, a right and a number, as US utility 2999999; lost digits as ?. Or - for lines of the three on standard input.",
            Arity = ArgumentArity.OneOrMore,
        };
        var format = new Option<string>("--format") { Description = "How to answer.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        var command = new Command("number", "Says when the number of a patent or another right is from.") { words, format };
        command.SetAction(parsed => console.Safely(() => Run(console, parsed.GetValue(words)!, parsed.GetValue(format) == "json")));
        return command;
    }

    private static int Run(DemoConsole console, string[] words, bool json)
    {
        if (words is ["-"])
        {
            int code = ExitCode.Fine;
            foreach (string line in console.ReadLines())
            {
                string[] three = line.Split([' ', '\t'], 3, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
                code = three.Length == 3 && Answer(console, three, json, oneLine: true) ? code : ExitCode.DataProblems;
                if (three.Length != 3)
                {
                    console.Errors.WriteLine($"A line has an office, a right and a number; this one is \"{line}\".");
                    Empty(console, line, json);
                }
            }

            return code;
        }

        if (words.Length < 3)
        {
            throw new UsageException("number takes an office, a right and a number, such as US utility 2999999.");
        }

        return Answer(console, [words[0], words[1], string.Join(' ', words[2..])], json, oneLine: false) ? ExitCode.Fine : ExitCode.DataProblems;
    }

    private static bool Answer(DemoConsole console, string[] three, bool json, bool oneLine)
    {
        NumberReading reading = RegisterSet.BuiltIn.Read(three[0].ToUpperInvariant(), three[1].ToLowerInvariant(), three[2]);
        console.WriteLine(json ? JsonText.Write(w => Write(w, reading), indented: !oneLine) : InWords(reading));
        return reading.Windows.Count > 0;
    }

    // A line that is not three words still gets a line, so that answers stay beside their questions.
    private static void Empty(DemoConsole console, string line, bool json)
        => console.WriteLine(json
            ? JsonText.Write(
                w =>
                {
                    w.WriteStartObject();
                    w.WriteString("error", "A line has an office, a right and a number.");
                    w.WriteString("path", "$");
                    w.WriteString("text", line);
                    w.WriteEndObject();
                },
                indented: false)
            : line + ": not an office, a right and a number");

    private static void Write(Utf8JsonWriter json, NumberReading reading)
    {
        json.WriteStartObject();
        json.WriteString("office", reading.Office);
        json.WriteString("right", reading.Right);
        json.WriteString("number", reading.Number);
        JsonText.WriteWindows(json, reading.Windows);
        if (reading.Best is { } best)
        {
            json.WriteStartObject("best");
            JsonText.WriteEnds(json, best);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("best");
        }

        json.WriteString("why", Why(reading));
        json.WriteString("outcome", JsonText.Kebab(reading.Outcome.ToString()));
        json.WriteStartArray("documents");
        foreach (string id in reading.DocumentIds)
        {
            json.WriteStringValue(id);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static string Why(NumberReading reading) => string.Join(" ", reading.Reasons.Select(ReasonText.Of));

    private static string InWords(NumberReading reading)
    {
        var lines = new List<string> { $"{reading.Office} {reading.Right} {reading.Number}" };
        lines.AddRange(reading.Windows.Select(w => "  " + w));
        lines.Add("  " + Why(reading));
        if (reading.Writings.Count > 0)
        {
            lines.Add("  Ask a patent library for: " + string.Join(", ", reading.Writings));
        }

        return string.Join('\n', lines);
    }
}
