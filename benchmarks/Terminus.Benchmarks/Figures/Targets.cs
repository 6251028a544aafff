namespace Terminus.Benchmarks.Figures;

/// <summary>What the library was set to reach, and what it reached.</summary>
internal sealed class Targets(RawFigures raw)
{
    internal IEnumerable<Target> All => [.. Engine(), .. Readers(), .. Collections(), .. Beside()];

    private IEnumerable<Target> Engine()
    {
        double days = raw["CombinationBenchmarks.DayNumbers", "Items=8"];
        double evidence = raw["CombinationBenchmarks.FromEvidence", "Items=8"];
        yield return Limit("engine, 8 items, day numbers", FigureText.Time(days), days, 1000, "1 µs");
        yield return Bytes("engine, 8 items, day numbers", "CombinationBenchmarks.DayNumbers", 500, "500 B");
        yield return Limit("engine, 8 items, from evidence", FigureText.Time(evidence), evidence, 2000, "2 µs");
        yield return Bytes("engine, 8 items, from evidence", "CombinationBenchmarks.FromEvidence", 2000, "2 kB");
        double many = raw["CombinationBenchmarks.DayNumbers", "Items=256"];
        yield return new Target("engine, 256 items", FigureText.Time(many), "8 items, " + FigureText.Time(days), many / days).NoMoreThan(120);
        foreach ((string other, string method, string of) in new[]
        {
            ("day grid, vectorised", "CombinationBenchmarks.Grid", "Items=8"),
            ("second differences", "CombinationBenchmarks.Differences", "Items=8"),
            ("100,000 draws", "CombinationBenchmarks.Sampling", "Items=8"),
            ("every pattern", "EnumerationBenchmarks.Enumeration", "Items=8"),
        })
        {
            double time = raw[method, of];
            yield return new Target(other + ", 8 items", FigureText.Time(time), "engine, " + FigureText.Time(days), time / days);
        }

        foreach (string items in new[] { "8", "256" })
        {
            double loop = raw["PossibleBenchmarks.Loop", "Items=" + items];
            double windows = raw["PossibleBenchmarks.Intersect", "Items=" + items];
            yield return new Target("possible alone, " + items + " windows", FigureText.Time(windows), "max/min loop over whole numbers, " + FigureText.Time(loop), windows / loop).NoMoreThan(3);
        }
    }

    private IEnumerable<Target> Readers()
    {
        double expressions = raw["InscriptionBenchmarks.RegularExpressions"] / raw["texts", "inscriptions"];
        double reader = raw["InscriptionBenchmarks.Reader"] / raw["texts", "inscriptions"];
        yield return new Target("source-generated regular expressions, an inscription", FigureText.Time(expressions), "reader of marks, " + FigureText.Time(reader), expressions / reader).NoLessThan(3);
        double search = raw["NumberBenchmarks.BinarySearch"];
        double number = raw["NumberBenchmarks.Read"];
        yield return new Target("patent number to windows and reasons", FigureText.Time(number), "binary search over the table, " + FigureText.Time(search), number / search);
    }

    private IEnumerable<Target> Collections()
    {
        foreach (string pieces in Collection.Sizes)
        {
            double floor = raw["floor, fastest", pieces];
            double one = raw["one worker, fastest", pieces];
            yield return new Target("collection, " + Collection.InWords(pieces), FigureText.Seconds(one), "floor, " + FigureText.Seconds(floor), one / floor).NoMoreThan(2);
        }

        double alone = raw["one worker, fastest", Collection.Million];
        double two = raw["two workers, fastest", Collection.Million];
        yield return new Target("one worker, a million pieces", FigureText.Seconds(alone), "two workers, " + FigureText.Seconds(two), alone / two).NoLessThan(1.4);
        double single = raw["arithmetic on one thread, fastest", Collection.Million];
        double both = raw["arithmetic on two threads, fastest", Collection.Million];
        yield return new Target("plain arithmetic twice on one thread", FigureText.Seconds(2 * single), "on two threads, " + FigureText.Seconds(both), 2 * single / both);
        double small = raw["console, peak memory", Collection.HundredThousand];
        double large = raw["console, peak memory", Collection.Million];
        yield return Limit("console, peak memory, a million pieces", FigureText.Whole(large, " MB"), large, 120, "120 MB");
        yield return new Target("console, peak memory, a million pieces", FigureText.Whole(large, " MB"), "100,000 pieces, " + FigureText.Whole(small, " MB"), large / small).NoMoreThan(1.1);
    }

    private IEnumerable<Target> Beside()
    {
        double library = raw["library on one thread, fastest", Collection.Million];
        double database = raw["database on one thread, fastest", Collection.Million];
        yield return new Target("plain window of a million pieces, database", FigureText.Seconds(database), "library, " + FigureText.Seconds(library), database / library);
        double hello = raw["a program that greets, median", "start to end"];
        double console = raw["console, one piece dated, median", "start to end"];
        yield return new Target("console, start to end, one piece dated", FigureText.Seconds(console), "a program that greets, " + FigureText.Seconds(hello), console / hello);
    }

    private Target Bytes(string what, string method, double limit, string words)
    {
        double bytes = raw[method + ", bytes", "Items=8"];
        return Limit(what, FigureText.Bytes(bytes), bytes, limit, words);
    }

    private static Target Limit(string what, string measured, double value, double limit, string words)
        => new(what, measured, "–", double.NaN) { Value = value, AtMost = limit, Limit = words };
}
