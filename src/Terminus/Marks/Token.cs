namespace Terminus;

/// <summary>What a piece of an inscription is before anybody asks what it means.</summary>
internal enum TokenKind
{
    /// <summary>A word or an acronym, known or not.</summary>
    Word,

    /// <summary>Digits, with <c>?</c> for a lost one and <c>*</c> for several.</summary>
    Digits,

    /// <summary>Lost characters and nothing else.</summary>
    Lost,

    /// <summary>One sign, such as a comma.</summary>
    Sign,

    /// <summary>The end of a line.</summary>
    Break,
}

/// <summary>A piece of an inscription, with its place in the text.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Start">The position of its first character.</param>
/// <param name="End">The position behind its last character.</param>
/// <param name="Text">The folded letters or digits; for a sign the sign.</param>
/// <param name="Lexemes">What the word can be; empty for an unknown word and for everything else.</param>
internal sealed record Token(TokenKind Kind, int Start, int End, string Text, Lexeme[] Lexemes)
{
    /// <summary>Whether nothing stands between this token and the one before.</summary>
    internal bool Joined { get; init; }

    /// <summary>Whether a digit was read for a letter or a letter for a digit, or the finder marked the characters as doubtful.</summary>
    internal bool Doubtful { get; init; }

    private const int AnyMonth = 0x1FFE;

    /// <summary>The months that the word can be, one bit each from bit 1 for January; all of them where a whole word is lost.</summary>
    internal int Months
    {
        get
        {
            if (Kind == TokenKind.Lost)
            {
                return Text == "*" || Text.Length >= 3 ? AnyMonth : 0;
            }

            int months = 0;
            foreach (Lexeme lexeme in Lexemes)
            {
                months |= lexeme.Month == 0 ? 0 : 1 << lexeme.Month;
            }

            return months;
        }
    }

    /// <summary>The office of the country that the word names, or null.</summary>
    internal string? Office => Lexemes.Length == 1 ? Lexemes[0].Office : null;

    /// <summary>Whether the word is the given term, in any of its forms.</summary>
    internal bool Is(string term)
    {
        foreach (Lexeme lexeme in Lexemes)
        {
            if (string.Equals(lexeme.Term, term, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether this is the given sign.</summary>
    internal bool IsSign(char sign) => Kind == TokenKind.Sign && Text[0] == sign;

    /// <summary>Whether this is a sign that a person would overlook between two words, or the end of a line.</summary>
    internal bool IsSoft => Kind == TokenKind.Break || (Kind == TokenKind.Sign && Text[0] is '.' or ',' or '-' or '\'' or '"' or ':' or ';' or '(' or ')' or '\u201C' or '\u201D' or '\u201E');
}
