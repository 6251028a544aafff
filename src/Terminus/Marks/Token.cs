namespace Terminus;

/// <summary>What a piece of an inscription is before anybody asks what it means.</summary>
internal enum TokenKind : byte
{
    /// <summary>Nothing: what stands outside the text.</summary>
    None,

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

/// <summary>A piece of an inscription, with its place in the text. Its folded letters are in the list that holds it.</summary>
internal readonly struct Token
{
    internal Token(TokenKind kind, int start, int end, int textAt, int length, char first, Meaning meaning)
    {
        Kind = kind;
        Start = start;
        End = end;
        TextAt = textAt;
        Length = length;
        First = first;
        Meaning = meaning;
    }

    /// <summary>What the word can be; nothing for an unknown word and for everything else.</summary>
    internal Meaning Meaning { get; }

    /// <summary>The position of its first character.</summary>
    internal int Start { get; }

    /// <summary>The position behind its last character.</summary>
    internal int End { get; }

    /// <summary>Where its folded letters or digits stand in the letters of the list.</summary>
    internal int TextAt { get; }

    /// <summary>How many folded letters or digits it has.</summary>
    internal int Length { get; }

    /// <summary>The first of them; for a sign the sign.</summary>
    internal char First { get; }

    /// <summary>What it is.</summary>
    internal TokenKind Kind { get; }

    /// <summary>Whether nothing stands between this token and the one before.</summary>
    internal bool Joined { get; init; }

    /// <summary>Whether a digit was read for a letter or a letter for a digit, or the finder marked the characters as doubtful.</summary>
    internal bool Doubtful { get; init; }

    private const int AnyMonth = 0x1FFE;

    /// <summary>The months that the word can be, one bit each from bit 1 for January; all of them where a whole word is lost.</summary>
    internal int Months => Kind != TokenKind.Lost ? Meaning.Months : First == '*' && Length == 1 || Length >= 3 ? AnyMonth : 0;

    /// <summary>The office of the country that the word names, or null.</summary>
    internal string? Office => Meaning.Office;

    /// <summary>Whether these are digits.</summary>
    internal bool IsDigits => Kind == TokenKind.Digits;

    /// <summary>Whether the word can be one of the given terms, in any of its forms.</summary>
    internal bool Is(Terms terms) => Meaning.Is(terms);

    /// <summary>Whether this is a word of the given letter alone.</summary>
    internal bool IsLetter(char letter) => Length == 1 && First == letter && Kind == TokenKind.Word;

    /// <summary>Whether this is the given sign.</summary>
    internal bool IsSign(char sign) => First == sign && Kind == TokenKind.Sign;

    /// <summary>Whether this is a sign that a person would overlook between two words, or the end of a line.</summary>
    internal bool IsSoft => Kind == TokenKind.Break
        || (Kind == TokenKind.Sign && First is '.' or ',' or '-' or '\'' or '"' or ':' or ';' or '(' or ')' or '\u201C' or '\u201D' or '\u201E');
}
