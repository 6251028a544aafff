using Terminus.Benchmarks.Figures;

namespace Terminus.Benchmarks.Marks;

/// <summary>The inscriptions that are read: those that the tests gathered, and those that were invented without a look at any expression.</summary>
internal static class InscriptionTexts
{
    internal static string[] Gathered { get; } = Of("inscriptions.csv");

    internal static string[] Invented { get; } = Of("invented.csv");

    /// <summary>
    /// On how many of the texts the expressions find the same kinds, numbers and dates as the library; the others are named on the error stream.
    /// </summary>
    internal static IEnumerable<Figure> Agreement()
    {
        var few = new PatternReader(InscriptionPatterns.All);
        var vocabulary = new VocabularyReader();
        foreach ((string name, string[] texts) in new[] { ("gathered", Gathered), ("invented", Invented) })
        {
            yield return new Figure("texts", name, texts.Length, "");
            yield return new Figure("texts read alike by twenty expressions", name, texts.Count(t => IsAlike(t, few.Read)), "");
            yield return new Figure("texts read alike by the vocabulary", name, texts.Count(t => IsAlike(t, vocabulary.Read)), "");
        }
    }

    private static bool IsAlike(string text, Func<string, IReadOnlyList<PatternMark>> read)
    {
        string library = Listed(Inscription.Read(text).Marks.Select(m => new PatternMark(m.Kind, m.Number, m.Date)));
        string expressions = Listed(read(text));
        Console.Error.Write(library == expressions ? "" : $"{text}\n  library: {library}\n  expressions: {expressions}\n");
        return library == expressions;
    }

    private static string Listed(IEnumerable<PatternMark> marks)
        => string.Join("; ", marks.Select(m => string.Join(' ', m.Kind, m.Number, m.Date)).Order(StringComparer.Ordinal));

    private static string[] Of(string file) => [.. Tests.TestTable.Rows("marks", file).Select(row => row[0]).Distinct()];
}
