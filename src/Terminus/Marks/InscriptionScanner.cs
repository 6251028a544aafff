namespace Terminus;

/// <summary>
/// Cuts an inscription into words, digits, signs and line ends, in one pass: folded, with worn letters put right where a known word
/// results, and with lost characters kept as such.
/// </summary>
internal ref struct InscriptionScanner
{
    // The longest bracket of the kind "[illegible]" that is looked for.
    private const int LongestBracket = 16;

    private readonly ReadOnlySpan<char> text;
    private readonly LetterTree words;
    private readonly List<Token> tokens;

    // The run of letters and digits at hand, folded, and where each of its characters stands in the text.
    private readonly Span<char> run;
    private readonly Span<int> places;
    private int length;
    private bool doubtful;
    private int position;

    private InscriptionScanner(string text, LetterTree words)
    {
        this.text = text.AsSpan();
        this.words = words;
        tokens = new List<Token>((text.Length / 4) + 4);
        run = new char[text.Length];
        places = new int[text.Length + 1];
    }

    private int visits;

    /// <summary>The pieces of a text, and how many times a character of it was looked at.</summary>
    internal static List<Token> Scan(string text, LetterTree words, out int visits)
    {
        var scanner = new InscriptionScanner(text, words);
        scanner.ScanAll();
        visits = scanner.visits;
        return scanner.tokens;
    }

    private void ScanAll()
    {
        while (position < text.Length)
        {
            char c = At(position);
            if (c is '\n' or '\r')
            {
                Add(TokenKind.Break, position, position + 1, "\n", []);
                position++;
            }
            else if (char.IsWhiteSpace(c) || c == Fold.Nothing)
            {
                position++;
            }
            else if (c is '/' or '|' or '\\')
            {
                ScanSlash();
            }
            else if (IsRunStart(c))
            {
                ScanRun();
            }
            else
            {
                ScanSign(c);
            }
        }
    }

    private char At(int index)
    {
        visits++;
        return Fold.Of(text[index]);
    }

    private static bool IsDigit(char c) => c is >= '0' and <= '9';

    private static bool IsLetter(char c) => c is >= 'A' and <= 'Z' || (c >= 0x80 && (char.IsLetter(c) || c == '\u2116'));

    private static bool IsAlphanumeric(char c) => IsDigit(c) || IsLetter(c);

    private static bool IsRunStart(char c) => IsAlphanumeric(c) || c is '?' or '[';

    private void Add(TokenKind kind, int start, int end, string itsText, Lexeme[] lexemes, bool isDoubtful = false)
        => tokens.Add(new Token(kind, start, end, itsText, lexemes)
        {
            Joined = tokens.Count > 0 && tokens[tokens.Count - 1].End == start,
            Doubtful = isDoubtful,
        });

    /// <summary>A slash between two digits is a sign of a date, a fraction or a year; any other is the end of a line.</summary>
    private void ScanSlash()
    {
        bool tight = position > 0 && position + 1 < text.Length
            && IsDigit(Fold.Of(text[position - 1])) && (IsDigit(At(position + 1)) || Fold.Of(text[position + 1]) == '?');
        Add(tight ? TokenKind.Sign : TokenKind.Break, position, position + 1, "/", []);
        position++;
    }

    private void ScanSign(char c)
    {
        // Signs that are words of their own: the patent cross, the lozenge, the signs of copyright and registration, the ampersand.
        bool isWord = c is '+' or '\u271A' or '\u25C7' or '\u00A9' or '\u00AE' or '&' or '\u2117' or '\u2122';
        if (isWord)
        {
            int unused = 0;
            string sign = c.ToString();
            Add(TokenKind.Word, position, position + 1, sign, words.Find(sign.AsSpan(), ref unused));
        }
        else if (c == '(' && position + 2 < text.Length && At(position + 2) == ')' && At(position + 1) is 'C' or 'R')
        {
            int unused = 0;
            string sign = Fold.Of(text[position + 1]) == 'C' ? "\u00A9" : "\u00AE";
            Add(TokenKind.Word, position, position + 3, sign, words.Find(sign.AsSpan(), ref unused));
            position += 2;
        }
        else
        {
            Add(TokenKind.Sign, position, position + 1, c.ToString(), []);
        }

        position++;
    }

    private void ScanRun()
    {
        int start = position;
        length = 0;
        doubtful = false;
        while (position < text.Length && TryExtend())
        {
        }

        if (length == 0)
        {
            // A bracket that is neither a loss nor a doubtful letter.
            position = start + 1;
            Add(TokenKind.Sign, start, position, text[start].ToString(), []);
            return;
        }

        places[length] = position;
        new RunReader(run.Slice(0, length), places.Slice(0, length + 1), doubtful, words, tokens).Read(start, ref visits);
    }

    /// <summary>Takes the next character into the run, or says that the run ends before it.</summary>
    private bool TryExtend()
    {
        char c = At(position);
        if (IsAlphanumeric(c) || c == '?')
        {
            Take(c);
            position++;
            return true;
        }

        if (c == Fold.Nothing)
        {
            position++;
            return true;
        }

        if (c == '[')
        {
            return TryBracket();
        }

        bool inside = length > 0 && position + 1 < text.Length;
        if (c == '\'' && inside && IsLetter(run[length - 1]) && IsLetter(At(position + 1)))
        {
            position++;
            return true;
        }

        if (c is '*' or '_' or '#' && inside && IsAlphanumeric(At(position + 1)))
        {
            Take('?');
            position++;
            return true;
        }

        if (c == '\u2026' && inside && IsAlphanumeric(At(position + 1)))
        {
            Take('*');
            position++;
            return true;
        }

        return false;
    }

    private void Take(char c)
    {
        places[length] = position;
        run[length++] = c;
    }

    /// <summary><c>[?]</c> and <c>[4]</c> are one character each, <c>[...]</c> and <c>[illegible]</c> are any number of lost ones.</summary>
    private bool TryBracket()
    {
        int close = -1;
        bool known = false;
        int lost = 0;
        for (int i = position + 1; i < text.Length && i <= position + LongestBracket; i++)
        {
            char c = At(i);
            if (c == ']')
            {
                close = i;
                break;
            }

            known |= IsAlphanumeric(c);
            lost += c == '?' ? 1 : 0;
        }

        if (close < 0)
        {
            return false;
        }

        int size = close - position - 1;
        if (known && size <= 4 && IsAllAlphanumeric(position + 1, close))
        {
            doubtful = true;
            for (int i = position + 1; i < close; i++)
            {
                places[length] = i == position + 1 ? position : i;
                run[length++] = Fold.Of(text[i]);
            }
        }
        else if (!known || IsWordOfLoss(position + 1, close))
        {
            if (lost > 0 && lost == size)
            {
                for (int i = 0; i < lost; i++)
                {
                    places[length] = position + i;
                    run[length++] = '?';
                }
            }
            else
            {
                Take('*');
            }
        }
        else
        {
            return false;
        }

        position = close + 1;
        return true;
    }

    private readonly bool IsAllAlphanumeric(int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if (!IsAlphanumeric(Fold.Of(text[i])))
            {
                return false;
            }
        }

        return true;
    }

    private readonly bool IsWordOfLoss(int from, int to)
    {
        foreach (string word in LossWords)
        {
            if (to - from >= word.Length && text.Slice(from, word.Length).Equals(word.AsSpan(), StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    private static readonly string[] LossWords = ["illeg", "lost", "worn", "missing", "unclear", "gone", "rubbed", "erased", "unread", "obscured"];
}
