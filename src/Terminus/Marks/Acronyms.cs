namespace Terminus;

/// <summary>Puts single letters with points or spaces between them together where they are a known acronym: <c>D. R. G. M.</c></summary>
internal static class Acronyms
{
    private const int Longest = 8;

    // Little words that single letters never stand for.
    private static readonly string[] Never = [Term.In, Term.By, Term.Of, Term.And, "GOLD", "FROM"];

    internal static List<Token> Join(List<Token> tokens, LetterTree words, ref int visits)
    {
        var joined = new List<Token>(tokens.Count);
        int at = 0;
        while (at < tokens.Count)
        {
            int end = IsLetter(tokens[at]) ? Find(tokens, at, words, joined, ref visits) : at;
            if (end == at)
            {
                joined.Add(tokens[at]);
                end++;
            }

            at = end;
        }

        return joined;
    }

    /// <summary>Adds the longest acronym that starts at a token and returns the token behind it, or the token itself.</summary>
    private static int Find(List<Token> tokens, int start, LetterTree words, List<Token> joined, ref int visits)
    {
        Span<char> letters = stackalloc char[Longest];
        Span<int> ends = stackalloc int[Longest];
        int count = 0;
        for (int i = start; i < tokens.Count && count < Longest; i++)
        {
            if (IsLetter(tokens[i]))
            {
                letters[count] = tokens[i].Text[0];
                ends[count++] = i + 1;
            }
            else if (!tokens[i].IsSign('.'))
            {
                break;
            }
        }

        if (count < 2)
        {
            return start;
        }

        int size = words.LongestStart(letters.Slice(0, count), false, out Lexeme[] lexemes, out _, ref visits);
        if (size < 2 || Array.IndexOf(Never, lexemes[0].Term) >= 0)
        {
            return start;
        }

        int end = ends[size - 1];
        joined.Add(new Token(TokenKind.Word, tokens[start].Start, tokens[end - 1].End, letters.Slice(0, size).ToString(), lexemes)
        {
            Joined = tokens[start].Joined,
        });
        return end;
    }

    private static bool IsLetter(Token token) => token.Kind == TokenKind.Word && token.Text.Length == 1 && token.Text[0] is >= 'A' and <= 'Z';
}
