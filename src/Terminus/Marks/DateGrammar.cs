namespace Terminus;

/// <summary>
/// Reads dates in the ways they are stamped: <c>APR. 17-94</c>, <c>4 JUNE 1889</c>, <c>JAN.Y 5TH '92</c>, <c>3 6 06</c>, <c>17.IV.94</c>.
/// </summary>
internal static class DateGrammar
{
    /// <summary>The date with a named month or in digits alone that starts at a token, or null.</summary>
    /// <param name="tokens">The inscription.</param>
    /// <param name="start">The token.</param>
    /// <param name="end">The token behind the date.</param>
    internal static StampedDate? Any(TokenList tokens, int start, out int end)
        => Named(tokens, start, out end) ?? Numeric(tokens, start, out end);

    /// <summary>The date with a named month that starts at a token, or null.</summary>
    internal static StampedDate? Named(TokenList tokens, int start, out int end)
    {
        end = start;
        ref readonly Token token = ref tokens[start];
        return token.Months != 0 ? MonthFirst(tokens, start, ref end)
            : token.IsDigits ? DayFirst(tokens, start, ref end)
            : null;
    }

    /// <summary>Month and day without a year, which then stands behind the next date: <c>MAY 5 &amp; JUNE 9 1885</c>.</summary>
    internal static StampedDate? WithoutYear(TokenList tokens, int start, out int end)
    {
        end = start;
        if (tokens[start].Months == 0)
        {
            return null;
        }

        int at = AfterMonth(tokens, start + 1);
        if (!IsDay(in tokens[at]))
        {
            return null;
        }

        end = AfterOrdinal(tokens, at + 1);
        return new StampedDate(default, tokens[start].Months, tokens.Digits(at)) { Doubtful = tokens[start].Doubtful || tokens[at].Doubtful };
    }

    /// <summary>A day and a year, whose month stands before an earlier day: the second date of <c>AUG. 12 &amp; 19 1884</c>.</summary>
    internal static StampedDate? DayAndYear(TokenList tokens, int start, int months, out int end)
    {
        end = start;
        int year = IsDay(in tokens[start]) ? AfterDay(tokens, AfterOrdinal(tokens, start + 1)) : tokens.Count;
        if (!IsYear(tokens, year))
        {
            return null;
        }

        end = year + 1;
        return new StampedDate(tokens.Digits(year), months, tokens.Digits(start)) { Doubtful = tokens[start].Doubtful || tokens[year].Doubtful };
    }

    /// <summary>The date in digits alone that starts at a token, or null.</summary>
    internal static StampedDate? Numeric(TokenList tokens, int start, out int end)
    {
        end = start;
        if (!tokens[start].IsDigits)
        {
            return null;
        }

        int second = AfterSeparator(tokens, start + 1, out char one);
        int romanMonth = RomanMonth(tokens, second);
        if (!tokens[second].IsDigits && romanMonth == 0)
        {
            return null;
        }

        int third = AfterSeparator(tokens, second + 1, out char other);
        if (!tokens[third].IsDigits || one != other || IsJoinedWord(tokens, third + 1))
        {
            return null;
        }

        ref readonly Token a = ref tokens[start];
        ref readonly Token b = ref tokens[second];
        ref readonly Token c = ref tokens[third];
        bool doubtful = a.Doubtful || b.Doubtful || c.Doubtful;
        end = third + 1;
        if (a.Length == 4 && b.Length <= 2 && c.Length <= 2 && b.IsDigits)
        {
            return new StampedDate(tokens.Digits(start), 0, tokens.Digits(third), tokens.Digits(second)) { Doubtful = doubtful, OrderKnown = true };
        }

        if (a.Length > 2 || c.Length is not (2 or 4) || (c.Length == 4 && !IsYear(tokens, third)))
        {
            return null;
        }

        if (romanMonth > 0)
        {
            return new StampedDate(tokens.Digits(third), 1 << romanMonth, tokens.Digits(start)) { Doubtful = doubtful, OrderKnown = true };
        }

        return b.Length > 2 ? null : new StampedDate(tokens.Digits(third), 0, tokens.Digits(second), tokens.Digits(start)) { Doubtful = doubtful };
    }

    /// <summary>A year alone: four digits, or two behind an apostrophe.</summary>
    internal static StampedDate? YearAlone(TokenList tokens, int start, out int end)
    {
        end = start;
        int at = start;
        if (tokens[start].IsSign('\'') && tokens[start + 1] is { IsDigits: true, Length: 2, Joined: true } && !IsJoinedWord(tokens, start + 2))
        {
            at = start + 1;
        }
        else if (!IsYear(tokens, start) || IsJoinedWord(tokens, start + 1) || IsPartOfNumber(tokens, start + 1))
        {
            return null;
        }

        end = at + 1;
        return new StampedDate(tokens.Digits(at), 0) { Doubtful = tokens[at].Doubtful };
    }

    private static StampedDate? MonthFirst(TokenList tokens, int start, ref int end)
    {
        int at = AfterMonth(tokens, start + 1);
        bool apostrophised = IsApostrophised(tokens, at);
        if (!apostrophised && IsDay(in tokens[at]))
        {
            int year = AfterDay(tokens, AfterOrdinal(tokens, at + 1));
            if (IsYearOfDate(tokens, year))
            {
                end = year + 1;
                return Date(tokens, year, start, at);
            }
        }

        // Month and year, without a day.
        bool four = IsYear(tokens, at) && !IsPartOfNumber(tokens, at + 1);
        if (four || (apostrophised && tokens[at].Length == 2))
        {
            end = at + 1;
            return new StampedDate(tokens.Digits(at), tokens[start].Months) { Doubtful = tokens[start].Doubtful || tokens[at].Doubtful };
        }

        return null;
    }

    private static StampedDate? DayFirst(TokenList tokens, int start, ref int end)
    {
        if (!IsDay(in tokens[start]))
        {
            return null;
        }

        int at = tokens.SkipSoft(AfterOrdinal(tokens, start + 1));
        at = tokens.Text(at) is "DAY" ? tokens.SkipSoft(at + 1) : at;
        if (tokens[at].Is(Terms.Of) || tokens.Text(at) is "DE" or "DEN")
        {
            at = tokens.SkipSoft(at + 1);
        }

        if (tokens[at].Months == 0)
        {
            return null;
        }

        int year = AfterDay(tokens, AfterMonth(tokens, at + 1));
        if (tokens.Text(year) is "DE" or "DEL")
        {
            year = tokens.SkipSoft(year + 1);
        }

        if (!IsYearOfDate(tokens, year))
        {
            return null;
        }

        end = year + 1;
        return Date(tokens, year, at, start);
    }

    private static StampedDate Date(TokenList tokens, int year, int month, int day)
        => new(tokens.Digits(year), tokens[month].Months, tokens.Digits(day))
        {
            Doubtful = tokens[month].Doubtful || tokens[day].Doubtful || tokens[year].Doubtful,
        };

    /// <summary>Behind a month: its point, and the raised end of an old abbreviation (<c>JAN.Y</c>, <c>FEB.RY</c>).</summary>
    private static int AfterMonth(TokenList tokens, int at)
    {
        int next = tokens.SkipSoft(at);
        return tokens[next].Kind == TokenKind.Word && tokens.Text(next) is "Y" or "RY" or "R" or "BR" or "CH" or "T" or "TR" or "THE"
            ? tokens.SkipSoft(next + 1)
            : next;
    }

    private static int AfterDay(TokenList tokens, int at)
    {
        int next = tokens.SkipSoft(at);
        return tokens[next].IsSign('/') ? next + 1 : next;
    }

    /// <summary>Behind a day: the ending of its ordinal, joined or set apart (<c>5TH</c>, <c>2D</c>, <c>5 TH</c>).</summary>
    private static int AfterOrdinal(TokenList tokens, int at)
    {
        int next = tokens[at].IsSign('\'') && tokens[at + 1].Kind == TokenKind.Word ? at + 1 : at;
        ref readonly Token token = ref tokens[next];
        return token.Kind == TokenKind.Word && token.Months == 0 && IsOrdinal(tokens.Text(next)) ? next + 1 : at;
    }

    private static bool IsOrdinal(ReadOnlySpan<char> text)
        => text is "ST" or "ND" or "RD" or "TH" or "D" or "S" or "T" or "ER" or "E" or "EME" or "TE" or "O" or "NTH" or "DE" or "EN" or "H";

    private static int AfterSeparator(TokenList tokens, int at, out char separator)
    {
        separator = ' ';
        ref readonly Token token = ref tokens[at];
        if (token.Kind == TokenKind.Sign && token.First is '.' or '-' or '/' or ',' or ':' or '\'')
        {
            separator = token.First is ',' or '\'' ? '.' : token.First;
            return tokens[at + 1].IsSign('\'') ? at + 2 : at + 1;
        }

        return token.Kind == TokenKind.Break ? tokens.Count : at;
    }

    private static bool IsDay(in Token token) => token.Length <= 2 && token.Kind is TokenKind.Digits or TokenKind.Lost;

    /// <summary>Four digits of a year that things are stamped with.</summary>
    private static bool IsYear(TokenList tokens, int at)
    {
        ref readonly Token token = ref tokens[at];
        if (token.Length != 4 || !token.IsDigits)
        {
            return false;
        }

        char second = tokens.Text(at)[1];
        return token.First == '1' ? second is '6' or '7' or '8' or '9' or '?' : token.First == '2' && second is '0' or '?';
    }

    private static bool IsYearOfDate(TokenList tokens, int at)
        => (tokens[at] is { IsDigits: true, Length: 2 } ? !IsDayBeforeYear(tokens, at) : IsYear(tokens, at))
            && !IsJoinedWord(tokens, at + 1) && !IsPartOfNumber(tokens, at + 1);

    /// <summary>Whether two digits are another day of the month, with the year of both behind it: the 11 of <c>JUNE 4, 11, 1889</c>.</summary>
    private static bool IsDayBeforeYear(TokenList tokens, int at)
        => tokens.Digits(at).Next(1, 31) > 0 && tokens[at - 1].IsSign(',') && tokens[at + 1].IsSign(',') && IsYear(tokens, tokens.SkipSoft(at + 1));

    private static bool IsApostrophised(TokenList tokens, int at)
        => tokens[at] is { Joined: true, IsDigits: true } && tokens[at - 1].IsSign('\'');

    /// <summary>Whether letters are joined to the digits before, as in <c>12K</c>, or a stroke as in <c>1/20</c>.</summary>
    private static bool IsJoinedWord(TokenList tokens, int at)
    {
        ref readonly Token token = ref tokens[at];
        return token.Joined && ((token.Kind == TokenKind.Word && token.First is >= 'A' and <= 'Z' && token.Months == 0 && !token.Is(Terms.Patent))
            || token.IsSign('/'));
    }

    /// <summary>Whether groups of three digits follow, so that what stands before is the head of a number.</summary>
    private static bool IsPartOfNumber(TokenList tokens, int at)
        => tokens[at].IsSign(',') && tokens[at + 1] is { Joined: true, IsDigits: true, Length: 3 };

    /// <summary>The month of a Roman numeral, or 0.</summary>
    private static int RomanMonth(TokenList tokens, int at) => tokens[at].Kind != TokenKind.Word ? 0 : tokens.Text(at) switch
    {
        "I" => 1,
        "II" => 2,
        "III" => 3,
        "IV" => 4,
        "V" => 5,
        "VI" => 6,
        "VII" => 7,
        "VIII" => 8,
        "IX" => 9,
        "X" => 10,
        "XI" => 11,
        "XII" => 12,
        _ => 0,
    };
}
