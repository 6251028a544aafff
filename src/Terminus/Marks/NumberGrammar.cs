namespace Terminus;

/// <summary>Reads numbers in the ways they are stamped: <c>2,345,678</c>, <c>1 234 567</c>, <c>D-123456</c>, <c>10811/97</c>, <c>2,4?4,1?2</c>.</summary>
internal static class NumberGrammar
{
    private const int MostGroups = 4;
    private const int DigitsOfGroup = 3;
    private const char Lost = '?';

    /// <summary>The number that starts at a token, or null.</summary>
    /// <param name="tokens">The inscription.</param>
    /// <param name="start">The token.</param>
    /// <param name="end">The token behind the number.</param>
    internal static StampedNumber? Read(TokenList tokens, int start, out int end)
    {
        end = start;
        int at = start;
        string? right = Prefix(tokens, ref at);
        if (!IsFirstGroup(tokens, at))
        {
            return null;
        }

        bool letter = tokens[at].Kind == TokenKind.Word;
        bool doubtful = tokens[at].Doubtful || letter;
        Span<char> groups = stackalloc char[(MostGroups + 1) * DigitsOfGroup];
        int next = at + 1;
        bool lacksComma = LacksComma(tokens, at);
        doubtful |= lacksComma;
        int length = tokens[at].Length <= DigitsOfGroup || lacksComma ? Groups(tokens, at, groups, ref next, ref doubtful) : 0;
        bool grouped = length > 0;
        if ((letter && !grouped) || IsMeasure(tokens, next))
        {
            return null;
        }

        ReadOnlySpan<char> digits = grouped ? groups.Slice(0, length) : tokens.Text(at);
        string? year = null;
        if (right is null && IsYearFirst(tokens, next, digits))
        {
            year = digits.ToString();
            digits = tokens.Text(next + 1);
            next += 2;
        }
        else if (right is null)
        {
            year = Year(tokens, ref next, digits.Length);
        }

        if (year is null && (IsNumerator(tokens, next, digits) || (right is null && !grouped && IsNegative(tokens, at))))
        {
            return null;
        }

        SkipKindCode(tokens, ref next, digits.Length);
        end = next;
        return new StampedNumber(digits.ToString(), year, right, grouped, doubtful);
    }

    /// <summary>The letter of a design or a reissue before a number: <c>D-123456</c>, <c>D. 123,456</c>, <c>RE 20202</c>, <c>PP 123</c>.</summary>
    private static string? Prefix(TokenList tokens, ref int at)
    {
        ref readonly Token token = ref tokens[at];
        string? right = token.Kind != TokenKind.Word ? null
            : token.IsLetter('D') || token.Is(Terms.Design) ? "design"
            : token.Is(Terms.Reissue) ? "reissue"
            : null;
        if (right is null)
        {
            return null;
        }

        int next = at + 1;
        while (next <= at + 3 && (tokens[next].IsSoft || tokens[next].Is(Terms.No)))
        {
            next++;
        }

        if (!tokens[next].IsDigits)
        {
            return null;
        }

        at = next;
        return right;
    }

    /// <summary>Digits, a lost group, or a letter in place of the first digit: <c>PAT. ?,234,567</c>, <c>PAT. I,234,567</c>.</summary>
    private static bool IsFirstGroup(TokenList tokens, int at)
    {
        ref readonly Token token = ref tokens[at];
        return token.Kind switch
        {
            TokenKind.Digits => true,
            TokenKind.Lost => tokens[at + 1].IsSign(','),
            TokenKind.Word => token.Length == 1 && token.First is 'I' or 'L' or 'O' or 'B' or 'S' && tokens[at + 1].First is ',' or '.'
                && tokens[at + 2] is { IsDigits: true, Length: DigitsOfGroup },
            _ => false,
        };
    }

    /// <summary>Writes the first group and all groups of three digits that follow it, and returns how many digits they are; 0 where none follows.</summary>
    private static int Groups(TokenList tokens, int first, Span<char> digits, ref int next, ref bool doubtful)
    {
        int length = 0;
        char separator = Separator(in tokens[next]);
        for (int group = 1; group < MostGroups && TryGroup(tokens, next, separator, out int behind); group++)
        {
            length = length == 0 ? Write(tokens, first, digits) : length;
            length += tokens[behind - 1] is { Length: 1, First: '*' } ? WriteLost(digits.Slice(length)) : Write(tokens, behind - 1, digits.Slice(length));
            doubtful |= tokens[behind - 1].Doubtful;
            next = behind;
        }

        if (length > 0 && tokens[next].IsSign(',') && tokens[next + 1] is { Joined: true, IsDigits: true, Length: < DigitsOfGroup })
        {
            // The end of the last group is worn away.
            Span<char> last = digits.Slice(length, DigitsOfGroup);
            last.Fill(Lost);
            tokens.Text(next + 1).CopyTo(last);
            length += DigitsOfGroup;
            doubtful = true;
            next += 2;
        }

        return length;
    }

    /// <summary>Whether four digits that are no year stand before a last group: the first comma of <c>2345,678</c> is worn away or was not typed.</summary>
    private static bool LacksComma(TokenList tokens, int at)
        => tokens[at] is { IsDigits: true, Length: DigitsOfGroup + 1 } && tokens[at + 1].IsSign(',') && tokens[at + 1].Joined
            && tokens[at + 2] is { Joined: true, IsDigits: true, Length: DigitsOfGroup } && !tokens[at + 3].IsSign(',')
            && !StartsAsYear(tokens.Text(at));

    private static int Write(TokenList tokens, int at, Span<char> digits)
    {
        ref readonly Token token = ref tokens[at];
        if (token.Kind == TokenKind.Word)
        {
            digits[0] = Fold.AsDigit(token.First);
            return 1;
        }

        tokens.Text(at).CopyTo(digits);
        return token.Length;
    }

    // A group of which nothing can be read still has its three digits.
    private static int WriteLost(Span<char> digits)
    {
        digits.Slice(0, DigitsOfGroup).Fill(Lost);
        return DigitsOfGroup;
    }

    /// <summary>A group of three digits behind a comma, a point, an apostrophe or a space; all groups are set apart in the same way.</summary>
    private static bool TryGroup(TokenList tokens, int at, char separator, out int behind)
    {
        int group = separator == ' ' ? at : at + 1;
        ref readonly Token token = ref tokens[group];
        behind = group + 1;
        return Separator(in tokens[at]) == separator
            && token.Kind switch
            {
                TokenKind.Digits => token.Length == DigitsOfGroup || (token.Length < DigitsOfGroup && tokens.Text(group).IndexOf('*') >= 0),
                TokenKind.Lost => token.Length == DigitsOfGroup || (token.Length == 1 && token.First == '*'),
                _ => false,
            }
            && !IsMeasure(tokens, behind) && (separator != ' ' || !StartsGrouped(tokens, group));
    }

    /// <summary>Whether the digits behind a space begin a number with commas of their own.</summary>
    private static bool StartsGrouped(TokenList tokens, int at)
        => Separator(in tokens[at + 1]) == ',' && tokens[at + 2] is { Joined: true, Length: DigitsOfGroup, Kind: TokenKind.Digits or TokenKind.Lost };

    private static char Separator(in Token token)
        => token.Kind == TokenKind.Sign && token.First is ',' or '.' or '\'' ? ',' : ' ';

    /// <summary>Whether a measure is joined to the digits before it: <c>12K</c>, <c>20MM</c>.</summary>
    private static bool IsMeasure(TokenList tokens, int at)
    {
        ref readonly Token token = ref tokens[at];
        return token.Joined && token.Kind == TokenKind.Word && token.First is >= 'A' and <= 'Z' && !IsKindLetter(in token) && !token.Is(Terms.Patent);
    }

    /// <summary>Whether digits are the numerator of a fraction.</summary>
    private static bool IsNumerator(TokenList tokens, int next, ReadOnlySpan<char> digits) => digits.Length <= 2 && tokens[next].IsSign('/');

    /// <summary>Whether a dash joined to a few digits and to nothing before them makes them no number: <c>No. -5</c>.</summary>
    private static bool IsNegative(TokenList tokens, int at)
        => tokens[at] is { Joined: true, Length: <= DigitsOfGroup } && tokens[at - 1].IsSign('-') && !tokens[at - 1].Joined;

    /// <summary>Whether this is the first letter of the kind of a document.</summary>
    private static bool IsKindLetter(in Token token)
        => token.Length == 1 && token.Kind == TokenKind.Word && token.First is 'A' or 'B' or 'C' or 'U' or 'S' or 'Y';

    /// <summary>Whether the year stands before the number, as in <c>1907/12345</c>.</summary>
    private static bool IsYearFirst(TokenList tokens, int next, ReadOnlySpan<char> digits)
        => digits.Length == 4 && StartsAsYear(digits) && tokens[next].IsSign('/')
            && tokens[next + 1] is { IsDigits: true, Length: >= 3 and <= 5 } && !DigitPattern.HaveLosses(digits);

    private static bool StartsAsYear(ReadOnlySpan<char> digits) => digits[0] == '1' && digits[1] is '8' or '9';

    /// <summary>The year behind a number: <c>10811/97</c>, <c>12345-07</c>, <c>12345 of 1907</c>.</summary>
    private static string? Year(TokenList tokens, ref int next, int length)
    {
        ref readonly Token sign = ref tokens[next];
        bool stroke = sign.IsSign('/') && length >= 3;
        bool dash = sign.IsSign('-') && length is >= 4 and <= 5;
        bool of = sign.Is(Terms.Of | Terms.Dated);
        if (length is < 1 or > 6 || (!stroke && !dash && !of))
        {
            return null;
        }

        int at = next + 1;
        while (at + 1 < tokens.Count && (tokens[at].IsSign('\'') || (of && tokens[at].IsSign('.'))))
        {
            at++;
        }

        ref readonly Token year = ref tokens[at];
        bool isYear = year.IsDigits && !DigitPattern.HaveLosses(tokens.Text(at))
            && (year.Length == 2 ? !of || tokens[at - 1].IsSign('\'') : year.Length == 4 && year.First is '1' or '2');
        if (!isYear)
        {
            return null;
        }

        next = at + 1;
        return tokens.Text(at).ToString();
    }

    /// <summary>The kind of document behind a recent number (<c>US 6,123,456 B1</c>), or the Japanese word for a number.</summary>
    private static void SkipKindCode(TokenList tokens, ref int next, int length)
    {
        if (tokens[next].Joined && tokens.Text(next) is "\u53F7" or "\u865F")
        {
            next++;
        }

        if (length >= 6 && IsKindLetter(in tokens[next]) && tokens[next + 1] is { Joined: true, IsDigits: true, Length: 1 })
        {
            next += 2;
        }
    }
}
