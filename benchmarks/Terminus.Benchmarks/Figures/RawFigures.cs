using System.Text.Json;

namespace Terminus.Benchmarks.Figures;

/// <summary>
/// All figures of one run, from the files that it left: the reports of the benchmarks in JSON, of which the medians and the bytes are taken, and the
/// lines of the programs beside them.
/// </summary>
internal sealed class RawFigures
{
    private readonly Dictionary<string, double> values = [];

    internal RawFigures(string folder)
    {
        foreach (string file in Directory.EnumerateFiles(folder, "*.json"))
        {
            using JsonDocument report = JsonDocument.Parse(File.ReadAllBytes(file));
            foreach (Figure figure in report.RootElement.GetProperty("Benchmarks").EnumerateArray().SelectMany(Benchmark))
            {
                values[figure.Key] = figure.Value;
            }
        }

        foreach (Figure figure in Directory.EnumerateFiles(folder, "*.tsv").SelectMany(File.ReadLines).Select(Figure.Parse))
        {
            values[figure.Key] = figure.Value;
        }
    }

    /// <summary>The value of a figure, or not a number where it was not measured.</summary>
    internal double this[string what, string of = ""] => values.GetValueOrDefault(what + "|" + of, double.NaN);

    /// <summary>What a pass over the gathered inscriptions took, for one of them.</summary>
    internal double Inscription(string figure) => this["InscriptionBenchmarks." + figure] / this["texts", "gathered"];

    private static IEnumerable<Figure> Benchmark(JsonElement benchmark)
    {
        string method = benchmark.GetProperty("Type").GetString() + "." + benchmark.GetProperty("Method").GetString();
        string parameters = benchmark.GetProperty("Parameters").GetString()!;
        if (benchmark.GetProperty("Statistics") is { ValueKind: JsonValueKind.Object } statistics)
        {
            yield return new Figure(method, parameters, statistics.GetProperty("Median").GetDouble(), "ns");
        }

        if (benchmark.TryGetProperty("Memory", out JsonElement memory) && memory.ValueKind == JsonValueKind.Object)
        {
            yield return new Figure(method + ", bytes", parameters, memory.GetProperty("BytesAllocatedPerOperation").GetDouble(), "B");
        }
    }
}
