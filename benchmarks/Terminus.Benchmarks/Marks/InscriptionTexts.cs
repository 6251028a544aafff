using Terminus.Benchmarks.Figures;

namespace Terminus.Benchmarks.Marks;

/// <summary>The inscriptions that both readers read: the 209 that the tests gathered or invented.</summary>
internal static class InscriptionTexts
{
    internal static string[] All { get; } = [.. Tests.TestTable.Rows("marks", "inscriptions.csv").Select(row => row[0])];

    /// <summary>On how many of the texts the expressions find the same kinds, numbers and dates as the library; the others are named on the error stream.</summary>
    internal static IEnumerable<Figure> Agreement()
    {
        var patterns = new PatternReader();
        int same = 0;
        foreach (string text in All)
        {
            string library = Listed(Inscription.Read(text).Marks.Select(m => new PatternMark(m.Kind, m.Number, m.Date)));
            string expressions = Listed(patterns.Read(text));
            same += library == expressions ? 1 : 0;
            Console.Error.Write(library == expressions ? "" : $"{text}\n  library: {library}\n  expressions: {expressions}\n");
        }

        yield return new Figure("texts", "inscriptions", All.Length, "");
        yield return new Figure("texts read alike", "inscriptions", same, "");
    }

    private static string Listed(IEnumerable<PatternMark> marks)
        => string.Join("; ", marks.Select(m => string.Join(' ', m.Kind, m.Number, m.Date)).Order(StringComparer.Ordinal));
}
