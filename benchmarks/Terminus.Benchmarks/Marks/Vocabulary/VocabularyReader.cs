using System.Text.RegularExpressions;

namespace Terminus.Benchmarks.Marks;

/// <summary>Reads an inscription by the expressions of the whole vocabulary: the letters are folded first, and lost ones are put as <c>?</c> and <c>*</c>.</summary>
internal sealed partial class VocabularyReader
{
    private readonly PatternReader patterns = new(VocabularyExpressions.All, VocabularyExpressions.MonthOf);

    /// <summary>The marks of a text, in no order of the text. The list is used again by the next reading.</summary>
    internal IReadOnlyList<PatternMark> Read(string inscription)
    {
        string folded = string.Create(inscription.Length, inscription, static (letters, text) =>
        {
            for (int i = 0; i < letters.Length; i++)
            {
                letters[i] = Fold.Of(text[i]);
            }
        });
        return patterns.Read(folded.Contains('[', StringComparison.Ordinal) ? Lost.Replace(folded, static m => m.Value == "[?]" ? "?" : "*") : folded);
    }

    [GeneratedRegex(@"\[[^\]]*\]", RegexOptions.CultureInvariant)]
    private static partial Regex Lost { get; }
}
