namespace Terminus;

/// <content>The lozenge of the British register of designs, as people describe it in words.</content>
internal sealed partial class InscriptionReader
{
    // How far behind "Rd" its lozenge may be named.
    private const int MostWordsBeforeLozenge = 6;

    private const char Lozenge = '\u25C7';

    private int CountLozenges()
    {
        int count = 0;
        for (int i = 0; i < tokens.Count; i++)
        {
            count += tokens[i].IsLetter(Lozenge) ? 1 : 0;
        }

        return count;
    }

    /// <summary>Reads <c>◇ Rd</c> and "Rd with letters in a lozenge: …" with what describes the letters, to the end of the line.</summary>
    private int ReadDiamond(int at)
    {
        ref readonly Token token = ref tokens[at];
        int last = LozengeBehind(at, token.Is(Terms.Rd) ? MostWordsBeforeLozenge : token.Is(Terms.Regd | Terms.Reg | Terms.Registry) ? 2 : 0);
        bool sign = token.IsLetter(Lozenge) && lozenges == 1;
        if (!sign && last < 0 && !(IsLozenge(at) && tokens[at + 1].Is(Terms.Reg)))
        {
            return at;
        }

        int end = Math.Max(last, at) + 1;
        while (IsOfDiamond(end))
        {
            end++;
        }

        group++;
        MarkDraft draft = Add(MarkKind.RegistryDiamond, at, end);
        draft.Wording = lexicon["mk.uk_diamond"];
        draft.Office = "GB";
        draft.Right = "registered-design";
        draft.Diamond = Corners(at, end);
        return end;
    }

    /// <summary>The last lozenge that is named on the line within so many words, or -1.</summary>
    private int LozengeBehind(int at, int reach)
    {
        int last = -1;
        for (int i = at + 1; i <= at + reach && tokens[i].Kind is not (TokenKind.Break or TokenKind.None); i++)
        {
            last = IsLozenge(i) ? i : last;
        }

        return last;
    }

    /// <summary>Whether a token is still of the line of a diamond, and no other statement.</summary>
    private bool IsOfDiamond(int at)
        => tokens[at].Kind is not (TokenKind.Break or TokenKind.None) && !TryClaimAt(at, out _)
            && (!lexicon.Phrases.TryLongest(tokens, at, out PhraseMatch phrase)
                || phrase.Wording.Id is "mk.uk_rd_number" or "mk.registered_word" or "mk.uk_diamond");

    /// <summary>The corners as described, each value beside the name of its corner: <c>R top, 13 right, 4 bottom, D left, class IV</c>.</summary>
    private RegistryDiamond? Corners(int from, int to)
    {
        var corners = new Dictionary<string, string>(StringComparer.Ordinal);
        for (int i = from; i < to; i++)
        {
            if (CornerName(i) is not { } name)
            {
                continue;
            }

            bool before = i > from && IsCornerValue(i - 1) && CornerName(i - 2) is null or "CLASS";
            int value = before ? i - 1 : SkipSoft(i + 1);
            if (value < to && IsCornerValue(value))
            {
                corners[name] = tokens.Text(value).ToString();
            }
        }

        string? Corner(string name) => corners.TryGetValue(name, out string? value) ? value : null;
        string? top = Corner("TOP");
        bool topIsClass = top is { Length: > 1 } && top[0] is 'I' or 'V' or 'X';
        return corners.Count == 0
            ? null
            : RegistryDiamond.FromCorners(topIsClass ? null : top, Corner("RIGHT"), Corner("BOTTOM"), Corner("LEFT"), Corner("CLASS") ?? (topIsClass ? top : null));
    }

    private static readonly string[] CornerNames = ["TOP", "RIGHT", "BOTTOM", "LEFT", "CLASS"];

    private string? CornerName(int at)
    {
        foreach (string name in CornerNames)
        {
            if (tokens.Text(at).SequenceEqual(name.AsSpan()))
            {
                return name;
            }
        }

        return null;
    }

    private bool IsCornerValue(int at)
    {
        ref readonly Token token = ref tokens[at];
        return token.IsDigits || (token.Kind == TokenKind.Word && token.Length <= 3 && tokens.Text(at) is not ("AT" or "IN" or "THE" or "AND")
            && (token.Length == 1 || token.First is 'I' or 'V' or 'X'));
    }

    private bool IsLozenge(int at) => tokens[at].IsLetter(Lozenge) || tokens.Text(at) is "LOZENGE" or "DIAMOND" or "RHOMBUS";
}
