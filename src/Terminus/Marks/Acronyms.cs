namespace Terminus;

/// <summary>Puts single letters with points or spaces between them together where they are a known acronym: <c>D. R. G. M.</c></summary>
internal static class Acronyms
{
    private const int Longest = 8;

    // Little words that single letters never stand for.
    private const Terms Never = Terms.In | Terms.By | Terms.Of | Terms.And | Terms.Gold | Terms.From;

    /// <summary>Joins the acronyms of a list in place, and returns how many times a letter was looked at.</summary>
    internal static int Join(TokenList tokens, LetterTree words)
    {
        int visits = 0;
        int kept = 0;
        int at = 0;
        while (at < tokens.Count)
        {
            int end = IsLetter(in tokens[at]) && MayGoOn(tokens, at + 1) ? Find(tokens, at, kept, words, ref visits) : at;
            if (end == at)
            {
                if (kept < at)
                {
                    tokens.Move(at, kept);
                }

                end++;
            }

            kept++;
            at = end;
        }

        tokens.CutTo(kept);
        tokens.Close();
        return visits;
    }

    private static bool MayGoOn(TokenList tokens, int at) => tokens[at].IsSign('.') || IsLetter(in tokens[at]);

    /// <summary>Puts the longest acronym that starts at a token in a place and returns the token behind it, or the token itself.</summary>
    private static int Find(TokenList tokens, int start, int place, LetterTree words, ref int visits)
    {
        Span<char> letters = stackalloc char[Longest];
        Span<int> ends = stackalloc int[Longest];
        int count = 0;
        for (int i = start; i < tokens.Count && count < Longest; i++)
        {
            if (IsLetter(in tokens[i]))
            {
                letters[count] = tokens[i].First;
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

        int size = words.LongestStart(letters.Slice(0, count), false, out Meaning meaning, out _, ref visits);
        if (size < 2 || meaning.First.Is(Never))
        {
            return start;
        }

        int end = ends[size - 1];
        tokens.Move(start, place);
        tokens.Replace(place, tokens[start].Start, tokens[end - 1].End, letters.Slice(0, size), meaning);
        return end;
    }

    private static bool IsLetter(in Token token) => token.Length == 1 && token.First is >= 'A' and <= 'Z' && token.Kind == TokenKind.Word;
}
