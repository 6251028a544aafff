namespace Terminus.Benchmarks.Figures;

/// <summary>What the library was set to reach, and what it reached.</summary>
internal sealed class Targets(RawFigures raw)
{
    private const double Nano = 1e9;

    internal IEnumerable<Target> All => [.. Engine(), .. OtherWays(), .. Possible(), .. Readers(), .. Collections(), .. Memory(), .. Beside()];

    private IEnumerable<Target> Engine()
    {
        const string Method = "CombinationBenchmarks.";
        foreach ((string what, string method, double time, string timeLimit, double bytes, string bytesLimit) in new[]
        {
            ("engine, 8 items, day numbers", "DayNumbers", 1000.0, "1 µs", 500.0, "500 B"),
            ("engine, 8 items, from evidence", "FromEvidence", 2000, "2 µs", 2000, "2 kB"),
        })
        {
            yield return Limit(what, raw[Method + method, "Items=8"], FigureText.Time, time, timeLimit);
            yield return Limit(what, raw[Method + method + ", bytes", "Items=8"], FigureText.Bytes, bytes, bytesLimit);
        }

        yield return Times("engine, 256 items", raw[Method + "DayNumbers", "Items=256"], "8 items", EightItems).NoMoreThan(120);
    }

    private IEnumerable<Target> OtherWays() =>
    [
        Times("day grid, 8 items", raw["CombinationBenchmarks.Grid", "Items=8"], "engine", EightItems),
        Times("second differences, 8 items", raw["CombinationBenchmarks.Differences", "Items=8"], "engine", EightItems),
        Times("100,000 draws, 8 items", raw["CombinationBenchmarks.Sampling", "Items=8"], "engine", EightItems),
        Times("every pattern, 8 items", raw["EnumerationBenchmarks.Enumeration", "Items=8"], "engine", EightItems),
    ];

    private IEnumerable<Target> Possible()
    {
        foreach (string items in new[] { "8", "256" })
        {
            double windows = raw["PossibleBenchmarks.Intersect", "Items=" + items];
            double loop = raw["PossibleBenchmarks.Loop", "Items=" + items];
            yield return Times($"possible alone, {items} windows", windows, "max/min loop", loop).NoMoreThan(3);
        }
    }

    private IEnumerable<Target> Readers()
    {
        double vocabulary = raw.Inscription("VocabularyExpressions");
        double twenty = raw.Inscription("RegularExpressions");
        double kinds = raw.Inscription("Kinds");
        double reader = raw.Inscription("Reader");
        yield return Times("expressions of the whole vocabulary, an inscription", vocabulary, "reader, kinds, numbers, dates", kinds).NoLessThan(3);
        yield return Times("expressions of the whole vocabulary, an inscription", vocabulary, "reader, all it says", reader).NoLessThan(3);
        yield return Times("twenty expressions for these texts, an inscription", twenty, "reader, kinds, numbers, dates", kinds).NoLessThan(3);
        yield return Times("twenty expressions for these texts, an inscription", twenty, "reader, all it says", reader).NoLessThan(3);
        double search = raw["NumberBenchmarks.BinarySearch"];
        yield return Times("patent number to windows and reasons", raw["NumberBenchmarks.Read"], "binary search in the table", search);
    }

    private IEnumerable<Target> Collections()
    {
        foreach (string pieces in Collection.Sizes)
        {
            yield return Times("collection, " + Collection.InWords(pieces), Fastest("one worker", pieces), "floor", Fastest("floor", pieces)).NoMoreThan(2);
        }

        double one = Fastest("one worker", Collection.Million);
        double two = Fastest("two workers", Collection.Million);
        yield return Times("one worker, a million pieces", one, "two workers", two).NoLessThan(1.4);
        double alone = 2 * Fastest("arithmetic on one thread", Collection.Million);
        double both = Fastest("arithmetic on two threads", Collection.Million);
        yield return Times("plain arithmetic twice, one thread", alone, "two threads", both);
    }

    private IEnumerable<Target> Memory()
    {
        const string What = "console, peak memory, a million pieces";
        double small = raw["console, peak memory", Collection.HundredThousand];
        double large = raw["console, peak memory", Collection.Million];
        yield return Limit(What, large, FigureText.Megabytes, 120, "120 MB");
        yield return new Target(What, FigureText.Megabytes(large), "100,000 pieces, " + FigureText.Megabytes(small), large / small).NoMoreThan(1.1);
    }

    private IEnumerable<Target> Beside()
    {
        double database = Fastest("database on one thread", Collection.Million);
        double library = Fastest("library on one thread", Collection.Million);
        yield return Times("plain window of a million pieces, database", database, "library", library);
        double console = raw["console, one piece dated, median", "start to end"] * Nano;
        double greeting = raw["a program that greets, median", "start to end"] * Nano;
        yield return Times("console, start to end, one piece dated", console, "a program that greets", greeting);
    }

    private double EightItems => raw["CombinationBenchmarks.DayNumbers", "Items=8"];

    private double Fastest(string what, string of) => raw[what + ", fastest", of] * Nano;

    private static Target Times(string what, double nanoseconds, string beside, double baseline)
        => new(what, FigureText.Time(nanoseconds), beside + ", " + FigureText.Time(baseline), nanoseconds / baseline);

    private static Target Limit(string what, double value, Func<double, string> inWords, double limit, string words)
        => new(what, inWords(value), FigureText.NotMeasured, double.NaN) { Value = value, AtMost = limit, Limit = "at most " + words };
}
