using System.Text.RegularExpressions;

namespace Terminus.Benchmarks.Marks;

/// <summary>The words of the reader's table as parts of expressions: each with all its forms, points and apostrophes.</summary>
internal sealed class VocabularyWords
{
    /// <summary>What may stand between two words.</summary>
    internal const string Gap = """(?>[\s.,:;()\-'"/]{0,4})""";

    /// <summary>The end of a word.</summary>
    internal const string EndOfWord = @"\b";

    /// <summary>What may stand between two words of a line.</summary>
    internal const string Space = """(?>[\s.,:;()\-'"]{0,4})""";

    private const int LongestAcronym = 4;
    private const char FirstIdeograph = '\u3000';

    // Acronyms with a vowel; those without one are told by that.
    private static readonly HashSet<string> Spelt = ["US", "USA", "UK", "USSR", "NRA", "GE", "GEP", "HGE", "HGEP", "EPNS", "EPBM", "EPC", "EPGS", "EPWM"];

    private readonly Dictionary<string, string[]> forms = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> classes = new(StringComparer.Ordinal);

    internal VocabularyWords()
    {
        foreach (string[] row in MarkData.Rows("marks/words.csv"))
        {
            forms.Add(row[0], row[3].Split(' '));
            if (!classes.TryGetValue(row[1], out List<string>? members))
            {
                classes.Add(row[1], members = []);
            }

            members.Add(row[0]);
            if (row[1] == "month")
            {
                foreach (string form in forms[row[0]])
                {
                    Months.TryAdd(form, int.Parse(row[2], System.Globalization.CultureInfo.InvariantCulture));
                }
            }
        }
    }

    /// <summary>The numbers of the months by every form.</summary>
    internal Dictionary<string, int> Months { get; } = new(StringComparer.Ordinal);

    /// <summary>One of some words, in any form; a word that is no term stands for itself.</summary>
    internal string Any(params IEnumerable<string> words)
    {
        var tree = new FormTree();
        var others = new List<string>();
        foreach (string form in words.SelectMany(FormsOf).Distinct())
        {
            if (IsOfLetters(form))
            {
                tree.Add(Letters(form), EndOfWord);
            }
            else
            {
                others.Add(Sign(form));
            }
        }

        return "(?>" + string.Join('|', tree.IsEmpty ? others : others.Prepend(@"\b" + tree)) + ")";
    }

    /// <summary>The forms of a word, which is its own where it is no term.</summary>
    internal IEnumerable<string> FormsOf(string word) => word switch
    {
        "{country}" => InClass("country"),
        "{demonym}" => InClass("demonym"),
        "{month}" => InClass("month"),
        _ => forms.TryGetValue(word, out string[]? known) ? known : [word],
    };

    /// <summary>All forms of the words of some classes, such as the names of countries.</summary>
    internal IEnumerable<string> InClass(params string[] names) => names.SelectMany(n => classes[n]).SelectMany(t => forms[t]);

    /// <summary>Whether a form is of letters between which and the next word something stands.</summary>
    internal static bool IsOfLetters(string form) => char.IsLetterOrDigit(form[0]) && form[0] < FirstIdeograph;

    /// <summary>A form that is a sign or of ideographs.</summary>
    internal static string Sign(string form) => form switch
    {
        "\u00A9" => @"(?:\u00A9|\(C\))",
        "\u00AE" => @"(?:\u00AE|\(R\))",
        _ => Regex.Escape(form),
    };

    /// <summary>A form letter by letter, each with what may stand before it: points in an acronym, the apostrophe of <c>PAT'D</c>.</summary>
    internal static string[] Letters(string form)
    {
        string[] letters = [.. form.Select(c => Regex.Escape(c.ToString()))];
        for (int i = 1; i < letters.Length; i++)
        {
            bool last = i == letters.Length - 1;
            letters[i] = (IsAcronym(form) ? @"(?>\.?\s?)" : (last && i > 1 && form[i] is 'D' or 'S' or 'T') || (i == 1 && form.StartsWith("DINV", StringComparison.Ordinal)) ? "['\"]?" : "") + letters[i];
        }

        return letters;
    }

    private static bool IsAcronym(string form)
        => form.Length is >= 2 and <= LongestAcronym && form.All(char.IsAsciiLetterUpper)
            && (Spelt.Contains(form) || !form.Any(c => "AEIOUY".Contains(c, StringComparison.Ordinal)));
}
