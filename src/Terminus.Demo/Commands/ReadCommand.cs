using System.CommandLine;
using System.Text.Json;

namespace Terminus.Demo.Commands;

/// <summary><c>read TEXT</c>: what is stamped, as marks.</summary>
internal static class ReadCommand
{
    internal static Command Create(DemoConsole console)
    {
        var text = new Argument<string>("TEXT")
        {
            Description = "What is stamped, with / for a line break and ? or [ ] for lost letters; - for one a line on standard input.",
        };
        var format = new Option<string>("--format") { Description = "How to answer.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        var command = new Command("read", "Reads what is stamped on a thing.") { text, format };
        command.SetAction(parsed => console.Safely(() => Run(console, parsed.GetValue(text)!, parsed.GetValue(format) == "json")));
        return command;
    }

    private static int Run(DemoConsole console, string text, bool json)
    {
        foreach (string line in text == "-" ? console.ReadLines() : [text])
        {
            Inscription read = Inscription.Read(line);
            console.WriteLine(json ? JsonText.Write(w => Write(w, read), indented: text != "-") : InWords(read));
        }

        return ExitCode.Fine;
    }

    private static void Write(Utf8JsonWriter json, Inscription read)
    {
        json.WriteStartObject();
        json.WriteString("text", read.Text);
        json.WriteStartArray("marks");
        foreach (Mark mark in read.Marks)
        {
            WriteMark(json, mark);
        }

        json.WriteEndArray();
        json.WriteStartArray("unread");
        foreach (TextPart part in read.Unread)
        {
            json.WriteStringValue(part.Text);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteMark(Utf8JsonWriter json, Mark mark)
    {
        json.WriteStartObject();
        json.WriteString("kind", mark.KindName);
        JsonText.WriteOrNull(json, "office", mark.Office);
        JsonText.WriteOrNull(json, "right", mark.Right);
        JsonText.WriteOrNull(json, "number", mark.Number);
        JsonText.WriteOrNull(json, "date", mark.Date);
        json.WriteString("text", mark.Text);
        JsonText.WriteWindows(json, mark.Windows);
        json.WriteString("why", Why(mark));
        json.WriteStartArray("alternatives");
        foreach (Mark other in mark.Alternatives)
        {
            WriteMark(json, other);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static string Why(Mark mark) => string.Join(" ", mark.Reasons.Select(ReasonText.Of));

    private static string InWords(Inscription read)
    {
        var lines = new List<string> { read.Text };
        foreach (Mark mark in read.Marks)
        {
            lines.Add($"  \"{mark.Text}\": {Describe(mark)}");
            lines.AddRange(mark.Windows.Select(w => "      " + w));
            if (mark.Reasons.Count > 0)
            {
                lines.Add("      " + Why(mark));
            }

            lines.AddRange(mark.Alternatives.Select(
                other => ("      or: " + Describe(other) + (other.Windows.Count == 0 ? "" : ", " + other.Windows[0]) + ". " + Why(other)).TrimEnd()));
        }

        lines.AddRange(read.Unread.Where(u => u.HasWords).Select(u => $"  not read: \"{u.Text.Trim()}\""));
        return string.Join('\n', lines);
    }

    private static string Describe(Mark mark)
        => string.Join(' ', new[] { mark.KindName.Replace('-', ' '), mark.Office, mark.Right?.Replace('-', ' '), mark.Number, mark.Date }.Where(w => w is not null));
}
