using System.Globalization;

namespace Terminus.Benchmarks.Figures;

/// <summary>The tables of the page, each from the figures of one run.</summary>
internal sealed class Tables(RawFigures raw, string folder)
{
    private static readonly string[] Sizes = ["2", "8", "32", "256"];
    private static readonly double[] Spans = [1e6, 1e7, 1e8, 1e9];
    private static readonly string[] Databases = ["library on one thread", "database on one thread", "database on two threads"];

    private static readonly (string Name, string Method, string? Alike)[] Ways =
    [
        ("twenty expressions for these texts, generated", "RegularExpressions", "twenty expressions"),
        ("the same, compiled at run time", "CompiledExpressions", "twenty expressions"),
        ("expressions of the whole vocabulary, compiled at run time", "VocabularyExpressions", "the vocabulary"),
        ("the reader: kinds, numbers, dates", "Kinds", null),
        ("the reader: the same with offices, windows, reasons and other readings", "Reader", null),
    ];

    /// <summary>The table that stands under a name, or null where there is none.</summary>
    internal IEnumerable<string>? Named(string name) => name switch
    {
        "machine" => Lines("machine.txt").Select(l => "- " + l),
        "targets" => Table("what|measured|baseline|ratio|target|outcome", new Targets(raw).All.Select(t => t.ToString())),
        "engine" => Table("items|day numbers|from evidence|bytes, day numbers|bytes, from evidence", Sizes.Select(Engine)),
        "others" => Table("items|day grid|second differences|100,000 draws|every pattern", Sizes.Select(Others)),
        "accuracy" => Table(
            "items|exact belief|engine|second differences|draws|grid, 327 years|grid, 654 years|window, days|grid's window, 327 years|654 years",
            Sizes.Select(Accuracy)),
        "inscriptions" => Table("an inscription|time|bytes|read as the reader does: gathered|invented", Ways.Select(Inscription)),
        "collections" => Table("pieces|floor|one worker|two workers|floor, a piece|one worker, a piece|ratio", Collection.Sizes.Select(Collections)),
        "steps" => Lines("steps.md"),
        "database" => Table("a million pieces|fastest|a piece", Database()),
        "machines" => Table("pieces|one run of the console|splits on this machine", Spans.Select(Machines)),
        _ => null,
    };

    private IEnumerable<string> Lines(string file)
        => Path.Combine(folder, file) is var path && File.Exists(path) ? File.ReadLines(path) : [FigureText.NotMeasured];

    private static IEnumerable<string> Table(string head, IEnumerable<string> rows)
    {
        string[] columns = head.Split('|');
        return [Row(columns), "|" + string.Concat(columns.Select(_ => "---|")), .. rows];
    }

    private static string Row(params string[] cells) => "| " + string.Join(" | ", cells) + " |";

    private string Engine(string items) => Row(
        items,
        FigureText.Time(Combination("DayNumbers", items)),
        FigureText.Time(Combination("FromEvidence", items)),
        FigureText.Whole(Combination("DayNumbers, bytes", items)),
        FigureText.Whole(Combination("FromEvidence, bytes", items)));

    private string Others(string items)
    {
        double pattern = raw["EnumerationBenchmarks.Enumeration", "Items=" + items];
        return Row(
            items, Beside("Grid", items), Beside("Differences", items), Beside("Sampling", items), Beside(pattern, items));
    }

    private string Beside(string method, string items) => Beside(Combination(method, items), items);

    private string Beside(double time, string items)
        => double.IsNaN(time) ? FigureText.Time(time) : $"{FigureText.Time(time)} ({FigureText.Times(time / Combination("DayNumbers", items))} times)";

    private double Combination(string method, string items) => raw["CombinationBenchmarks." + method, "Items=" + items];

    private string Accuracy(string items)
    {
        string of = items + " items";
        return Row(
            items,
            raw["exact belief", of].ToString("0.0000", CultureInfo.InvariantCulture),
            FigureText.Error(raw["engine error", of]),
            FigureText.Error(raw["second differences error", of]),
            FigureText.Error(raw["sampling error", of]),
            FigureText.Error(raw["day grid of 327 years, error", of]),
            FigureText.Error(raw["day grid of 654 years, error", of]),
            FigureText.Whole(raw["exact window", of]),
            FigureText.Whole(raw["day grid of 327 years, window", of]),
            FigureText.Whole(raw["day grid of 654 years, window", of]));
    }

    private string Inscription((string Name, string Method, string? Alike) way) => Row(
        way.Name,
        FigureText.Time(raw.Inscription(way.Method)),
        FigureText.Whole(raw.Inscription(way.Method + ", bytes")),
        Alike(way.Alike, "gathered"),
        Alike(way.Alike, "invented"));

    private string Alike(string? way, string texts) => way is null ? FigureText.NotMeasured
        : FigureText.Whole(raw["texts read alike by " + way, texts]) + " of " + FigureText.Whole(raw["texts", texts]);

    private string Collections(string pieces)
    {
        double count = double.Parse(pieces.Split(' ')[0], CultureInfo.InvariantCulture);
        double floor = raw["floor, fastest", pieces];
        double one = raw["one worker, fastest", pieces];
        return Row(
            FigureText.Whole(count),
            FigureText.Seconds(floor),
            FigureText.Seconds(one),
            FigureText.Seconds(raw["two workers, fastest", pieces]),
            FigureText.Seconds(floor / count),
            FigureText.Seconds(one / count),
            FigureText.Times(one / floor));
    }

    private IEnumerable<string> Database()
        => Databases.Select(way => (Way: way, Seconds: raw[way + ", fastest", Collection.Million]))
            .Select(r => Row(r.Way, FigureText.Seconds(r.Seconds), FigureText.Seconds(r.Seconds / 1e6)));

    private string Machines(double pieces) => Row(
        FigureText.Whole(pieces),
        Duration(raw["one run, a million pieces", "splits"] * pieces / 1e6),
        Duration(raw["splits, a million pieces", "splits"] * pieces / 1e6));

    private static string Duration(double seconds) => seconds switch
    {
        double.NaN => FigureText.NotMeasured,
        < 120 => FigureText.Whole(seconds, " s"),
        < 7200 => FigureText.Whole(seconds / 60, " min"),
        _ => FigureText.Whole(seconds / 3600, " h"),
    };
}
