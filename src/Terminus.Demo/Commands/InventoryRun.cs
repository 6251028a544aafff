using System.Diagnostics;
using Terminus.Demo.Csv;

namespace Terminus.Demo.Commands;

/// <summary>How a run answers.</summary>
internal enum AnswerForm
{
    /// <summary>A JSON document on each line.</summary>
    Json,

    /// <summary>A table with a row for each line.</summary>
    Csv,

    /// <summary>One web page.</summary>
    Html,
}

/// <summary>One run over a collection: from what to what, with progress where somebody watches and a summary at the end.</summary>
internal sealed class InventoryRun(DemoConsole console) : IProgress<InventorySummary>
{
    private const int ProgressEveryMilliseconds = 200;

    private readonly Stopwatch sinceReport = Stopwatch.StartNew();
    private bool isShown;

    internal required string File { get; init; }

    internal required string? Output { get; init; }

    internal required bool IsCsv { get; init; }

    internal required AnswerForm Form { get; init; }

    internal required InventoryOptions Options { get; init; }

    internal async Task<int> RunAsync(DatingSettings settings, CancellationToken cancellation)
    {
        if (Output is not null && File != "-" && Path.GetFullPath(Output) == Path.GetFullPath(File))
        {
            throw new UsageException("--output is the collection itself, which would be lost.");
        }

        using Stream source = console.OpenInput(File);
        WarnOfAList(source);
        using Stream lines = IsCsv ? CsvPieces.AsJsonLines(source, Refuse, cancellation) : source;
        InventorySummary summary;
        try
        {
            summary = Form == AnswerForm.Html ? await WritePageAsync(lines, cancellation) : await WriteLinesAsync(lines, cancellation);
        }
        finally
        {
            ClearProgress();
        }

        await console.Errors.WriteLineAsync(summary.ToString());
        return settings.HasProblems || summary.Refused + summary.WithProblems > 0 ? ExitCode.DataProblems : ExitCode.Fine;
    }

    private void Refuse(DocumentProblem row)
        => console.Report([new DocumentProblem(row.Message, row.Path, File == "-" ? null : File, row.Line, row.Column)]);

    // The commonest slip is to give the file that date takes.
    private void WarnOfAList(Stream source)
    {
        if (!IsCsv && source.CanSeek && File != "-")
        {
            byte[] start = new byte[64];
            int read = source.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
            source.Position = 0;
            if (JsonText.IsList(start.AsSpan(0, read)))
            {
                console.Errors.WriteLine(File + " begins as a list, which is for date; here each line is a piece of its own.");
            }
        }
    }

    private async Task<InventorySummary> WriteLinesAsync(Stream lines, CancellationToken cancellation)
    {
        using WholeLinesFile? file = Output is null ? null : new WholeLinesFile(DemoConsole.PlaceOf(Output));
        Stream results = file ?? console.Output;
        return Form == AnswerForm.Csv
            ? await CsvResults.WriteAsync(Inventory.DateAsync(lines, Options, cancellation), results, this)
            : await Inventory.WriteAsync(lines, results, Options, this, cancellation);
    }

    // The page is made before its file is, so that nothing is replaced by half a page.
    private async Task<InventorySummary> WritePageAsync(Stream lines, CancellationToken cancellation)
    {
        (string page, InventorySummary summary) = await HtmlAnswers.OfAsync(Inventory.DateAsync(lines, Options, cancellation), this);
        console.WriteFile(Output, page);
        return summary;
    }

    /// <summary>Shows how far the run is, on a terminal only.</summary>
    public void Report(InventorySummary value)
    {
        if (console.IsWatched && sinceReport.ElapsedMilliseconds >= ProgressEveryMilliseconds)
        {
            sinceReport.Restart();
            isShown = true;
            console.Errors.Write(FormattableString.Invariant($"\r{value.Lines:N0} lines"));
        }
    }

    private void ClearProgress()
    {
        if (isShown)
        {
            console.Errors.Write("\r                              \r");
        }
    }
}
