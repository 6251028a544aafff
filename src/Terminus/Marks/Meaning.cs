namespace Terminus;

/// <summary>What a word can be: its lexemes, with what the grammar asks of them worked out once for every word of the lexicon.</summary>
internal sealed class Meaning
{
    /// <summary>The meaning of a word that is not known, and of what is no word.</summary>
    internal static readonly Meaning None = new([]);

    internal Meaning(Lexeme[] lexemes)
    {
        Lexemes = lexemes;
        First = lexemes.Length <= 1 ? this : new Meaning([lexemes[0]]);
        Office = lexemes.Length == 1 ? lexemes[0].Office : null;
        foreach (Lexeme lexeme in lexemes)
        {
            Terms |= TermNames.Of(lexeme.Term);
            Months |= lexeme.Month == 0 ? 0 : 1 << lexeme.Month;
        }
    }

    /// <summary>What the word can be; empty for an unknown one.</summary>
    internal Lexeme[] Lexemes { get; }

    /// <summary>The first and likeliest of its meanings, where it has several.</summary>
    internal Meaning First { get; }

    /// <summary>The terms of the grammar that it can be.</summary>
    internal Terms Terms { get; }

    /// <summary>The months that it can be, one bit each from bit 1 for January.</summary>
    internal int Months { get; }

    /// <summary>The office of the country that it names and nothing else, or null.</summary>
    internal string? Office { get; }

    /// <summary>Whether it is known at all.</summary>
    internal bool IsKnown => Lexemes.Length > 0;

    /// <summary>Whether so little is lost of it that it can stand in a wording.</summary>
    internal bool IsClear => Lexemes.Length <= MostReadings;

    // A word with lost letters that can be more than this is as good as lost.
    private const int MostReadings = 3;

    /// <summary>Whether it can be one of the given terms.</summary>
    internal bool Is(Terms terms) => (Terms & terms) != 0;
}
