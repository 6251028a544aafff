using BenchmarkDotNet.Attributes;

namespace Terminus.Benchmarks.Marks;

/// <summary>
/// Inscriptions read by the library, with windows, reasons and other readings, against source-generated regular expressions that give kinds,
/// numbers and dates alone; a whole pass over the same texts.
/// </summary>
[MemoryDiagnoser]
public class InscriptionBenchmarks
{
    private readonly PatternReader patterns = new();

    [Benchmark(Baseline = true)]
    public int RegularExpressions()
    {
        int marks = 0;
        foreach (string text in InscriptionTexts.All)
        {
            marks += patterns.Read(text).Count;
        }

        return marks;
    }

    [Benchmark]
    public int Reader()
    {
        int marks = 0;
        foreach (string text in InscriptionTexts.All)
        {
            marks += Inscription.Read(text).Marks.Count;
        }

        return marks;
    }
}
