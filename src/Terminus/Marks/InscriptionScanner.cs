namespace Terminus;

/// <summary>
/// Cuts an inscription into words, digits, signs and line ends, in one pass: folded, with worn letters put right where a known word
/// results, and with lost characters kept as such.
/// </summary>
internal ref struct InscriptionScanner
{
    // The longest bracket of the kind "[illegible]" that is looked for.
    private const int LongestBracket = 16;

    // The most doubtful letters that a bracket is taken to hold.
    private const int MostDoubtful = 4;

    private readonly ReadOnlySpan<char> text;
    private readonly LetterTree words;
    private readonly TokenList tokens;

    // The run of letters and digits at hand, folded, and where each of its characters stands in the text.
    private Span<char> run;
    private Span<int> places;
    private int length;
    private int letters;
    private int digits;
    private bool doubtful;
    private int position;
    private int visits;
    private int atHand;
    private char charAtHand;

    private InscriptionScanner(string text, LetterTree words, TokenList tokens)
    {
        this.text = text.AsSpan();
        this.words = words;
        this.tokens = tokens;
        atHand = -1;
    }

    /// <summary>Fills a list with the tokens of a text, and says how many times a character of it was looked at.</summary>
    internal static int Scan(string text, LetterTree words, TokenList tokens)
    {
        tokens.Clear(text.Length);
        var scanner = new InscriptionScanner(text, words, tokens);
        scanner.ScanAll();
        tokens.Close();
        return scanner.visits;
    }

    private void ScanAll()
    {
        while (position < text.Length)
        {
            char c = At(position);
            if (IsRunStart(c))
            {
                ScanRun();
            }
            else if (c == ' ')
            {
                position++;
            }
            else if (c is '\n' or '\r')
            {
                tokens.Add(TokenKind.Break, position, position + 1, '\n', Meaning.None);
                position++;
            }
            else if (c is '/' or '|' or '\\')
            {
                ScanSlash();
            }
            else if (char.IsWhiteSpace(c) || c == Fold.Nothing)
            {
                position++;
            }
            else
            {
                ScanSign(c);
            }
        }
    }

    /// <summary>The folded character at a position; the one at hand is kept, so asking for it again is no second look.</summary>
    private char At(int index)
    {
        if (index != atHand)
        {
            visits++;
            atHand = index;
            charAtHand = Fold.Of(text[index]);
        }

        return charAtHand;
    }

    private static bool IsDigit(char c) => c is >= '0' and <= '9';

    private static bool IsLetter(char c) => c is >= 'A' and <= 'Z' || (c >= 0x80 && (char.IsLetter(c) || c == '\u2116'));

    private static bool IsAlphanumeric(char c) => IsDigit(c) || IsLetter(c);

    private static bool IsRunStart(char c) => IsAlphanumeric(c) || c is '?' or '[';

    /// <summary>A slash between two digits is a sign of a date, a fraction or a year; any other is the end of a line.</summary>
    private void ScanSlash()
    {
        bool tight = position > 0 && position + 1 < text.Length
            && IsDigit(At(position - 1)) && At(position + 1) is (>= '0' and <= '9') or '?';
        tokens.Add(tight ? TokenKind.Sign : TokenKind.Break, position, position + 1, '/', Meaning.None);
        position++;
    }

    private void ScanSign(char c)
    {
        // Signs that are words of their own: the patent cross, the lozenge, the signs of copyright and registration, the ampersand.
        if (c is '+' or '\u271A' or '\u25C7' or '\u00A9' or '\u00AE' or '&' or '\u2117' or '\u2122')
        {
            AddSignWord(c, 1);
        }
        else if (c == '(' && position + 2 < text.Length && At(position + 2) == ')' && At(position + 1) is var inner && inner is 'C' or 'R')
        {
            AddSignWord(inner == 'C' ? '\u00A9' : '\u00AE', 3);
        }
        else
        {
            tokens.Add(TokenKind.Sign, position, position + 1, c, Meaning.None);
            position++;
        }
    }

    private void AddSignWord(char sign, int size)
    {
        int unused = 0;
        ReadOnlySpan<char> word = [sign];
        tokens.Add(TokenKind.Word, position, position + size, sign, words.Find(word, ref unused));
        position += size;
    }

    private void ScanRun()
    {
        int start = position;
        run = tokens.Room;
        places = tokens.Places;
        length = 0;
        letters = 0;
        digits = 0;
        doubtful = false;
        while (position < text.Length && TryExtend())
        {
        }

        if (length == 0)
        {
            // A bracket that is neither a loss nor a doubtful letter.
            position = start + 1;
            tokens.Add(TokenKind.Sign, start, position, text[start], Meaning.None);
            return;
        }

        // Where a run starts is where its bracket does.
        places[0] = start;
        places[length] = position;
        new RunReader(tokens, length, doubtful, words).Read(letters, digits, ref visits);
    }

    /// <summary>Takes the next character into the run, or says that the run ends before it.</summary>
    private bool TryExtend()
    {
        char c = At(position);
        if (IsAlphanumeric(c) || c == '?')
        {
            Take(c, position);
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
            Take('?', position);
            position++;
            return true;
        }

        if (c == '\u2026' && inside && IsAlphanumeric(At(position + 1)))
        {
            Take('*', position);
            position++;
            return true;
        }

        return false;
    }

    private void Take(char c, int place)
    {
        places[length] = place;
        run[length++] = c;
        if (IsDigit(c))
        {
            digits++;
        }
        else if (c is not ('?' or '*'))
        {
            letters++;
        }
    }

    /// <summary><c>[?]</c> and <c>[4]</c> are one character each, <c>[...]</c> and <c>[illegible]</c> are any number of lost ones.</summary>
    private bool TryBracket()
    {
        int close = position + 1;
        int known = 0;
        int lost = 0;
        while (close < text.Length && close <= position + LongestBracket && At(close) is var c && c is not (']' or '['))
        {
            known += IsAlphanumeric(c) ? 1 : 0;
            lost += c == '?' ? 1 : 0;
            close++;
        }

        if (close >= text.Length || text[close] != ']')
        {
            return false;
        }

        int size = close - position - 1;
        if (known > 0 && known == size && size <= MostDoubtful)
        {
            doubtful = true;
            for (int i = position + 1; i < close; i++)
            {
                Take(At(i), i == position + 1 ? position : i);
            }
        }
        else if (known > 0 && !StartsWithLoss(position + 1, close))
        {
            return false;
        }
        else if (lost > 0 && lost == size)
        {
            for (int i = 0; i < lost; i++)
            {
                Take('?', position + i);
            }
        }
        else
        {
            Take('*', position);
        }

        position = close + 1;
        return true;
    }

    private bool StartsWithLoss(int from, int to)
    {
        visits += to - from;
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
