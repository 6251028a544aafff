using System.CommandLine;
using System.Text.Json;

namespace Terminus.Demo.Commands;

/// <summary><c>edtf TEXT</c>: reads a date of ISO 8601-2.</summary>
internal static class EdtfCommand
{
    internal static Command Create(DemoConsole console)
    {
        var text = new Argument<string>("TEXT") { Description = "An EDTF expression; - for one a line on standard input." };
        var format = new Option<string>("--format") { Description = "How to answer.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        var command = new Command("edtf", "Reads a date of ISO 8601-2 (EDTF).") { text, format };
        command.SetAction(parsed => console.Safely(() => Run(console, parsed.GetValue(text)!, parsed.GetValue(format) == "json")));
        return command;
    }

    private static int Run(DemoConsole console, string text, bool json)
    {
        if (text != "-")
        {
            return Answer(console, text, json, oneLine: false) ? ExitCode.Fine : ExitCode.DataProblems;
        }

        int code = ExitCode.Fine;
        foreach (string line in console.ReadLines())
        {
            code = Answer(console, line, json, oneLine: true) ? code : ExitCode.DataProblems;
        }

        return code;
    }

    private static bool Answer(DemoConsole console, string text, bool json, bool oneLine)
    {
        bool valid = EdtfDate.TryParse(text, out EdtfDate? date, out EdtfError? error);
        console.WriteLine(json ? JsonText.Write(w => Write(w, text, date, error), indented: !oneLine) : InWords(text, date, error));
        return valid;
    }

    private static void Write(Utf8JsonWriter json, string text, EdtfDate? date, EdtfError? error)
    {
        json.WriteStartObject();
        json.WriteString("text", text);
        json.WriteBoolean("valid", date is not null);
        WriteOrNull(json, "level", date?.Level);
        WriteBound(json, "notBefore", date?.Earliest);
        WriteBound(json, "notAfter", date?.Latest);
        if (error is not null)
        {
            json.WriteString("error", error.Reason);
            json.WriteNumber("position", error.Position);
        }

        json.WriteEndObject();
    }

    private static void WriteOrNull(Utf8JsonWriter json, string name, int? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void WriteBound(Utf8JsonWriter json, string name, EdtfBound? bound)
        => JsonText.WriteOrNull(json, name, bound is { Kind: EdtfBoundKind.Known } known ? known.ToString() : null);

    private static string InWords(string text, EdtfDate? date, EdtfError? error)
        => date is null
            ? $"{text}: not EDTF: {error!.Reason} (at character {error.Position + 1})"
            : $"{text}: level {date.Level}, from {date.Earliest} to {date.Latest}"
                + (date.IsApproximate ? ", approximate" : "") + (date.IsUncertain ? ", uncertain" : "");
}
