using System.CommandLine;
using System.Text.Json;

namespace Terminus.Demo.Commands;

/// <summary><c>check FILE</c>: whether a reference file can be read and makes sense.</summary>
internal static class CheckCommand
{
    internal static Command Create(DemoConsole console)
    {
        var file = new Argument<string>("FILE") { Description = "A reference file, as JSON; - for standard input." };
        var layers = new LayersOption("Reference files that lie between the built-in one and this one, in this order.");
        Option<string> format = FormatOption.TextOrJson();
        var command = new Command("check", "Checks a reference file: its form, and the sense of its dates, numbers and ids.") { file, layers.Option, format };
        command.SetAction(parsed => console.Safely(() =>
        {
            (ReferenceSet beneath, bool hasProblems) = layers.Read(parsed, console);
            int code = Run(console, parsed.GetValue(file)!, beneath, parsed.IsJson(format));
            return hasProblems ? ExitCode.DataProblems : code;
        }));
        return command;
    }

    private static int Run(DemoConsole console, string file, ReferenceSet beneath, bool json)
    {
        string? name = file == "-" ? null : file;
        DocumentResult<ReferenceFile> read = ReferenceFile.Read(console.ReadAll(file), name);
        IReadOnlyList<ReferenceFinding> findings = read.Value is null ? [] : ReferenceCheck.Run(read.Value, beneath);
        IReadOnlyList<ReferenceReplacement> replaced = read.Value is null
            ? []
            : [.. beneath.With(read.Value).Replacements.Skip(beneath.Replacements.Count)];
        if (json)
        {
            console.WriteLine(JsonText.Write(w => Write(w, read, findings, replaced)));
        }
        else
        {
            console.Report(read.Problems);
            WriteText(console, name, read, findings, replaced);
        }

        return read.IsSound && findings.Count == 0 ? ExitCode.Fine : ExitCode.DataProblems;
    }

    private static void WriteText(
        DemoConsole console,
        string? name,
        DocumentResult<ReferenceFile> read,
        IReadOnlyList<ReferenceFinding> findings,
        IReadOnlyList<ReferenceReplacement> replaced)
    {
        foreach (ReferenceFinding finding in findings)
        {
            console.WriteLine($"{(finding.File is null ? "" : finding.File + ":")}{finding.Line}: {finding.Path}: {finding.Id}: {ReasonText.Of(finding.Reason)}");
        }

        foreach (ReferenceReplacement replacement in replaced)
        {
            console.WriteLine($"replaces {replacement.Id}");
        }

        console.WriteLine($"{name ?? "standard input"}: {Counted.Of(Count(read.Value), "entry", "entries")}, {Counted.Of(read.Problems.Count, "problem")} of form, {findings.Count} of sense.");
    }

    private static void Write(
        Utf8JsonWriter json,
        DocumentResult<ReferenceFile> read,
        IReadOnlyList<ReferenceFinding> findings,
        IReadOnlyList<ReferenceReplacement> replaced)
    {
        json.WriteStartObject();
        json.WriteNumber("format", 1);
        json.WriteString("name", read.Value?.Name);
        json.WriteString("version", read.Value?.Version);
        json.WriteNumber("entries", Count(read.Value));
        json.WriteStartArray("problems");
        foreach (DocumentProblem problem in read.Problems)
        {
            json.WriteStartObject();
            WritePlace(json, problem.Line, problem.Path);
            json.WriteString("message", problem.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("findings");
        foreach (ReferenceFinding finding in findings)
        {
            json.WriteStartObject();
            WritePlace(json, finding.Line, finding.Path);
            json.WriteString("id", finding.Id);
            json.WriteString("rule", finding.Rule);
            json.WriteString("text", ReasonText.Of(finding.Reason));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("replaces");
        foreach (ReferenceReplacement replacement in replaced)
        {
            json.WriteStringValue(replacement.Id);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter json, int? line, string path)
    {
        if (line is { } known)
        {
            json.WriteNumber("line", known);
        }

        json.WriteString("path", path);
    }

    private static int Count(ReferenceFile? file)
        => file is null ? 0 : file.Features.Count + file.Questions.Count + file.Patents.Count + file.Makers.Count + file.Adverts.Count + file.Marks.Count;
}
