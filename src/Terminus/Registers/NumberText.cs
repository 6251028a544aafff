namespace Terminus;

/// <summary>Reads a number as people type it: <c>2,474,442</c>, <c>D 123,4?6</c>, <c>No. 10811 of 1897</c>, <c>…98</c>.</summary>
internal static class NumberText
{
    /// <summary>Reads the text; false where it is not a number.</summary>
    /// <remarks>
    /// Letters, points and number signs before the digits are passed over; commas, points, apostrophes and spaces between digits too.
    /// A year follows a stroke or the word "of" and has two digits (52 to 99 and 00 to 51 give 1852 to 1951) or four.
    /// </remarks>
    internal static bool TryRead(string text, out NumberPattern pattern)
    {
        pattern = NumberPattern.None;
        int at = 0;
        bool isNamed = false;
        while (at < text.Length && !IsDigit(text[at]) && text[at] is not ('*' or '…') && !IsDots(text, at))
        {
            // A dash stands behind a letter, as in D-123456; one without is a minus, and no number of a register has that.
            isNamed |= char.IsLetter(text[at]);
            if (!char.IsLetter(text[at]) && text[at] is not (' ' or '.' or '#' or ':' or '°' or 'º' or '№') && !(isNamed && text[at] == '-'))
            {
                return false;
            }

            at++;
        }

        bool isOpen = PassOpening(text, ref at);
        string digits = Digits(text, ref at);
        return TryYear(text, ref at, out int? year)
            && IsKind(text, at)
            && NumberPattern.TryCreate(digits, isOpen, year, out pattern);
    }

    private static bool IsDigit(char c) => c is (>= '0' and <= '9') or '?';

    private static bool IsDots(string text, int at) => string.CompareOrdinal(text, at, "...", 0, 3) == 0;

    private static bool PassOpening(string text, ref int at)
    {
        int start = at;
        while (at < text.Length && (text[at] is '*' or '…' || IsDots(text, at)))
        {
            at += IsDots(text, at) ? 3 : 1;
        }

        while (at < text.Length && text[at] is ',' or ' ')
        {
            at++;
        }

        return at > start;
    }

    private static string Digits(string text, ref int at)
    {
        var digits = new System.Text.StringBuilder();
        while (at < text.Length)
        {
            if (IsDigit(text[at]))
            {
                digits.Append(text[at]);
            }
            else if (text[at] is not (',' or '.' or '\'' or '’' or ' ' or '\u00A0') || at + 1 >= text.Length || !IsDigit(text[at + 1]))
            {
                break;
            }

            at++;
        }

        return digits.ToString();
    }

    private static bool TryYear(string text, ref int at, out int? year)
    {
        year = null;
        int start = at;
        PassSpaces(text, ref start);
        if (start < text.Length && text[start] == '/')
        {
            start++;
        }
        else if (string.Compare(text, start, "of", 0, 2, StringComparison.OrdinalIgnoreCase) == 0)
        {
            start += 2;
        }
        else
        {
            return true;
        }

        PassSpaces(text, ref start);
        int end = start;
        int value = 0;
        for (; end < text.Length && text[end] is >= '0' and <= '9' && end - start < 5; end++)
        {
            value = (value * 10) + (text[end] - '0');
        }

        at = end;
        year = end - start == 4 ? value : value >= 52 ? 1800 + value : 1900 + value;
        return end - start is 2 or 4;
    }

    // What may stand behind a number: nothing, or the code of a kind of document (A, B1).
    private static bool IsKind(string text, int at)
    {
        PassSpaces(text, ref at);
        int rest = text.Length - at;
        return rest == 0
            || (char.IsLetter(text[at]) && (rest == 1 || (rest == 2 && text[at + 1] is >= '0' and <= '9')));
    }

    private static void PassSpaces(string text, ref int at)
    {
        while (at < text.Length && text[at] is ' ' or '.')
        {
            at++;
        }
    }
}
