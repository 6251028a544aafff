namespace Terminus;

/// <summary>
/// The grammar: goes once along the tokens of an inscription and takes at each the longest of a wording, a patent claim, a metal, a
/// number before its claim, a date, or nothing.
/// </summary>
internal sealed partial class InscriptionReader
{
    // Longer texts are rare, and their lists are not kept.
    private const int LongestKept = 512;

    // A reader is used again for the next text of its thread, so that only answers are made anew.
    [ThreadStatic]
    private static InscriptionReader? idle;

    private readonly TokenList tokens = new();
    private readonly List<MarkDraft> drafts = [];
    private readonly Lexicon lexicon = Lexicon.BuiltIn;
    private int lozenges;
    private int group;

    // Whether words of a presentation stood before.
    private bool given;

    /// <summary>Reads a text into marks in its order, and counts how often a character was looked at.</summary>
    internal static Mark[] Read(string text, RegisterSet registers, out int visits)
    {
        InscriptionReader reader = idle ?? new InscriptionReader();
        idle = null;
        visits = reader.ReadDrafts(text);
        Mark[] marks = new Mark[reader.drafts.Count];
        for (int i = 0; i < marks.Length; i++)
        {
            marks[i] = new Mark(text, reader.drafts[i], registers);
        }

        reader.drafts.Clear();
        idle = text.Length <= LongestKept ? reader : null;
        return marks;
    }

    private int ReadDrafts(string text)
    {
        int visits = InscriptionScanner.Scan(text, lexicon.Words, tokens);
        visits += Acronyms.Join(tokens, lexicon.Words);
        (group, given, lozenges) = (0, false, CountLozenges());
        int at = 0;
        while (at < tokens.Count)
        {
            int next = ReadAt(at);
            at = next > at ? next : at + 1;
        }

        AssumeOffices();
        return visits;
    }

    /// <summary>Reads what starts at a token and returns the token behind it, or the token where nothing does.</summary>
    private int ReadAt(int at)
    {
        ref readonly Token token = ref tokens[at];
        if (token.Kind is TokenKind.Break or TokenKind.Sign)
        {
            return at;
        }

        if (token.Kind == TokenKind.Word && token.Joined && tokens[at - 1].IsDigits && !token.Is(Terms.Patent))
        {
            // The end of an ordinal or a measure.
            return at;
        }

        int end = token.IsDigits ? ReadMetal(at) : ReadDiamond(at);
        if (end > at)
        {
            return end;
        }

        bool worded = lexicon.Phrases.TryLongest(tokens, at, out PhraseMatch phrase);
        bool claimed = TryClaimAt(at, out Claim claim);
        if (claimed && (!worded || claim.End > phrase.End || (claim.End == phrase.End && !claim.HasPatent)))
        {
            end = ReadClaim(claim);
        }

        if (end == at && worded)
        {
            end = ReadPhrase(at, phrase);
            end = end == at && claimed ? ReadClaim(claim) : end;
        }

        return end > at ? end : ReadBare(at);
    }

    private MarkDraft Add(MarkKind kind, int first, int end)
    {
        var draft = new MarkDraft(kind, tokens[first].Start, EndOf(end)) { Group = group };
        drafts.Add(draft);
        return draft;
    }

    // A point right behind the last word belongs to it.
    private int EndOf(int end) => tokens[end] is { Joined: true, Kind: TokenKind.Sign, First: '.' } point ? point.End : tokens[end - 1].End;

    private int SkipSoft(int at, int most = 3) => tokens.SkipSoft(at, most);
}
