namespace Terminus;

/// <summary>Makes the tokens of one run of letters and digits without a gap, such as <c>PAT'D</c>, <c>2,4?4</c>, <c>12K</c> or <c>P4T</c>.</summary>
internal readonly ref struct RunReader
{
    private readonly TokenList tokens;
    private readonly LetterTree words;
    private readonly Span<char> run;
    private readonly ReadOnlySpan<int> places;
    private readonly int textAt;
    private readonly bool doubtful;

    /// <param name="tokens">Where the tokens go, and in whose room the run stands.</param>
    /// <param name="length">The length of the run.</param>
    /// <param name="doubtful">Whether the finder marked characters of it as doubtful.</param>
    /// <param name="words">The words that are known.</param>
    internal RunReader(TokenList tokens, int length, bool doubtful, LetterTree words)
    {
        this.tokens = tokens;
        this.words = words;
        this.doubtful = doubtful;
        run = tokens.Room.Slice(0, length);
        places = tokens.Places.Slice(0, length + 1);
        textAt = tokens.Take(length);
    }

    /// <summary>Adds the tokens of the run.</summary>
    /// <param name="letters">How many letters it has.</param>
    /// <param name="digits">How many digits it has; the rest is lost.</param>
    /// <param name="visits">Counts the characters looked at.</param>
    internal void Read(int letters, int digits, ref int visits)
    {
        if (letters == 0)
        {
            Add(digits == 0 ? TokenKind.Lost : TokenKind.Digits, 0, run.Length, Meaning.None, doubtful);
        }
        else if (digits == 0)
        {
            AddWord(0, run.Length, ref visits, mayBeLost: letters < run.Length);
        }
        else if (!TryWord(letters, ref visits) && !TryDigits(letters, digits, ref visits))
        {
            AddPieces(ref visits);
        }
    }

    /// <summary>Letters and digits together are one word where the digits are worn letters.</summary>
    private bool TryWord(int letters, ref int visits)
    {
        bool repair = run.Length >= 3 && letters * 2 >= run.Length && run[0] is < '0' or > '9';
        int size = words.LongestStart(run, repair, out Meaning meaning, out bool repaired, ref visits);
        if (size < run.Length)
        {
            return false;
        }

        Add(TokenKind.Word, 0, run.Length, meaning, doubtful || repaired);
        return true;
    }

    /// <summary>They are one number where the letters are worn digits: I and O are the common slips, the others count only among more digits.</summary>
    private bool TryDigits(int letters, int digits, ref int visits)
    {
        const int longest = 24;
        if (run.Length > longest)
        {
            return false;
        }

        bool common = true;
        foreach (char c in run)
        {
            visits++;
            char digit = Fold.AsDigit(c);
            if (digit is not ((>= '0' and <= '9') or '?' or '*'))
            {
                return false;
            }

            common &= digit == c || c is 'I' or 'O' or 'L';
        }

        if (!common && !(digits >= 2 * letters && run.Length >= 3))
        {
            return false;
        }

        foreach (ref char c in run)
        {
            c = Fold.AsDigit(c);
        }

        Add(TokenKind.Digits, 0, run.Length, Meaning.None, true);
        return true;
    }

    private void AddPieces(ref int visits)
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
                Add(TokenKind.Digits, from, to, Meaning.None, doubtful);
            }
            else
            {
                AddWord(from, to, ref visits, mayBeLost: true);
            }

            from = to;
            digits = !digits;
        }
    }

    /// <summary>A lost character between letters and digits goes with the character before it.</summary>
    private static bool IsOfDigits(char c, bool before) => c is '?' or '*' ? before : c is >= '0' and <= '9';

    private void AddWord(int from, int to, ref int visits, bool mayBeLost)
    {
        ReadOnlySpan<char> word = run.Slice(from, to - from);
        if (mayBeLost && word.IndexOfAny('?', '*') >= 0)
        {
            AddWordWithLosses(from, to, ref visits);
            return;
        }

        int size = words.LongestStart(word, false, out Meaning meaning, out _, ref visits);
        if (size == word.Length || !TryJoined(from, to, size, meaning, ref visits))
        {
            Add(TokenKind.Word, from, to, size == word.Length ? meaning : Meaning.None, doubtful);
        }
    }

    private void AddWordWithLosses(int from, int to, ref int visits)
    {
        ReadOnlySpan<char> word = run.Slice(from, to - from);
        Meaning meaning = words.Matching(word, ref visits);
        if (!meaning.IsKnown)
        {
            // A question mark behind a word is a doubt of the finder and no letter.
            meaning = words.Find(word.TrimEnd('?'), ref visits);
        }

        Add(TokenKind.Word, from, to, meaning, true);
    }

    /// <summary>Known words that were stamped or typed without a space between them, such as <c>PATAPPLIEDFOR</c>.</summary>
    private bool TryJoined(int from, int to, int size, Meaning meaning, ref int visits)
    {
        const int longest = 40;
        if (to - from is < 3 or > longest || !MayStartJoined(meaning, size))
        {
            return false;
        }

        int count = tokens.Count;
        int at = from;
        while (true)
        {
            Add(TokenKind.Word, at, at + size, meaning, doubtful);
            at += size;
            if (at == to)
            {
                return true;
            }

            size = words.LongestStart(run.Slice(at, to - at), false, out meaning, out _, ref visits);
            if (size == 0 || !(size >= 3 || MayFollowJoined(meaning)))
            {
                tokens.CutTo(count);
                return false;
            }
        }
    }

    // Of a word with several meanings the first counts here.
    private static bool MayStartJoined(Meaning meaning, int size)
        => meaning.IsKnown && (meaning.Lexemes[0].Class == WordClass.Karat
            || (size >= 3 && meaning.First.Is(Terms.Patent | Terms.Made | Terms.Reg | Terms.Trade | Terms.Brevete | Terms.Rolled | Terms.Design | Terms.Gesetzlich))
            || meaning.Lexemes[0].Term[0] > '\u3000' || meaning.First.Is(Terms.Us));

    private static bool MayFollowJoined(Meaning meaning)
        => meaning.IsKnown && (meaning.First.Is(Terms.In | Terms.Us | Terms.No | Terms.Gf | Terms.Gp | Terms.Ge) || meaning.Lexemes[0].Term[0] > '\u3000');

    private void Add(TokenKind kind, int from, int to, Meaning meaning, bool isDoubtful)
        => tokens.Add(kind, places[from], places[to], textAt + from, to - from, meaning, isDoubtful);
}
