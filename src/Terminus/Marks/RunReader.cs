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

    internal void Read(int start, ref int visits)
    {
        int letters = 0;
        int digits = 0;
        foreach (char c in run)
        {
            visits++;
            digits += c is >= '0' and <= '9' ? 1 : 0;
            letters += c is (>= '0' and <= '9') or '?' or '*' ? 0 : 1;
        }

        if (letters == 0)
        {
            Add(digits == 0 ? TokenKind.Lost : TokenKind.Digits, 0, run.Length, run.ToString(), [], doubtful, start);
        }
        else if (digits == 0)
        {
            AddWord(0, run.Length, ref visits, start);
        }
        else if (!TryWhole(letters, digits, ref visits, start))
        {
            AddPieces(ref visits, start);
        }
    }

    /// <summary>Letters and digits together are one word or one number where one of the two is a worn form of the other.</summary>
    private bool TryWhole(int letters, int digits, ref int visits, int start)
    {
        Lexeme[] lexemes = words.Find(run, ref visits);
        if (lexemes.Length > 0)
        {
            Add(TokenKind.Word, 0, run.Length, run.ToString(), lexemes, doubtful, start);
            return true;
        }

        if (run.Length > 24)
        {
            return false;
        }

        if (run.Length >= 3 && letters * 2 >= run.Length && run[0] is < '0' or > '9')
        {
            Span<char> asWord = stackalloc char[run.Length];
            for (int i = 0; i < run.Length; i++)
            {
                asWord[i] = Fold.AsLetter(run[i]);
            }

            int unused = 0;
            lexemes = words.Find(asWord, ref unused);
            if (lexemes.Length > 0)
            {
                Add(TokenKind.Word, 0, run.Length, asWord.ToString(), lexemes, true, start);
                return true;
            }
        }

        // I and O are the common slips; the others only among more digits.
        bool common = true;
        bool any = true;
        Span<char> asDigits = stackalloc char[run.Length];
        for (int i = 0; i < run.Length; i++)
        {
            asDigits[i] = Fold.AsDigit(run[i]);
            any &= asDigits[i] is (>= '0' and <= '9') or '?' or '*';
            common &= asDigits[i] == run[i] || run[i] is 'I' or 'O' or 'L';
        }

        if (any && (common || (digits >= 2 * letters && run.Length >= 3)))
        {
            Add(TokenKind.Digits, 0, run.Length, asDigits.ToString(), [], true, start);
            return true;
        }

        return false;
    }

    private void AddPieces(ref int visits, int start)
    {
        int from = 0;
        while (from < run.Length)
        {
            bool digits = IsOfDigits(run[from], from);
            int to = from + 1;
            while (to < run.Length && IsOfDigits(run[to], to) == digits)
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
        }
    }

    /// <summary>A lost character between letters and digits goes with the character before it.</summary>
    private bool IsOfDigits(char c, int index)
    {
        while (c is '?' or '*' && index > 0)
        {
            c = run[--index];
        }

        return c is (>= '0' and <= '9') or '?' or '*';
    }

    private void AddWord(int from, int to, ref int visits, int start)
    {
        ReadOnlySpan<char> word = run.Slice(from, to - from);
        if (word.IndexOfAny('?', '*') >= 0)
        {
            AddWordWithLosses(from, to, ref visits, start);
            return;
        }

        Lexeme[] lexemes = words.Find(word, ref visits);
        if (lexemes.Length > 0 || !TryJoined(from, to, ref visits, start))
        {
            Add(TokenKind.Word, from, to, word.ToString(), lexemes, doubtful, start);
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
    private bool TryJoined(int from, int to, ref int visits, int start)
    {
        const int longest = 40;
        if (to - from is < 3 or > longest)
        {
            return false;
        }

        int count = tokens.Count;
        int at = from;
        while (at < to)
        {
            int size = words.LongestStart(run.Slice(at, to - at), out Lexeme[] lexemes, ref visits);
            bool first = at == from;
            if (size == 0 || !(first ? MayStartJoined(lexemes, size) : size >= 3 || MayFollowJoined(lexemes)))
            {
                tokens.RemoveRange(count, tokens.Count - count);
                return false;
            }

            Add(TokenKind.Word, at, at + size, run.Slice(at, size).ToString(), lexemes, doubtful, start);
            at += size;
        }

        return true;
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
