namespace Terminus;

/// <content>Fixed wordings with what belongs to them.</content>
internal sealed partial class InscriptionReader
{
    // How far behind a claim of copyright its year may stand, with the owner's name between.
    private const int MostOwnerWords = 6;

    private static readonly Reason NumberOfUnknownRight = new("marks.number-of-unknown-right");

    private int ReadPhrase(int at, in PhraseMatch phrase)
    {
        if (IsBareFineness(at, phrase) && !MayBeFineness(at, phrase.End))
        {
            return at;
        }

        return phrase.Wording.Takes switch
        {
            WordingTakes.Number => ReadNumbers(at, phrase, needed: false),
            WordingTakes.NumberAlways => ReadNumbers(at, phrase, needed: true),
            WordingTakes.Year => ReadCopyright(at, phrase),
            _ => ReadPlain(at, phrase),
        };
    }

    private int ReadPlain(int at, in PhraseMatch phrase)
    {
        int end = phrase.Wording.Takes == WordingTakes.Karat ? MeasureBehind(phrase.End) : phrase.End;
        group++;
        AddPhrase(at, phrase, end);
        return end;
    }

    private MarkDraft AddPhrase(int from, in PhraseMatch phrase, int end)
    {
        MarkDraft draft = Add(phrase.Wording.Kind, from, end);
        draft.Wording = phrase.Wording;
        draft.Office = phrase.Wording.Office ?? phrase.Country;
        draft.Right = phrase.Wording.Right;
        return draft;
    }

    /// <summary>A wording and the numbers behind it, one mark for each number.</summary>
    private int ReadNumbers(int at, in PhraseMatch phrase, bool needed)
    {
        int end = phrase.End;
        bool named = tokens[end - 1].Is(Terms.No) || needed;
        int first = drafts.Count;
        int from = at;
        int next = SkipNumberSigns(end);
        if (NumberGrammar.Read(tokens, next, out int behind) is { } number
            && IsNumberOfWording(number, named || tokens[next - 1].Is(Terms.No) || tokens[next - 2].Is(Terms.No), phrase, next))
        {
            group++;
            AddNumberOfWording(from, phrase, number, behind);
            end = behind;
            while (NextOfList(end, out int start, out behind) is { } another)
            {
                AddNumberOfWording(start, phrase, another, behind);
                end = behind;
            }
        }
        else if (phrase.Wording.Kind == MarkKind.PatentWord && DateBehind(end, out behind) is { } date)
        {
            group++;
            MarkDraft draft = AddPhrase(from, phrase, behind);
            draft.Kind = MarkKind.PatentDate;
            draft.Date = date;
            end = behind;
        }
        else if (needed)
        {
            return at;
        }
        else
        {
            group++;
            AddPhrase(from, phrase, end);
        }

        return drafts.Count > first ? end : at;
    }

    private StampedDate? DateBehind(int end, out int behind)
    {
        int at = SkipSoft(end);
        at = tokens[at].Is(Terms.Dated) ? SkipSoft(at + 1) : at;
        return DateAt(at, out behind) ?? DateGrammar.YearAlone(tokens, at, out behind);
    }

    private void AddNumberOfWording(int from, in PhraseMatch phrase, StampedNumber number, int end)
    {
        MarkDraft draft = AddPhrase(from, phrase, end);
        draft.Number = number;
        if (draft.Kind == MarkKind.PatentWord)
        {
            draft.Kind = MarkKind.PatentNumber;
        }
        else if (draft.Kind == MarkKind.Protected)
        {
            draft.Because(NumberOfUnknownRight);
        }
    }

    /// <summary>Another number of a list, such as the second of <c>12345, 12346 &amp; 12347</c>.</summary>
    private StampedNumber? NextOfList(int end, out int start, out int behind)
    {
        start = SkipSoft(end);
        if (tokens[start].Is(Terms.And | Terms.Also) || tokens[start].IsLetter('+'))
        {
            start = SkipSoft(start + 1);
        }

        behind = end;
        return tokens[start].IsDigits && NumberGrammar.Read(tokens, start, out behind) is { Digits.Length: >= 5 } number ? number : null;
    }

    private int SkipNumberSigns(int at)
    {
        int next = SkipSoft(at);
        while (IsNumberSign(next))
        {
            next = SkipSoft(next + 1);
        }

        return next;
    }

    private bool IsNumberSign(int at)
    {
        ref readonly Token token = ref tokens[at];
        return token.Is(Terms.No) || token.IsSign('#') || token.IsLetter('+') || token.IsLetter('\u271A')
            || (token.IsLetter('N') && tokens[SkipSoft(at + 1)].IsDigits);
    }

    private bool IsNumberOfWording(StampedNumber number, bool named, in PhraseMatch phrase, int at)
    {
        bool lineBreak = tokens[at - 1].Kind == TokenKind.Break;
        int least = named ? 1 : lineBreak ? 4 : 3;
        bool word = phrase.Wording.Id is "mk.registered_word" or "mk.german_ges_gesch" or "mk.french_brevete" or "mk.brevet" or "mk.reg_us_pat_off";
        return number.Digits.Length >= (word && least < 4 && !named ? 4 : least) && number.Digits.Length <= 10
            && !(number.LooksLikeYear && !named && phrase.Wording.Kind is MarkKind.TradeMark or MarkKind.Protected or MarkKind.PatentWord);
    }

    /// <summary>A claim of copyright and its year, which may stand behind the owner's name.</summary>
    private int ReadCopyright(int at, in PhraseMatch phrase)
    {
        group++;
        for (int i = phrase.End; i < tokens.Count && i < phrase.End + MostOwnerWords; i++)
        {
            if (tokens[i].Kind == TokenKind.Break && i > phrase.End)
            {
                break;
            }

            if ((DateGrammar.YearAlone(tokens, i, out int end) ?? RomanYear(i, out end)) is { } year)
            {
                AddPhrase(at, phrase, end).Date = year;
                return end;
            }

            if (tokens[i].IsDigits || (i > phrase.End && (TryClaimAt(i, out _) || lexicon.Phrases.TryLongest(tokens, i, out _))))
            {
                break;
            }
        }

        AddPhrase(at, phrase, phrase.End);
        return phrase.End;
    }

    /// <summary>A year in Roman numerals of at least four letters, such as <c>MCMLIV</c>.</summary>
    private StampedDate? RomanYear(int at, out int end)
    {
        end = at + 1;
        ReadOnlySpan<char> text = tokens.Text(at);
        if (tokens[at].Kind != TokenKind.Word || text.Length is < 4 or > 15 || text[0] != 'M')
        {
            return null;
        }

        int total = 0;
        int before = 0;
        for (int i = text.Length - 1; i >= 0; i--)
        {
            int value = text[i] switch { 'M' => 1000, 'D' => 500, 'C' => 100, 'L' => 50, 'X' => 10, 'V' => 5, 'I' => 1, _ => 0 };
            if (value == 0)
            {
                return null;
            }

            total += value < before ? -value : value;
            before = Math.Max(before, value);
        }

        return total is >= 1700 and <= 2099 ? new StampedDate(new DigitPattern(DateText.Digits(total).AsSpan()), 0) : null;
    }
}
