namespace Terminus;

/// <summary>
/// The grammar: goes once along the tokens of an inscription and takes at each the longest of a wording, a patent claim, a metal, a
/// number before its claim, a date, or nothing.
/// </summary>
internal sealed partial class InscriptionReader
{
    private readonly List<Token> tokens;
    private readonly Lexicon lexicon;
    private readonly List<MarkDraft> drafts = [];
    private readonly int lozenges;
    private int group;

    internal InscriptionReader(List<Token> tokens, Lexicon lexicon)
    {
        this.tokens = tokens;
        this.lexicon = lexicon;
        lozenges = tokens.Count(t => t.Text == Lozenge);
    }

    internal List<MarkDraft> Read()
    {
        int at = 0;
        while (at < tokens.Count)
        {
            int next = ReadAt(at);
            at = next > at ? next : at + 1;
        }

        AssumeOffices();
        return drafts;
    }

    /// <summary>Reads what starts at a token and returns the token behind it, or the token where nothing does.</summary>
    private int ReadAt(int at)
    {
        Token token = tokens[at];
        if (token.Kind is TokenKind.Break or TokenKind.Sign)
        {
            return at;
        }

        if (token.Kind == TokenKind.Word && token.Joined && at > 0 && tokens[at - 1].Kind == TokenKind.Digits && !token.Is(Term.Patent))
        {
            // The end of an ordinal or a measure.
            return at;
        }

        int end = ReadMetal(at);
        end = end > at ? end : ReadDiamond(at);
        if (end > at)
        {
            return end;
        }

        PhraseMatch? phrase = lexicon.Phrases.Longest(tokens, at);
        Claim? claim = ClaimAt(at);
        if (claim is not null && (phrase is null || claim.End > phrase.End || (claim.End == phrase.End && !claim.HasPatent)))
        {
            end = ReadClaim(claim);
        }

        if (end == at && phrase is not null)
        {
            end = ReadPhrase(at, phrase);
            end = end == at && claim is not null ? ReadClaim(claim) : end;
        }

        return end > at ? end : ReadBare(at);
    }

    private MarkDraft Add(MarkKind kind, int first, int end)
    {
        // A point right behind the last word belongs to it.
        int stop = end < tokens.Count && tokens[end].IsSign('.') && tokens[end].Joined ? tokens[end].End : tokens[end - 1].End;
        var draft = new MarkDraft(kind, tokens[first].Start, stop) { Group = group };
        drafts.Add(draft);
        return draft;
    }

    private int SkipSoft(int at, int most = 3)
    {
        int next = at;
        while (next < tokens.Count && next < at + most && tokens[next].IsSoft)
        {
            next++;
        }

        return next;
    }

    private bool Is(int at, string term) => at >= 0 && at < tokens.Count && tokens[at].Kind == TokenKind.Word && tokens[at].Is(term);

    private bool IsDigits(int at) => at < tokens.Count && tokens[at].Kind == TokenKind.Digits;

    /// <summary>
    /// English words without a country are taken for American ones, unless the thing says that it comes from elsewhere and gives
    /// neither a date nor a number.
    /// </summary>
    private void AssumeOffices()
    {
        string? origin = drafts.FirstOrDefault(d => d.Kind == MarkKind.Origin && d.Office is not null)?.Office;
        foreach (MarkDraft draft in drafts)
        {
            if (!draft.IsOfficeAssumed)
            {
                continue;
            }

            bool bare = draft.Date is null && draft.Number is null;
            if (origin is null or "US")
            {
                draft.Reasons.Add(new Reason("marks.office-assumed"));
            }
            else if (bare)
            {
                draft.Office = null;
                draft.IsOfficeAssumed = false;
                draft.Right = null;
                draft.Reasons.Add(new Reason("marks.office-open", "origin", origin));
            }
            else if (draft is { Number: not null, Right: "utility" })
            {
                // A maker at home in an English-speaking country means the office there; any other may mean that of the market.
                bool home = origin is "GB" or "CA" or "AU";
                draft.Office = home ? origin : draft.Office;
                draft.OtherOffice = home ? "US" : origin;
                draft.Right = home ? "patent" : draft.Right;
                draft.Reasons.Add(new Reason("marks.office-of-origin", "origin", origin, "taken", draft.Office!));
            }
            else
            {
                draft.Reasons.Add(new Reason("marks.office-assumed"));
            }
        }
    }
}
