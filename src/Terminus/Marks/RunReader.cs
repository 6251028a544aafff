namespace Terminus;

/// <summary>Makes the tokens of one run of letters and digits without a gap, such as <c>PAT'D</c>, <c>2,4?4</c>, <c>12K</c> or <c>P4T</c>.</summary>
internal readonly ref struct RunReader
{
    private readonly ReadOnlySpan<char> run;
    private readonly ReadOnlySpan<int> places;
    private readonly bool doubtful;
    private readonly LetterTree words;
    private readonly List<Token> tokens;

    internal RunReader(ReadOnlySpan<char> run, ReadOnlySpan<int> places, bool doubtful, LetterTree words, List<Token> tokens)
    {
        this.run = run;
        this.places = places;
        this.doubtful = doubtful;
        this.words = words;
        this.tokens = tokens;
    }

    /// <summary>Adds the tokens of the run.</summary>
    /// <param name="start">The position of the run in the text.</param>
    /// <param name="letters">How many letters it has.</param>
    /// <param name="digits">How many digits it has; the rest is lost.</param>
    /// <param name="visits">Counts the characters looked at.</param>
    internal void Read(int start, int letters, int digits, ref int visits)
    {
        if (letters == 0)
        {
            Add(digits == 0 ? TokenKind.Lost : TokenKind.Digits, 0, run.Length, run.ToString(), [], doubtful, start);
        }
        else if (digits == 0)
        {
            AddWord(0, run.Length, ref visits, start);
        }
        else if (!TryWord(letters, ref visits, start) && !TryDigits(letters, digits, ref visits, start))
        {
            AddPieces(ref visits, start);
        }
    }

    /// <summary>Letters and digits together are one word where the digits are worn letters.</summary>
    private bool TryWord(int letters, ref int visits, int start)
    {
        bool repair = run.Length >= 3 && letters * 2 >= run.Length && run[0] is < '0' or > '9';
        int size = words.LongestStart(run, repair, out Lexeme[] lexemes, out bool repaired, ref visits);
        if (size < run.Length)
        {
            return false;
        }

        Add(TokenKind.Word, 0, run.Length, run.ToString(), lexemes, doubtful || repaired, start);
        return true;
    }

    /// <summary>They are one number where the letters are worn digits: I and O are the common slips, the others count only among more digits.</summary>
    private bool TryDigits(int letters, int digits, ref int visits, int start)
    {
        const int longest = 24;
        if (run.Length > longest)
        {
            return false;
        }

        bool common = true;
        Span<char> asDigits = stackalloc char[longest];
        for (int i = 0; i < run.Length; i++)
        {
            visits++;
            asDigits[i] = Fold.AsDigit(run[i]);
            if (asDigits[i] is not ((>= '0' and <= '9') or '?' or '*'))
            {
                return false;
            }

            common &= asDigits[i] == run[i] || run[i] is 'I' or 'O' or 'L';
        }

        if (!common && !(digits >= 2 * letters && run.Length >= 3))
        {
            return false;
        }

        Add(TokenKind.Digits, 0, run.Length, asDigits.Slice(0, run.Length).ToString(), [], true, start);
        return true;
    }

    private void AddPieces(ref int visits, int start)
    {
        int from = 0;
        bool digits = IsOfDigits(run[0], before: true);
        while (from < run.Length)
        {
            int to = from + 1;
            while (to < run.Length && IsOfDigits(run[to], digits) == digits)
            {
                to++;
            }

            if (digits)
            {
                Add(TokenKind.Digits, from, to, run.Slice(from, to - from).ToString(), [], doubtful, start);
            }
            else
            {
                AddWord(from, to, ref visits, start);
            }

            from = to;
            digits = !digits;
        }
    }

    /// <summary>A lost character between letters and digits goes with the character before it.</summary>
    private static bool IsOfDigits(char c, bool before) => c is '?' or '*' ? before : c is >= '0' and <= '9';

    private void AddWord(int from, int to, ref int visits, int start)
    {
        ReadOnlySpan<char> word = run.Slice(from, to - from);
        if (word.IndexOfAny('?', '*') >= 0)
        {
            AddWordWithLosses(from, to, ref visits, start);
            return;
        }

        int size = words.LongestStart(word, false, out Lexeme[] lexemes, out _, ref visits);
        if (size == word.Length || !TryJoined(from, to, size, lexemes, ref visits, start))
        {
            Add(TokenKind.Word, from, to, word.ToString(), size == word.Length ? lexemes : [], doubtful, start);
        }
    }

    private void AddWordWithLosses(int from, int to, ref int visits, int start)
    {
        ReadOnlySpan<char> word = run.Slice(from, to - from);
        Lexeme[] lexemes = words.Match(word, ref visits);
        if (lexemes.Length == 0)
        {
            // A question mark behind a word is a doubt of the finder and no letter.
            lexemes = words.Find(word.TrimEnd('?'), ref visits);
        }

        Add(TokenKind.Word, from, to, word.ToString(), lexemes, true, start);
    }

    /// <summary>Known words that were stamped or typed without a space between them, such as <c>PATAPPLIEDFOR</c>.</summary>
    private bool TryJoined(int from, int to, int size, Lexeme[] lexemes, ref int visits, int start)
    {
        const int longest = 40;
        if (to - from is < 3 or > longest || !MayStartJoined(lexemes, size))
        {
            return false;
        }

        int count = tokens.Count;
        int at = from;
        while (true)
        {
            Add(TokenKind.Word, at, at + size, run.Slice(at, size).ToString(), lexemes, doubtful, start);
            at += size;
            if (at == to)
            {
                return true;
            }

            size = words.LongestStart(run.Slice(at, to - at), false, out lexemes, out _, ref visits);
            if (size == 0 || !(size >= 3 || MayFollowJoined(lexemes)))
            {
                tokens.RemoveRange(count, tokens.Count - count);
                return false;
            }
        }
    }

    private static bool MayStartJoined(Lexeme[] lexemes, int size)
        => lexemes.Length > 0 && (lexemes[0].Class == WordClass.Karat
            || (size >= 3 && lexemes[0].Term is Term.Patent or Term.Made or Term.Reg or "TRADE" or "BREVETE" or "ROLLED" or Term.Design or "GESETZLICH")
            || lexemes[0].Term[0] > '\u3000' || lexemes[0].Term == Term.Us);

    private static bool MayFollowJoined(Lexeme[] lexemes)
        => lexemes.Length > 0 && (lexemes[0].Term is Term.In or Term.Us or Term.No or "GF" or "GP" or "GE" || lexemes[0].Term[0] > '\u3000');

    private void Add(TokenKind kind, int from, int to, string text, Lexeme[] lexemes, bool isDoubtful, int start)
    {
        int first = from == 0 ? start : places[from];
        int end = to == run.Length ? places[to] : places[to];
        tokens.Add(new Token(kind, first, end, text, lexemes)
        {
            Joined = tokens.Count > 0 && tokens[tokens.Count - 1].End == first,
            Doubtful = isDoubtful,
        });
    }
}
