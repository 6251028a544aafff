namespace Terminus;

/// <summary>
/// Reads dates in the ways they are stamped: <c>APR. 17-94</c>, <c>4 JUNE 1889</c>, <c>JAN.Y 5TH '92</c>, <c>3 6 06</c>, <c>17.IV.94</c>.
/// </summary>
internal static class DateGrammar
{
    private static readonly string[] Ordinals = ["ST", "ND", "RD", "TH", "D", "S", "T", "ER", "E", "EME", "TE", "O", "ST.", "NTH", "DE", "EN", "H"];

    private static readonly string[] RomanMonths = ["I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX", "X", "XI", "XII"];

    /// <summary>The date with a named month that starts at a token, or null.</summary>
    /// <param name="tokens">The inscription.</param>
    /// <param name="start">The token.</param>
    /// <param name="end">The token behind the date.</param>
    internal static StampedDate? Named(IReadOnlyList<Token> tokens, int start, out int end)
    {
        end = start;
        return tokens[start].Months != 0 ? MonthFirst(tokens, start, ref end)
            : tokens[start].Kind == TokenKind.Digits ? DayFirst(tokens, start, ref end)
            : null;
    }

    /// <summary>Month and day without a year, which then stands behind the next date: <c>MAY 5 &amp; JUNE 9 1885</c>.</summary>
    internal static StampedDate? WithoutYear(IReadOnlyList<Token> tokens, int start, out int end)
    {
        end = start;
        if (tokens[start].Months == 0)
        {
            return null;
        }

        int at = AfterMonth(tokens, start + 1);
        if (!IsDay(tokens, at))
        {
            return null;
        }

        Token day = tokens[at];
        end = AfterOrdinal(tokens, at + 1);
        return new StampedDate("?", tokens[start].Months, day.Text) { Doubtful = tokens[start].Doubtful || day.Doubtful };
    }

    /// <summary>A day and a year, whose month stands before an earlier day: the second date of <c>AUG. 12 &amp; 19 1884</c>.</summary>
    internal static StampedDate? DayAndYear(IReadOnlyList<Token> tokens, int start, int months, out int end)
    {
        end = start;
        int year = IsDay(tokens, start) ? AfterDay(tokens, AfterOrdinal(tokens, start + 1)) : tokens.Count;
        if (year >= tokens.Count || !IsYear(tokens[year]))
        {
            return null;
        }

        end = year + 1;
        return new StampedDate(tokens[year].Text, months, tokens[start].Text) { Doubtful = tokens[start].Doubtful || tokens[year].Doubtful };
    }

    /// <summary>The date in digits alone that starts at a token, or null.</summary>
    internal static StampedDate? Numeric(IReadOnlyList<Token> tokens, int start, out int end)
    {
        end = start;
        if (start + 2 >= tokens.Count || tokens[start].Kind != TokenKind.Digits)
        {
            return null;
        }

        int second = AfterSeparator(tokens, start + 1, out char one);
        if (second >= tokens.Count || !(tokens[second].Kind == TokenKind.Digits || IsRoman(tokens[second])))
        {
            return null;
        }

        int third = AfterSeparator(tokens, second + 1, out char other);
        if (third >= tokens.Count || tokens[third].Kind != TokenKind.Digits || one != other)
        {
            return null;
        }

        Token a = tokens[start];
        Token b = tokens[second];
        Token c = tokens[third];
        bool doubtful = a.Doubtful || b.Doubtful || c.Doubtful;
        if (IsJoinedWord(tokens, third + 1))
        {
            return null;
        }

        end = third + 1;
        if (a.Text.Length == 4 && b.Text.Length <= 2 && c.Text.Length <= 2 && b.Kind == TokenKind.Digits)
        {
            return new StampedDate(a.Text, 0, c.Text, b.Text) { Doubtful = doubtful, OrderKnown = true };
        }

        if (a.Text.Length > 2 || c.Text.Length is not (2 or 4) || (c.Text.Length == 4 && !IsYear(c)))
        {
            return null;
        }

        if (b.Kind == TokenKind.Word)
        {
            int month = Array.IndexOf(RomanMonths, b.Text) + 1;
            return new StampedDate(c.Text, 1 << month, a.Text) { Doubtful = doubtful, OrderKnown = true };
        }

        return b.Text.Length > 2 ? null : new StampedDate(c.Text, 0, b.Text, a.Text) { Doubtful = doubtful };
    }

    /// <summary>A year alone: four digits, or two behind an apostrophe.</summary>
    internal static StampedDate? YearAlone(IReadOnlyList<Token> tokens, int start, out int end)
    {
        end = start;
        if (tokens[start].IsSign('\'') && start + 1 < tokens.Count && tokens[start + 1].Kind == TokenKind.Digits
            && tokens[start + 1].Text.Length == 2 && tokens[start + 1].Joined && !IsJoinedWord(tokens, start + 2))
        {
            end = start + 2;
            return new StampedDate(tokens[start + 1].Text, 0, string.Empty) { Doubtful = tokens[start + 1].Doubtful };
        }

        if (!IsYear(tokens[start]) || IsJoinedWord(tokens, start + 1) || IsPartOfNumber(tokens, start + 1))
        {
            return null;
        }

        end = start + 1;
        return new StampedDate(tokens[start].Text, 0, string.Empty) { Doubtful = tokens[start].Doubtful };
    }

    private static StampedDate? MonthFirst(IReadOnlyList<Token> tokens, int start, ref int end)
    {
        Token month = tokens[start];
        int at = AfterMonth(tokens, start + 1);
        if (IsDay(tokens, at) && !IsApostrophised(tokens, at))
        {
            Token day = tokens[at];
            int year = AfterDay(tokens, AfterOrdinal(tokens, at + 1));
            if (IsYearOfDate(tokens, year))
            {
                end = year + 1;
                return new StampedDate(tokens[year].Text, month.Months, day.Text)
                {
                    Doubtful = month.Doubtful || day.Doubtful || tokens[year].Doubtful,
                };
            }
        }

        // Month and year, without a day.
        bool four = at < tokens.Count && IsYear(tokens[at]) && !IsPartOfNumber(tokens, at + 1);
        if (four || (IsApostrophised(tokens, at) && tokens[at].Text.Length == 2))
        {
            end = at + 1;
            return new StampedDate(tokens[at].Text, month.Months, string.Empty) { Doubtful = month.Doubtful || tokens[at].Doubtful };
        }

        return null;
    }

    private static StampedDate? DayFirst(IReadOnlyList<Token> tokens, int start, ref int end)
    {
        if (!IsDay(tokens, start))
        {
            return null;
        }

        int at = AfterOrdinal(tokens, start + 1);
        at = SkipSoft(tokens, at);
        at = at < tokens.Count && tokens[at].Text == "DAY" ? SkipSoft(tokens, at + 1) : at;
        if (at < tokens.Count && (tokens[at].Is(Term.Of) || tokens[at].Text is "DE" or "DEN"))
        {
            at = SkipSoft(tokens, at + 1);
        }

        if (at >= tokens.Count || tokens[at].Months == 0)
        {
            return null;
        }

        Token month = tokens[at];
        int year = AfterDay(tokens, AfterMonth(tokens, at + 1));
        if (year < tokens.Count && tokens[year].Text is "DE" or "DEL")
        {
            year = SkipSoft(tokens, year + 1);
        }

        if (!IsYearOfDate(tokens, year))
        {
            return null;
        }

        end = year + 1;
        return new StampedDate(tokens[year].Text, month.Months, tokens[start].Text)
        {
            Doubtful = month.Doubtful || tokens[start].Doubtful || tokens[year].Doubtful,
        };
    }

    /// <summary>Behind a month: its point, and the raised end of an old abbreviation (<c>JAN.Y</c>, <c>FEB.RY</c>).</summary>
    private static int AfterMonth(IReadOnlyList<Token> tokens, int at)
    {
        int next = SkipSoft(tokens, at);
        if (next < tokens.Count && tokens[next].Kind == TokenKind.Word && tokens[next].Text is "Y" or "RY" or "R" or "BR" or "CH" or "T" or "TR" or "THE")
        {
            next = SkipSoft(tokens, next + 1);
        }

        return next;
    }

    private static int AfterDay(IReadOnlyList<Token> tokens, int at)
    {
        int next = SkipSoft(tokens, at);
        return next < tokens.Count && tokens[next].IsSign('/') ? next + 1 : next;
    }

    /// <summary>Behind a day: the ending of its ordinal, joined or set apart (<c>5TH</c>, <c>2D</c>, <c>5 TH</c>).</summary>
    private static int AfterOrdinal(IReadOnlyList<Token> tokens, int at)
    {
        int next = at;
        if (next < tokens.Count && tokens[next].IsSign('\'') && next + 1 < tokens.Count && tokens[next + 1].Kind == TokenKind.Word)
        {
            next++;
        }

        return next < tokens.Count && tokens[next].Kind == TokenKind.Word && Array.IndexOf(Ordinals, tokens[next].Text) >= 0
            && tokens[next].Months == 0 ? next + 1 : at;
    }

    private static int AfterSeparator(IReadOnlyList<Token> tokens, int at, out char separator)
    {
        separator = ' ';
        if (at < tokens.Count && tokens[at].Kind == TokenKind.Sign && tokens[at].Text[0] is '.' or '-' or '/' or ',' or ':' or '\'')
        {
            separator = tokens[at].Text[0] is ',' or '\'' ? '.' : tokens[at].Text[0];
            return at + 1 < tokens.Count && tokens[at + 1].IsSign('\'') ? at + 2 : at + 1;
        }

        return at < tokens.Count && tokens[at].Kind == TokenKind.Break ? tokens.Count : at;
    }

    private static int SkipSoft(IReadOnlyList<Token> tokens, int at)
    {
        int next = at;
        while (next < tokens.Count && next < at + 3 && tokens[next].IsSoft)
        {
            next++;
        }

        return next;
    }

    private static bool IsDay(IReadOnlyList<Token> tokens, int at)
        => at < tokens.Count && ((tokens[at].Kind == TokenKind.Digits && tokens[at].Text.Length <= 2)
            || (tokens[at].Kind == TokenKind.Lost && tokens[at].Text.Length <= 2));

    /// <summary>Four digits of a year that things are stamped with.</summary>
    private static bool IsYear(Token token)
        => token.Kind == TokenKind.Digits && token.Text.Length == 4
            && (token.Text[0] == '1' ? token.Text[1] is '6' or '7' or '8' or '9' or '?' : token.Text[0] == '2' && token.Text[1] is '0' or '?');

    private static bool IsYearOfDate(IReadOnlyList<Token> tokens, int at)
        => at < tokens.Count && !IsJoinedWord(tokens, at + 1) && !IsPartOfNumber(tokens, at + 1)
            && (IsYear(tokens[at]) || (tokens[at].Kind == TokenKind.Digits && tokens[at].Text.Length == 2));

    private static bool IsApostrophised(IReadOnlyList<Token> tokens, int at)
        => at > 0 && at < tokens.Count && tokens[at - 1].IsSign('\'') && tokens[at].Joined && tokens[at].Kind == TokenKind.Digits;

    /// <summary>Whether letters are joined to the digits before, as in <c>12K</c>, or a stroke as in <c>1/20</c>.</summary>
    private static bool IsJoinedWord(IReadOnlyList<Token> tokens, int at)
        => at < tokens.Count && tokens[at].Joined && ((tokens[at].Kind == TokenKind.Word && tokens[at].Text[0] is >= 'A' and <= 'Z' && tokens[at].Months == 0
            && !tokens[at].Is(Term.Patent)) || tokens[at].IsSign('/'));

    /// <summary>Whether groups of three digits follow, so that what stands before is the head of a number.</summary>
    private static bool IsPartOfNumber(IReadOnlyList<Token> tokens, int at)
        => at + 1 < tokens.Count && tokens[at].IsSign(',') && tokens[at + 1].Joined && tokens[at + 1].Kind == TokenKind.Digits
            && tokens[at + 1].Text.Length == 3;

    private static bool IsRoman(Token token) => token.Kind == TokenKind.Word && Array.IndexOf(RomanMonths, token.Text) >= 0;
}
