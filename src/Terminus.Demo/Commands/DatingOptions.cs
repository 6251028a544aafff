using System.CommandLine;
using NodaTime;
using NodaTime.Text;

namespace Terminus.Demo.Commands;

/// <summary>The options that every command that dates pieces has, and what they come to.</summary>
internal sealed class DatingOptions
{
    private readonly Option<string?> asOf = new("--as-of") { Description = "The day of the opinion, as 2026-11-25. Default: today.", HelpName = "DAY" };

    private readonly Option<double> confidence = LevelOption.Create("The level of the interval");

    private readonly LayersOption layers = new("Reference files to lay over the built-in one, in this order.");

    private readonly Option<string?> assumptions = new("--assumptions") { Description = "A file that replaces house defaults.", HelpName = "FILE" };

    internal void AddTo(Command command)
    {
        command.Add(asOf);
        command.Add(confidence);
        command.Add(layers.Option);
        command.Add(assumptions);
    }

    /// <summary>What the options come to; problems of the files go to the error stream.</summary>
    internal DatingSettings Settings(ParseResult parsed, DemoConsole console)
    {
        string? day = parsed.GetValue(asOf);
        LocalDate asOfDay = day is null ? Today() : ParseDay(day);
        (ReferenceSet reference, bool hasProblems) = layers.Read(parsed, console);
        var settings = new DatingSettings
        {
            Confidence = parsed.GetValue(confidence),
            IsToday = day is null,
            AsOf = asOfDay,
            Reference = reference,
            HasProblems = hasProblems,
        };
        if (parsed.GetValue(assumptions) is { } assumptionsFile)
        {
            DocumentResult<Assumptions> read = Assumptions.Read(console.ReadAll(assumptionsFile), assumptionsFile);
            settings.Report(read.Problems, console);
            settings.Assumptions = read.Value ?? settings.Assumptions;
        }

        return settings;
    }

    // The one place where the clock of the machine is read.
    internal static LocalDate Today() => SystemClock.Instance.GetCurrentInstant().InZone(DateTimeZoneProviders.Tzdb.GetSystemDefault()).Date;

    private static LocalDate ParseDay(string text)
        => LocalDatePattern.Iso.Parse(text) is { Success: true } day
            ? day.Value
            : throw new UsageException($"--as-of is a day such as 2026-11-25, not \"{text}\".");
}

/// <summary>What the dating options of a command line come to.</summary>
internal sealed class DatingSettings
{
    internal required LocalDate AsOf { get; init; }

    internal bool IsToday { get; init; }

    internal required double Confidence { get; init; }

    internal required ReferenceSet Reference { get; init; }

    internal Assumptions Assumptions { get; set; } = Assumptions.House;

    /// <summary>Whether any file that was read had a problem.</summary>
    internal bool HasProblems { get; set; }

    internal PieceDating? Date(DocumentResult<Piece> read) => PieceDating.Of(read, AsOf, Reference, Assumptions, Confidence);

    /// <summary>Dates the piece of a document, or each of its list, and reports their problems.</summary>
    internal List<PieceDating> DateAll(byte[] document, string file, DemoConsole console)
    {
        IReadOnlyList<DocumentResult<Piece>> pieces = Piece.ReadAll(document, file == "-" ? null : file);
        if (pieces.Count == 0)
        {
            console.Errors.WriteLine((file == "-" ? "standard input" : file) + ": the list holds no piece.");
        }

        return [.. pieces.Select(read => DateAndReport(read, console)).OfType<PieceDating>()];
    }

    /// <summary>Dates a piece and reports its problems; one without a place in a file is shown under the id of the piece.</summary>
    internal PieceDating? DateAndReport(DocumentResult<Piece> read, DemoConsole console)
    {
        PieceDating? dating = Date(read);
        IEnumerable<DocumentProblem> problems = dating is null
            ? read.Problems
            : dating.Problems.Select(p => p.Line > 0 ? p : new DocumentProblem(p.Message, p.Path, dating.Piece.Id));
        Report(problems, console);
        return dating;
    }

    internal void Report(IEnumerable<DocumentProblem> problems, DemoConsole console) => HasProblems |= console.Report(problems);
}
