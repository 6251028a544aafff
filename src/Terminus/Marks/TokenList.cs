namespace Terminus;

/// <summary>
/// The tokens of an inscription, with their folded letters side by side in one array. A list is used for one text after another, so that
/// reading makes no garbage but its answer. Before the first token and behind the last stands one that is nothing.
/// </summary>
internal sealed class TokenList
{
    private Token[] tokens = [];
    private char[] letters = [];
    private int[] places = [];
    private int used;

    /// <summary>How many tokens there are.</summary>
    internal int Count { get; private set; }

    /// <summary>A token, or one that is nothing for a place outside the text.</summary>
    internal ref readonly Token this[int at] => ref tokens[(uint)at < (uint)Count ? at : Count];

    /// <summary>The folded letters, digits or sign of a token; empty for a place outside the text.</summary>
    internal ReadOnlySpan<char> Text(int at)
    {
        ref readonly Token token = ref this[at];
        return letters.AsSpan(token.TextAt, token.Length);
    }

    /// <summary>The digits of a day, a month or a year; at most four.</summary>
    internal DigitPattern Digits(int at) => new(Text(at));

    /// <summary>Empties the list and makes room for a text of a length.</summary>
    internal void Clear(int length)
    {
        // A token has one character at least, and joined acronyms have their letters once more.
        if (tokens.Length <= length)
        {
            tokens = new Token[Math.Max(length, 64) + 1];
            letters = new char[2 * tokens.Length];
            places = new int[letters.Length];
        }

        used = 0;
        Count = 0;
    }

    /// <summary>Room for the letters of tokens to come; <see cref="Take"/> keeps some of them.</summary>
    internal Span<char> Room => letters.AsSpan(used);

    /// <summary>Room for where each of those letters stands in the text.</summary>
    internal Span<int> Places => places.AsSpan(used);

    /// <summary>Keeps letters that were written into the room, and returns where they stand.</summary>
    internal int Take(int length)
    {
        used += length;
        return used - length;
    }

    /// <summary>Adds a token of letters that were taken.</summary>
    internal void Add(TokenKind kind, int start, int end, int textAt, int length, Meaning meaning, bool doubtful = false)
    {
        tokens[Count] = new Token(kind, start, end, textAt, length, letters[textAt], meaning)
        {
            Joined = Count > 0 && tokens[Count - 1].End == start,
            Doubtful = doubtful,
        };
        Count++;
    }

    /// <summary>Adds a token of one character.</summary>
    internal void Add(TokenKind kind, int start, int end, char text, Meaning meaning)
    {
        letters[used] = text;
        Add(kind, start, end, Take(1), 1, meaning);
    }

    /// <summary>Takes back the last tokens, so that as many stay.</summary>
    internal void CutTo(int count) => Count = count;

    /// <summary>Says that no more tokens come.</summary>
    internal void Close() => tokens[Count] = new Token(TokenKind.None, 0, 0, 0, 0, '\0', Meaning.None);

    /// <summary>Puts a token in the place of an earlier one, which must not lie behind it.</summary>
    internal void Move(int from, int to) => tokens[to] = tokens[from];

    /// <summary>Puts one word in the place of a token.</summary>
    internal void Replace(int at, int start, int end, ReadOnlySpan<char> word, Meaning meaning)
    {
        word.CopyTo(Room);
        tokens[at] = new Token(TokenKind.Word, start, end, Take(word.Length), word.Length, word[0], meaning) { Joined = tokens[at].Joined };
    }

    /// <summary>The token behind up to some signs that a person would overlook.</summary>
    internal int SkipSoft(int at, int most = 3)
    {
        int next = at;
        while (next < at + most && this[next].IsSoft)
        {
            next++;
        }

        return next;
    }
}
