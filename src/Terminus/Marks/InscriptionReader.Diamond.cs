namespace Terminus;

/// <content>The lozenge of the British register of designs, as people describe it in words.</content>
internal sealed partial class InscriptionReader
{
    // How far behind "Rd" its lozenge may be named.
    private const int MostWordsBeforeLozenge = 6;

    private const string Lozenge = "\u25C7";

    /// <summary>Reads <c>◇ Rd</c> and "Rd with letters in a lozenge: …" with what describes the letters, to the end of the line.</summary>
    private int ReadDiamond(int at)
    {
        Token token = tokens[at];
        bool sign = token.Text == Lozenge && tokens.Count(t => t.Text == Lozenge) == 1;
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
        return end;
    }

    private static bool IsLozenge(Token token)
        => token.Kind == TokenKind.Word && token.Text is "LOZENGE" or "DIAMOND" or "RHOMBUS" or Lozenge;
}
