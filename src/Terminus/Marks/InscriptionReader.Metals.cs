namespace Terminus;

/// <content>Metals with their measures and finenesses.</content>
internal sealed partial class InscriptionReader
{
    /// <summary>The token behind the measure that follows a metal (<c>GOLD FILLED 1/20 12K</c>), unless it belongs to another metal.</summary>
    private int MeasureBehind(int at)
    {
        int next = SkipSoft(at);
        int end = next;
        bool measured = tokens[next].IsDigits && (TryFraction(ref end) | TryKarat(ref end));
        return measured && !(IsMetal(SkipSoft(end), out PhraseMatch other) && other.Wording.Takes == WordingTakes.Karat) ? end : at;
    }

    /// <summary>Whether the wording is digits alone, other than 925, which could be a model number.</summary>
    private bool IsBareFineness(int at, in PhraseMatch phrase)
        => phrase.Wording.Kind == MarkKind.Metal && phrase.End == at + 1 && tokens[at].IsDigits;

    private bool IsMetal(int at, out PhraseMatch metal)
        => lexicon.Phrases.TryLongest(tokens, at, out metal) && metal.Wording.Kind == MarkKind.Metal;

    private bool MayBeFineness(int at, int end)
    {
        ref readonly Token before = ref tokens[at - 1];
        ref readonly Token behind = ref tokens[end];
        bool number = before.Is(Terms.No) || tokens[at - 2].Is(Terms.No) || before.IsSign('#') || before.IsSign('/') || before.IsSign(',');
        bool joined = behind.IsSign('/') || behind.IsSign('-') || (behind.Joined && behind.Kind is not (TokenKind.Sign or TokenKind.Break));
        if (number || joined)
        {
            return false;
        }

        bool lineStarts = before.Kind is TokenKind.None or TokenKind.Break || before.IsSign('.');
        bool lineEnds = behind.Kind is TokenKind.None or TokenKind.Break || behind.IsSign('.');
        return tokens.Text(at) is "925" || (lineEnds && (lineStarts ? HasOriginsAlone() : IsBehindMark(at)));
    }

    private bool HasOriginsAlone()
    {
        const int most = 3;
        foreach (MarkDraft draft in drafts)
        {
            if (draft.Kind != MarkKind.Origin)
            {
                return false;
            }
        }

        return drafts.Count <= most;
    }

    private bool IsBehindMark(int at)
        => drafts.Count > 0 && drafts[drafts.Count - 1] is { Kind: MarkKind.Origin or MarkKind.Metal } last && tokens[at].Start - last.End <= 2;

    /// <summary>A measure of gold with its metal: <c>1/20 12K G.F.</c>, <c>14 KT</c>, <c>1/40 R.G.P.</c></summary>
    private int ReadMetal(int at)
    {
        if (tokens[at - 1].IsSign('/'))
        {
            return at;
        }

        int next = at;
        bool fraction = TryFraction(ref next);
        bool karat = TryKarat(ref next);
        int fractionBehind = SkipSoft(next);
        if (karat && !fraction && tokens[fractionBehind].IsDigits && TryFraction(ref fractionBehind))
        {
            next = fractionBehind;
        }

        if (!fraction && !karat)
        {
            return at;
        }

        int behind = SkipSoft(next);
        bool named = IsMetal(behind, out PhraseMatch metal) && tokens[behind].Kind == TokenKind.Word
            && metal.Wording.Id is not ("mk.sterling_us" or "mk.us_time_guarantee" or "mk.fineness_925");
        if (!karat && !named)
        {
            return at;
        }

        group++;
        if (!named)
        {
            MarkDraft draft = Add(MarkKind.Metal, at, next);
            draft.Wording = lexicon["mk.gold_solid"];
            draft.Right = "gold";
            return next;
        }

        if (metal.Wording.Id == "mk.gold_solid"
            && lexicon.Phrases.TryLongest(tokens, SkipSoft(metal.End), out PhraseMatch more) && more.Wording.Takes == WordingTakes.Karat)
        {
            metal = more;
        }

        AddPhrase(at, metal, metal.End);
        return metal.End;
    }

    private bool TryFraction(ref int next)
    {
        if (tokens[next].Length > 2 || !(tokens[next + 1].IsSign('/') || tokens[next + 1].IsSign('-')) || tokens[next + 2] is not { IsDigits: true, Length: <= 3 })
        {
            return false;
        }

        next += 3;
        if (tokens[next].Joined && tokens.Text(next) is "TH")
        {
            next++;
        }

        return true;
    }

    private bool TryKarat(ref int next)
    {
        int digits = SkipSoft(next);
        int word = SkipSoft(digits + 1, 1);
        if (!tokens[word].Is(Terms.K) || tokens[digits] is not { IsDigits: true, Length: <= 2 } || !IsKarat(tokens.Digits(digits)))
        {
            return false;
        }

        next = word + 1;
        return true;
    }

    private static bool IsKarat(DigitPattern digits) => !digits.HasLosses && digits.Next(6, 24) > 0;
}
