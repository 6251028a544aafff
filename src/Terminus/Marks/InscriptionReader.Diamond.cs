namespace Terminus;

/// <content>The lozenge of the British register of designs, as people describe it in words.</content>
internal sealed partial class InscriptionReader
{
    // How far behind "Rd" its lozenge may be named.
    private const int MostWordsBeforeLozenge = 6;

    private static readonly string[] CornerNames = ["TOP", "RIGHT", "BOTTOM", "LEFT", "CLASS"];

    private const string Lozenge = "\u25C7";

    /// <summary>Reads <c>◇ Rd</c> and "Rd with letters in a lozenge: …" with what describes the letters, to the end of the line.</summary>
    private int ReadDiamond(int at)
    {
        Token token = tokens[at];
        bool sign = token.Text == Lozenge && lozenges == 1;
        int reach = token.Is("RD") ? MostWordsBeforeLozenge : token.Is("REGD") || token.Is(Term.Reg) || token.Is("REGISTRY") ? 2 : 0;
        int last = -1;
        for (int i = at + 1; i < tokens.Count && i <= at + reach && tokens[i].Kind != TokenKind.Break; i++)
        {
            last = IsLozenge(tokens[i]) ? i : last;
        }

        if (!sign && last < 0 && !(IsLozenge(token) && Is(at + 1, Term.Reg)))
        {
            return at;
        }

        int end = Math.Max(last, at) + 1;
        while (end < tokens.Count && tokens[end].Kind != TokenKind.Break && ClaimAt(end) is null
            && lexicon.Phrases.Longest(tokens, end) is null or { Wording.Id: "mk.uk_rd_number" or "mk.registered_word" or "mk.uk_diamond" })
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

    /// <summary>The corners as described, each value beside the name of its corner: <c>R top, 13 right, 4 bottom, D left, class IV</c>.</summary>
    private RegistryDiamond? Corners(int from, int to)
    {
        var corners = new Dictionary<string, string>(StringComparer.Ordinal);
        for (int i = from; i < to; i++)
        {
            if (Array.IndexOf(CornerNames, tokens[i].Text) < 0)
            {
                continue;
            }

            int value = i > from && IsCornerValue(i - 1) && (i < 2 || Array.IndexOf(CornerNames, tokens[i - 2].Text) < 0 || tokens[i - 2].Text == "CLASS")
                ? i - 1
                : SkipSoft(i + 1);
            if (value < to && IsCornerValue(value))
            {
                corners[tokens[i].Text] = tokens[value].Text;
            }
        }

        string? Corner(string name) => corners.TryGetValue(name, out string? value) ? value : null;
        string? top = Corner("TOP");
        bool topIsClass = top is { Length: > 1 } && top[0] is 'I' or 'V' or 'X';
        return corners.Count == 0
            ? null
            : RegistryDiamond.FromCorners(topIsClass ? null : top, Corner("RIGHT"), Corner("BOTTOM"), Corner("LEFT"), Corner("CLASS") ?? (topIsClass ? top : null));
    }

    private bool IsCornerValue(int at)
        => at < tokens.Count && (tokens[at].Kind == TokenKind.Digits || (tokens[at].Kind == TokenKind.Word && tokens[at].Text.Length is 1 or 2 or 3 && tokens[at].Text is not ("AT" or "IN" or "THE" or "AND")
            && (tokens[at].Text.Length == 1 || tokens[at].Text[0] is 'I' or 'V' or 'X')));

    private static bool IsLozenge(Token token)
        => token.Kind == TokenKind.Word && token.Text is "LOZENGE" or "DIAMOND" or "RHOMBUS" or Lozenge;
}
