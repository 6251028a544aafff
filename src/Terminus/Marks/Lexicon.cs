using System.Globalization;

namespace Terminus;

/// <summary>The words and wordings that the reader knows: <c>data/marks/words.csv</c> and <c>data/marks/wordings.csv</c>.</summary>
internal sealed class Lexicon
{
    private static readonly Lazy<Lexicon> Loaded = new(() => new Lexicon());

    private readonly Dictionary<string, Lexeme> byTerm = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Wording> byId = new(StringComparer.Ordinal);
    private int nextKey = PhraseTree.FirstLexeme;

    private Lexicon()
    {
        foreach (string[] row in MarkData.Rows("marks/words.csv"))
        {
            AddWord(row);
        }

        foreach (string[] row in MarkData.Rows("marks/wordings.csv"))
        {
            AddWording(row);
        }

        Pending = this["mk.us_pending"];
        DesignPending = this["mk.us_design_pending"];
    }

    internal static Lexicon BuiltIn => Loaded.Value;

    internal LetterTree Words { get; } = new();

    internal PhraseTree Phrases { get; } = new();

    /// <summary>A patent applied for, by any words.</summary>
    internal Wording Pending { get; }

    /// <summary>A design patent applied for.</summary>
    internal Wording DesignPending { get; }

    internal IEnumerable<Wording> Wordings => byId.Values;

    internal Wording this[string id] => byId[id];

    /// <summary>The wording of an id, or null for an id that is none.</summary>
    internal Wording? Find(string id) => byId.TryGetValue(id, out Wording? wording) ? wording : null;

    private void AddWord(string[] row)
    {
        WordClass wordClass = row[1] switch
        {
            "country" => WordClass.Country,
            "demonym" => WordClass.Demonym,
            "month" => WordClass.Month,
            "karat" => WordClass.Karat,
            "number-word" => WordClass.NumberWord,
            _ => WordClass.Word,
        };
        var lexeme = new Lexeme(
            row[0],
            wordClass,
            wordClass is WordClass.Country or WordClass.Demonym ? row[2] : null,
            wordClass == WordClass.Month ? int.Parse(row[2], CultureInfo.InvariantCulture) : 0)
        {
            Key = nextKey++,
        };
        byTerm.Add(row[0], lexeme);
        foreach (string form in row[3].Split(' '))
        {
            Words.Add(form, lexeme);
        }
    }

    private void AddWording(string[] row)
    {
        var wording = new Wording(
            row[0],
            MarkKindName.TryParse(row[1], out MarkKind kind) ? kind : throw new InvalidDataException(row[0]),
            OrNull(row[2]),
            OrNull(row[3]),
            row[4] switch
            {
                "number" => WordingTakes.Number,
                "number!" => WordingTakes.NumberAlways,
                "year" => WordingTakes.Year,
                "karat" => WordingTakes.Karat,
                _ => WordingTakes.Nothing,
            },
            MarkData.Period(row[6], row[7]),
            row[8] == "legal",
            row[9] switch
            {
                "replaced" => MarkEnd.ForbiddenOrReplaced,
                "lapsed" => MarkEnd.Lapsed,
                _ => MarkEnd.Custom,
            },
            row[10],
            row[11] == "memory",
            row[12]);
        byId.Add(wording.Id, wording);
        foreach (string phrase in row[5].Split(['|'], StringSplitOptions.RemoveEmptyEntries))
        {
            AddPhrase(phrase.Split(' '), 0, [], wording);
        }
    }

    /// <summary>Adds a phrase with and without each word that ends in <c>?</c>.</summary>
    private void AddPhrase(string[] words, int next, List<int> keys, Wording wording)
    {
        if (next == words.Length)
        {
            Phrases.Add(keys, wording);
            return;
        }

        string word = words[next];
        if (word.Length > 1 && word[word.Length - 1] == '?')
        {
            AddPhrase(words, next + 1, keys, wording);
            word = word.Substring(0, word.Length - 1);
        }

        // Digits with a measure joined to them are read apart, so no token is such a word; those with the S of silver are one.
        if (KeyOf(word) is var key && key != 0)
        {
            AddPhrase(words, next + 1, [.. keys, key], wording);
        }
    }

    /// <summary>The key of a word of a phrase; a word without a term becomes a term of its own.</summary>
    private int KeyOf(string word)
    {
        if (word[0] == '{' || word == PhraseTree.AnyDigits || (char.IsDigit(word[0]) && word[word.Length - 1] != 'S'))
        {
            return PhraseTree.KeyOf(word);
        }

        if (byTerm.TryGetValue(word, out Lexeme? lexeme))
        {
            return lexeme.Key;
        }

        int visits = 0;
        Meaning known = Words.Find(word.AsSpan(), ref visits);
        if (known.IsKnown)
        {
            return known.Lexemes[0].Key;
        }

        lexeme = new Lexeme(word, WordClass.Word) { Key = nextKey++ };
        byTerm.Add(word, lexeme);
        Words.Add(word, lexeme);
        return lexeme.Key;
    }

    private static string? OrNull(string text) => text.Length == 0 ? null : text;
}
