using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Terminus.Demo.Csv;

namespace Terminus.Demo.Commands;

/// <summary><c>sightings FILE</c>: when each feature of a file of dated sightings came in or went out.</summary>
internal static class SightingsCommand
{
    internal static Command Create(DemoConsole console)
    {
        var file = new Argument<string>("FILE") { Description = "CSV with the columns date (EDTF), source and, where there are several, feature; - for standard input." };
        var end = new Option<string>("--end") { Description = "Which end to estimate: first or last.", DefaultValueFactory = _ => "first" };
        end.AcceptOnlyFromAmong("first", "last");
        var method = new Option<string>("--method") { Description = "What is known of how it came in or went out.", DefaultValueFactory = _ => "auto" };
        method.AcceptOnlyFromAmong("auto", "abrupt", "gradual", "linear");
        Option<double> confidence = LevelOption.Create("The confidence of the bound");
        Option<string> format = FormatOption.TextOrJson();
        var into = new Option<string?>("--into") { HelpName = "FILE", Description = "A reference file: answers with it, its features with these sightings and the end estimated anew." };
        var output = new Option<string?>("--output", "-o") { HelpName = "FILE", Description = "The file to write with --into; it is replaced. Default: standard output." };
        var replaceFacts = new Option<bool>("--replace-facts") { Description = "With --into: estimates an end anew even where a patent, a law or an event dates it." };
        var command = new Command("sightings", "Estimates when a feature came in or went out from its dated sightings.")
        {
            file, end, method, confidence, format, into, output, replaceFacts,
        };
        command.Validators.Add(parsed =>
        {
            bool chooses = new Option[] { method, confidence, format }.Any(o => parsed.GetResult(o) is { Implicit: false });
            if (parsed.GetValue(into) is not null && chooses)
            {
                parsed.AddError("--into answers with a reference file, by the entry's own method and confidence: leave out --method, --confidence and --format.");
            }
            else if (parsed.GetValue(into) is null && (parsed.GetValue(output) is not null || parsed.GetValue(replaceFacts)))
            {
                parsed.AddError("-o and --replace-facts go with --into, which answers with a reference file.");
            }
        });
        command.SetAction(parsed => console.Safely(() => parsed.GetValue(into) is { } reference ? Correct(
            console,
            parsed.GetValue(file)!,
            Enum.Parse<SightingEnd>(parsed.GetValue(end)!, ignoreCase: true),
            reference,
            parsed.GetValue(output),
            parsed.GetValue(replaceFacts)) : Run(
            console,
            parsed.GetValue(file)!,
            Enum.Parse<SightingEnd>(parsed.GetValue(end)!, ignoreCase: true),
            Enum.Parse<SightingMethod>(parsed.GetValue(method)!, ignoreCase: true),
            parsed.GetValue(confidence),
            parsed.IsJson(format))));
        return command;
    }

    // A refusal is an answer: it does not make the data bad.
    private static int Run(DemoConsole console, string file, SightingEnd end, SightingMethod method, double confidence, bool json)
    {
        (List<Sighting> sightings, int code) = Read(console, file);
        List<(string Feature, SightingEstimate Estimate)> estimates =
        [
            .. sightings.GroupBy(s => s.Feature, StringComparer.Ordinal)
                .OrderBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => (g.Key, SightingEstimate.Of(g, end, method, confidence))),
        ];
        if (json)
        {
            console.WriteLine(JsonText.Write(w => Write(w, estimates)));
        }
        else
        {
            console.WriteParagraphs(estimates.Select(e => InWords(e.Feature, e.Estimate)));
        }

        return code;
    }

    private static (List<Sighting> Sightings, int Code) Read(DemoConsole console, string file)
    {
        int code = ExitCode.Fine;
        using StreamReader text = console.OpenText(file);
        return (CsvSightings.Read(text, file == "-" ? null : file, problem => code = Complain(console, problem)), code);
    }

    private static int Complain(DemoConsole console, DocumentProblem problem)
    {
        console.Report([problem]);
        return ExitCode.DataProblems;
    }

    // A file that is not read whole is not written anew, since what was not read would be lost.
    private static int Correct(DemoConsole console, string file, SightingEnd end, string into, string? output, bool replaceFacts)
    {
        DocumentResult<ReferenceFile> read = ReferenceFile.Read(console.ReadAll(into), into == "-" ? null : into);
        if (!read.IsSound)
        {
            console.Report(read.Problems);
            return ExitCode.DataProblems;
        }

        (List<Sighting> sightings, int code) = Read(console, file);
        var correction = new SightingsInto(end, replaceFacts, problem => code = Complain(console, problem), console.Errors.WriteLine);
        console.WriteFile(output, correction.Correct(read.Value!, sightings).ToJson());
        return code;
    }

    private static void Write(Utf8JsonWriter json, List<(string Feature, SightingEstimate Estimate)> estimates)
    {
        json.WriteStartObject();
        json.WriteNumber("format", 1);
        json.WriteStartArray("estimates");
        foreach ((string feature, SightingEstimate estimate) in estimates)
        {
            json.WriteStartObject();
            json.WriteString("feature", feature);
            json.WriteString("end", Lower(estimate.End));
            json.WriteString("method", Lower(estimate.Method));
            json.WriteNumber("confidence", Math.Round(estimate.Confidence, 12));
            json.WriteNumber("sightings", estimate.Given);
            json.WriteNumber("sources", estimate.Sources);
            json.WriteBoolean("refused", estimate.IsRefused);
            json.WriteString("estimator", estimate.Estimator is { } estimator ? JsonText.Kebab(estimator.ToString()) : null);
            json.WriteBoolean("approximate", estimate.IsApproximate);
            WriteWindow(json, "extreme", estimate.Extreme);
            WriteWindow(json, "point", estimate.Point);
            json.WriteString("bound", estimate.Bound is { } day ? NodaTime.Text.LocalDatePattern.Iso.Format(day) : null);
            JsonText.WriteWindows(json, estimate.Windows);
            json.WriteStartArray("reasons");
            foreach (Reason reason in estimate.Reasons)
            {
                json.WriteStartObject();
                json.WriteString("rule", reason.Rule);
                json.WriteString("text", ReasonText.Of(reason));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteWindow(Utf8JsonWriter json, string name, DateWindow? window)
    {
        if (window is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        JsonText.WriteEnds(json, known);
        json.WriteEndObject();
    }

    private static string InWords(string feature, SightingEstimate estimate)
    {
        bool first = estimate.End == SightingEnd.First;
        var lines = new List<string>
        {
            $"{(feature.Length == 0 ? "the feature" : feature)}: {Counted.Of(estimate.Given, "sighting")}, {Counted.Of(estimate.Sources, "independent source")}",
        };
        if (estimate.Extreme is { } extreme)
        {
            lines.Add($"  {(first ? "first" : "last")} seen {extreme}");
        }

        if (estimate.IsRefused)
        {
            lines.Add("  no estimate");
        }
        else
        {
            lines.Add($"  {(first ? "came in on or after" : "went out on or before")} {estimate.Bound?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) ?? "a day outside the calendar"}"
                + $" ({estimate.Confidence.ToString("0.###", CultureInfo.InvariantCulture)}{(estimate.IsApproximate ? ", approximately" : "")})"
                + (estimate.Point is { } point ? $", best guess {point}" : ""));
        }

        lines.AddRange(estimate.Windows.Select(w => "    " + w));
        lines.AddRange(estimate.Reasons.Select(r => "  " + ReasonText.Of(r)));
        return string.Join('\n', lines);
    }

    private static string Lower<T>(T value)
        where T : struct, Enum
        => JsonText.Kebab(value.ToString());
}
