namespace Terminus;

/// <content>Fixed wordings with what belongs to them, and metals.</content>
internal sealed partial class InscriptionReader
{
    // How far behind a claim of copyright its year may stand, with the owner's name between.
    private const int MostOwnerWords = 6;

    private int ReadPhrase(int at, PhraseMatch phrase)
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

    private int ReadPlain(int at, PhraseMatch phrase)
    {
        int end = phrase.Wording.Takes == WordingTakes.Karat ? MeasureBehind(phrase.End) : phrase.End;
        group++;
        AddPhrase(at, phrase, end);
        return end;
    }

    /// <summary>The token behind the measure that follows a metal (<c>GOLD FILLED 1/20 12K</c>), unless it belongs to another metal.</summary>
    private int MeasureBehind(int at)
    {
        int next = SkipSoft(at);
        int end = next;
        bool measured = IsDigits(next) && (TryFraction(ref end) | TryKarat(ref end));
        int behind = SkipSoft(end);
        return measured && (behind >= tokens.Count || lexicon.Phrases.Longest(tokens, behind) is not { Wording.Kind: MarkKind.Metal }) ? end : at;
    }

    private MarkDraft AddPhrase(int from, PhraseMatch phrase, int end)
    {
        MarkDraft draft = Add(phrase.Wording.Kind, from, end);
        draft.Wording = phrase.Wording;
        draft.Office = phrase.Wording.Office ?? phrase.Country;
        draft.Right = phrase.Wording.Right;
        return draft;
    }

    /// <summary>A wording and the numbers behind it, one mark for each number.</summary>
    private int ReadNumbers(int at, PhraseMatch phrase, bool needed)
    {
        int end = phrase.End;
        bool named = tokens[end - 1].Is(Term.No) || needed;
        int first = drafts.Count;
        int from = at;
        int next = SkipNumberSigns(end);
        if (next < tokens.Count && NumberGrammar.Read(tokens, next, out int behind) is { } number
            && IsNumberOfWording(number, named || Is(next - 1, Term.No) || Is(next - 2, Term.No), phrase, next))
        {
            group++;
            AddNumberOfWording(from, phrase, number, behind);
            end = behind;
            while (NextOfList(end, out int start, out number!, out behind))
            {
                AddNumberOfWording(start, phrase, number, behind);
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
        at = Is(at, Term.Dated) ? SkipSoft(at + 1) : at;
        return DateAt(at, out behind) ?? (at < tokens.Count ? DateGrammar.YearAlone(tokens, at, out behind) : null);
    }

    private void AddNumberOfWording(int from, PhraseMatch phrase, StampedNumber number, int end)
    {
        MarkDraft draft = AddPhrase(from, phrase, end);
        draft.Number = number;
        if (draft.Kind == MarkKind.PatentWord)
        {
            draft.Kind = MarkKind.PatentNumber;
        }
        else if (draft.Kind == MarkKind.Protected)
        {
            draft.Reasons.Add(new Reason("marks.number-of-unknown-right"));
        }
    }

    private bool NextOfList(int end, out int start, out StampedNumber number, out int behind)
    {
        start = SkipSoft(end);
        if (Is(start, Term.And) || Is(start, Term.Also) || (start < tokens.Count && tokens[start].Text == "+"))
        {
            start = SkipSoft(start + 1);
        }

        behind = end;
        number = start < tokens.Count && IsDigits(start) ? NumberGrammar.Read(tokens, start, out behind)! : null!;
        return number is not null && number.Digits.Length >= 5;
    }

    private int SkipNumberSigns(int at)
    {
        int next = SkipSoft(at);
        while (next < tokens.Count && (Is(next, Term.No) || tokens[next].IsSign('#') || tokens[next].Text is "+" or "\u271A" || (tokens[next].Text == "N" && IsDigits(SkipSoft(next + 1)))))
        {
            next = SkipSoft(next + 1);
        }

        return next;
    }

    private bool IsNumberOfWording(StampedNumber number, bool named, PhraseMatch phrase, int at)
    {
        bool lineBreak = tokens[at - 1].Kind == TokenKind.Break;
        int least = named ? 1 : lineBreak ? 4 : 3;
        bool word = phrase.Wording.Id is "mk.registered_word" or "mk.german_ges_gesch" or "mk.french_brevete" or "mk.brevet" or "mk.reg_us_pat_off";
        return number.Digits.Length >= (word && least < 4 && !named ? 4 : least) && number.Digits.Length <= 10
            && !(number.LooksLikeYear && !named && phrase.Wording.Kind is MarkKind.TradeMark or MarkKind.Protected or MarkKind.PatentWord);
    }

    /// <summary>A claim of copyright and its year, which may stand behind the owner's name.</summary>
    private int ReadCopyright(int at, PhraseMatch phrase)
    {
        group++;
        for (int i = phrase.End; i < tokens.Count && i < phrase.End + MostOwnerWords; i++)
        {
            if (tokens[i].Kind == TokenKind.Break && i > phrase.End)
            {
                break;
            }

            if (DateGrammar.YearAlone(tokens, i, out int end) is { } year || RomanYear(i, out year, out end))
            {
                MarkDraft draft = AddPhrase(at, phrase, end);
                draft.Date = year;
                return end;
            }

            if (tokens[i].Kind == TokenKind.Digits || (i > phrase.End && (ClaimAt(i) is not null || lexicon.Phrases.Longest(tokens, i) is not null)))
            {
                break;
            }
        }

        AddPhrase(at, phrase, phrase.End);
        return phrase.End;
    }

    /// <summary>A year in Roman numerals of at least four letters, such as <c>MCMLIV</c>.</summary>
    private bool RomanYear(int at, out StampedDate year, out int end)
    {
        year = null!;
        end = at + 1;
        string text = tokens[at].Text;
        if (tokens[at].Kind != TokenKind.Word || text.Length is < 4 or > 15 || text[0] != 'M')
        {
            return false;
        }

        int total = 0;
        int before = 0;
        for (int i = text.Length - 1; i >= 0; i--)
        {
            int value = text[i] switch { 'M' => 1000, 'D' => 500, 'C' => 100, 'L' => 50, 'X' => 10, 'V' => 5, 'I' => 1, _ => 0 };
            if (value == 0)
            {
                return false;
            }

            total += value < before ? -value : value;
            before = Math.Max(before, value);
        }

        year = new StampedDate(DateText.Digits(total), 0, string.Empty);
        return total is >= 1700 and <= 2099;
    }

    /// <summary>Whether the wording is digits alone, other than 925, which could be a model number.</summary>
    private bool IsBareFineness(int at, PhraseMatch phrase)
        => phrase.Wording.Kind == MarkKind.Metal && phrase.End == at + 1 && tokens[at].Kind == TokenKind.Digits;

    private bool MayBeFineness(int at, int end)
    {
        bool number = at > 0 && (Is(at - 1, Term.No) || Is(at - 2, Term.No) || tokens[at - 1].IsSign('#') || tokens[at - 1].IsSign('/') || tokens[at - 1].IsSign(','));
        bool joined = end < tokens.Count && (tokens[end].IsSign('/') || tokens[end].IsSign('-') || (tokens[end].Joined && tokens[end].Kind != TokenKind.Sign && tokens[end].Kind != TokenKind.Break));
        bool lineStarts = at == 0 || tokens[at - 1].Kind == TokenKind.Break || tokens[at - 1].IsSign('.');
        bool lineEnds = end == tokens.Count || tokens[end].Kind == TokenKind.Break || tokens[end].IsSign('.');
        bool alone = lineStarts && lineEnds && drafts.Count <= 3 && drafts.All(d => d.Kind == MarkKind.Origin);
        bool behindMark = lineEnds && !lineStarts && drafts.Count > 0 && drafts[drafts.Count - 1] is { Kind: MarkKind.Origin or MarkKind.Metal } last
            && tokens[at].Start - last.End <= 2;
        return !number && !joined && (tokens[at].Text == "925" || alone || behindMark);
    }

    /// <summary>A measure of gold with its metal: <c>1/20 12K G.F.</c>, <c>14 KT</c>, <c>1/40 R.G.P.</c></summary>
    private int ReadMetal(int at)
    {
        if (!IsDigits(at) || (at > 0 && tokens[at - 1].IsSign('/')))
        {
            return at;
        }

        int next = at;
        bool fraction = TryFraction(ref next);
        bool karat = TryKarat(ref next);
        int fractionBehind = SkipSoft(next);
        if (karat && !fraction && IsDigits(fractionBehind) && TryFraction(ref fractionBehind))
        {
            next = fractionBehind;
        }

        if (!fraction && !karat)
        {
            return at;
        }

        int behind = SkipSoft(next);
        PhraseMatch? metal = behind < tokens.Count ? lexicon.Phrases.Longest(tokens, behind) : null;
        bool named = metal is { Wording.Kind: MarkKind.Metal } && metal.Wording.Id is not ("mk.sterling_us" or "mk.us_time_guarantee" or "mk.fineness_925")
            && tokens[behind].Kind == TokenKind.Word;
        if (!karat && !named)
        {
            return at;
        }

        group++;
        MarkDraft draft;
        if (named)
        {
            int end = metal!.End;
            int again = SkipSoft(end);
            if (again < tokens.Count && metal.Wording.Id == "mk.gold_solid" && lexicon.Phrases.Longest(tokens, again) is { Wording.Takes: WordingTakes.Karat } more)
            {
                metal = more;
                end = more.End;
            }

            draft = AddPhrase(at, metal, end);
            next = end;
        }
        else
        {
            draft = Add(MarkKind.Metal, at, next);
            draft.Wording = lexicon["mk.gold_solid"];
            draft.Right = "gold";
        }

        return next;
    }

    private bool TryFraction(ref int next)
    {
        if (next + 2 >= tokens.Count || tokens[next].Text.Length > 2 || !(tokens[next + 1].IsSign('/') || tokens[next + 1].IsSign('-'))
            || !IsDigits(next + 2) || tokens[next + 2].Text.Length > 3)
        {
            return false;
        }

        int behind = next + 3;
        if (behind < tokens.Count && tokens[behind].Text == "TH" && tokens[behind].Joined)
        {
            behind++;
        }

        next = behind;
        return true;
    }

    private bool TryKarat(ref int next)
    {
        int digits = SkipSoft(next);
        if (!IsDigits(digits) || tokens[digits].Text.Length > 2 || DigitPattern.HasLosses(tokens[digits].Text))
        {
            return false;
        }

        int fineness = int.Parse(tokens[digits].Text, System.Globalization.CultureInfo.InvariantCulture);
        int word = SkipSoft(digits + 1, 1);
        if (!Is(word, Term.Karat) || fineness is < 6 or > 24)
        {
            return false;
        }

        next = word + 1;
        return true;
    }
}
