namespace Terminus;

/// <summary>Reads numbers in the ways they are stamped: <c>2,345,678</c>, <c>1 234 567</c>, <c>D-123456</c>, <c>10811/97</c>, <c>2,4?4,1?2</c>.</summary>
internal static class NumberGrammar
{
    private const int MostGroups = 4;

    /// <summary>The number that starts at a token, or null.</summary>
    /// <param name="tokens">The inscription.</param>
    /// <param name="start">The token.</param>
    /// <param name="end">The token behind the number.</param>
    internal static StampedNumber? Read(IReadOnlyList<Token> tokens, int start, out int end)
    {
        end = start;
        int at = start;
        string? right = Prefix(tokens, ref at);
        if (at >= tokens.Count || !IsGroup(tokens, at, first: true))
        {
            return null;
        }

        Token first = tokens[at];
        string digits = Text(first);
        bool doubtful = first.Doubtful || first.Kind == TokenKind.Word;
        bool grouped = false;
        int next = at + 1;
        if (digits.Length <= 3)
        {
            for (int group = 1; group < MostGroups && TryGroup(tokens, next, at, grouped, out int behind); group++)
            {
                Token token = tokens[behind - 1];
                digits += Text(token) == "*" ? "???" : Text(token);
                doubtful |= token.Doubtful;
                grouped = true;
                next = behind;
            }
        }

        if (grouped && next + 1 < tokens.Count && tokens[next].IsSign(',') && tokens[next + 1].Joined && tokens[next + 1].Kind == TokenKind.Digits
            && tokens[next + 1].Text.Length < 3)
        {
            // The end of the last group is worn away.
            digits += tokens[next + 1].Text.PadRight(3, '?');
            doubtful = true;
            next += 2;
        }

        if (first.Kind == TokenKind.Word && !grouped)
        {
            return null;
        }

        if (IsMeasure(tokens, next))
        {
            return null;
        }

        string? year = right is not null ? null : YearFirst(tokens, ref next, ref digits) ?? Year(tokens, ref next, digits);
        if (next < tokens.Count && year is null && tokens[next].IsSign('/') && digits.Length <= 2)
        {
            // The numerator of a fraction.
            return null;
        }

        SkipKindCode(tokens, ref next, digits);
        end = next;
        return new StampedNumber(digits, year, right, grouped, doubtful);
    }

    /// <summary>The letter of a design or a reissue before a number: <c>D-123456</c>, <c>D. 123,456</c>, <c>RE 20202</c>, <c>PP 123</c>.</summary>
    private static string? Prefix(IReadOnlyList<Token> tokens, ref int at)
    {
        Token token = tokens[at];
        string? right = token.Kind != TokenKind.Word ? null
            : token.Text == "D" || token.Is(Term.Design) ? "design"
            : token.Is(Term.Reissue) ? "reissue"
            : null;
        if (right is null)
        {
            return null;
        }

        int next = at + 1;
        while (next < tokens.Count && next <= at + 3 && (tokens[next].IsSoft || tokens[next].Is(Term.No)))
        {
            next++;
        }

        if (next >= tokens.Count || tokens[next].Kind != TokenKind.Digits)
        {
            return null;
        }

        at = next;
        return right;
    }

    private static bool IsGroup(IReadOnlyList<Token> tokens, int at, bool first)
    {
        Token token = tokens[at];
        if (token.Kind == TokenKind.Digits)
        {
            return true;
        }

        // A lost group, or a letter in place of the first digit: "PAT. ?,234,567", "PAT. I,234,567".
        return token.Kind == TokenKind.Lost
            ? !first || (at + 1 < tokens.Count && tokens[at + 1].IsSign(','))
            : first && token.Kind == TokenKind.Word && token.Text is "I" or "L" or "O" or "B" or "S"
                && at + 2 < tokens.Count && (tokens[at + 1].IsSign(',') || tokens[at + 1].IsSign('.')) && tokens[at + 2].Kind == TokenKind.Digits
                && tokens[at + 2].Text.Length == 3;
    }

    private static string Text(Token token)
        => token.Kind == TokenKind.Word ? Fold.AsDigit(token.Text[0]).ToString() : token.Text;

    /// <summary>A group of three digits behind a comma, a point, an apostrophe or a space; all groups are set apart in the same way.</summary>
    private static bool TryGroup(IReadOnlyList<Token> tokens, int at, int first, bool grouped, out int behind)
    {
        behind = at;
        if (at >= tokens.Count)
        {
            return false;
        }

        char separator = Separator(tokens[at]);
        int group = separator == ' ' ? at : at + 1;
        if (group >= tokens.Count || (separator == ' ' && tokens[at].Kind is TokenKind.Sign or TokenKind.Break)
            || (grouped && Separator(tokens[first + 1]) != separator))
        {
            return false;
        }

        Token token = tokens[group];
        bool fits = token.Kind switch
        {
            TokenKind.Digits => token.Text.Length == 3 || (token.Text.AsSpan().IndexOf('*') >= 0 && token.Text.Length < 3),
            TokenKind.Lost => token.Text.Length == 3 || token.Text == "*",
            _ => false,
        };
        behind = group + 1;
        return fits && !IsMeasure(tokens, behind) && (separator != ' ' || !StartsGrouped(tokens, group));
    }

    /// <summary>Whether the digits behind a space begin a number with commas of their own.</summary>
    private static bool StartsGrouped(IReadOnlyList<Token> tokens, int at)
        => at + 2 < tokens.Count && Separator(tokens[at + 1]) == ',' && tokens[at + 2].Joined
            && tokens[at + 2].Kind is TokenKind.Digits or TokenKind.Lost && tokens[at + 2].Text.Length == 3;

    private static char Separator(Token token)
        => token.Kind == TokenKind.Sign && token.Text[0] is ',' or '.' or '\'' ? ',' : ' ';

    /// <summary>Whether a measure is joined to the digits before it: <c>12K</c>, <c>20MM</c>.</summary>
    private static bool IsMeasure(IReadOnlyList<Token> tokens, int at)
        => at < tokens.Count && tokens[at].Joined && tokens[at].Kind == TokenKind.Word && tokens[at].Text[0] is >= 'A' and <= 'Z'
            && tokens[at].Text is not ("A" or "B" or "C" or "U" or "S" or "Y") && !tokens[at].Is(Term.Patent);

    /// <summary>The year before a number, as in <c>1907/12345</c>.</summary>
    private static string? YearFirst(IReadOnlyList<Token> tokens, ref int next, ref string digits)
    {
        bool isYear = digits.Length == 4 && digits[0] == '1' && digits[1] is '8' or '9' && next + 1 < tokens.Count && tokens[next].IsSign('/')
            && tokens[next + 1].Kind == TokenKind.Digits && tokens[next + 1].Text.Length is >= 3 and <= 5 && !DigitPattern.HasLosses(digits);
        if (!isYear)
        {
            return null;
        }

        string year = digits;
        digits = tokens[next + 1].Text;
        next += 2;
        return year;
    }

    /// <summary>The year behind a number: <c>10811/97</c>, <c>12345-07</c>, <c>12345 of 1907</c>.</summary>
    private static string? Year(IReadOnlyList<Token> tokens, ref int next, string digits)
    {
        if (digits.Length is < 1 or > 6 || next + 1 >= tokens.Count)
        {
            return null;
        }

        bool stroke = tokens[next].IsSign('/') && digits.Length >= 3;
        bool dash = tokens[next].IsSign('-') && digits.Length is >= 4 and <= 5;
        bool of = tokens[next].Is(Term.Of) || tokens[next].Is(Term.Dated);
        if (!stroke && !dash && !of)
        {
            return null;
        }

        int at = next + 1;
        while (at + 1 < tokens.Count && (tokens[at].IsSign('\'') || (of && tokens[at].IsSign('.'))))
        {
            at++;
        }

        Token year = tokens[at];
        bool isYear = year.Kind == TokenKind.Digits && !DigitPattern.HasLosses(year.Text)
            && (year.Text.Length == 2 ? !of || tokens[at - 1].IsSign('\'') : year.Text.Length == 4 && year.Text[0] is '1' or '2');
        if (!isYear)
        {
            return null;
        }

        next = at + 1;
        return year.Text;
    }

    /// <summary>The kind of document behind a recent number (<c>US 6,123,456 B1</c>), or the Japanese word for a number.</summary>
    private static void SkipKindCode(IReadOnlyList<Token> tokens, ref int next, string digits)
    {
        if (next < tokens.Count && tokens[next].Joined && tokens[next].Text is "\u53F7" or "\u865F")
        {
            next++;
        }

        if (digits.Length >= 6 && next + 1 < tokens.Count && tokens[next].Kind == TokenKind.Word && tokens[next].Text is "A" or "B" or "C" or "U" or "S" or "Y"
            && tokens[next + 1].Joined && tokens[next + 1].Kind == TokenKind.Digits && tokens[next + 1].Text.Length == 1)
        {
            next += 2;
        }
    }
}
