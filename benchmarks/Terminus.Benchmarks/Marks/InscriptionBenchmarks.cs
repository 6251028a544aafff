using System.Text.RegularExpressions;
using BenchmarkDotNet.Attributes;

namespace Terminus.Benchmarks.Marks;

/// <summary>
/// Inscriptions read by the library and by regular expressions that give kinds, numbers and dates: twenty that were written for these texts, and a
/// set with all words and wordings of the library. Each is a whole pass over the same texts.
/// </summary>
[MemoryDiagnoser]
public class InscriptionBenchmarks
{
    private readonly PatternReader patterns = new(InscriptionPatterns.All);
    private readonly PatternReader compiled = new([.. InscriptionPatterns.All.Select(p => (p.Kind, Compiled(p.Expression)))]);
    private readonly VocabularyReader vocabulary = new();

    /// <summary>The twenty, with code generated at build time.</summary>
    [Benchmark(Baseline = true)]
    public int RegularExpressions() => Count(static (reader, text) => reader.Read(text).Count, patterns);

    /// <summary>The twenty, compiled when they are first used: what that way costs beside the other.</summary>
    [Benchmark]
    public int CompiledExpressions() => Count(static (reader, text) => reader.Read(text).Count, compiled);

    /// <summary>The whole vocabulary, compiled when it is first used.</summary>
    [Benchmark]
    public int VocabularyExpressions() => Count(static (reader, text) => reader.Read(text).Count, vocabulary);

    /// <summary>What the expressions give, from the library.</summary>
    [Benchmark]
    public int Kinds() => Count(
        static (_, text) =>
        {
            int asked = 0;
            foreach (Mark mark in Inscription.Read(text).Marks)
            {
                asked += (int)mark.Kind + (mark.Number?.Length ?? 0) + (mark.Date?.Length ?? 0);
            }

            return asked;
        },
        this);

    /// <summary>All that the library says.</summary>
    [Benchmark]
    public int Reader() => Count(
        static (_, text) =>
        {
            Inscription read = Inscription.Read(text);
            int asked = read.Unread.Count;
            foreach (Mark mark in read.Marks)
            {
                asked += mark.Text.Length + (mark.Number?.Length ?? 0) + (mark.Date?.Length ?? 0) + mark.Windows.Count + mark.Reasons.Count + mark.Alternatives.Count;
            }

            return asked;
        },
        this);

    private static int Count<T>(Func<T, string, int> read, T reader)
    {
        int count = 0;
        foreach (string text in InscriptionTexts.Gathered)
        {
            count += read(reader, text);
        }

        return count;
    }

    private static Regex Compiled(Regex expression) => new(expression.ToString(), expression.Options | RegexOptions.Compiled);
}
