namespace Terminus;

/// <content>The marks that a claim makes.</content>
internal sealed partial class InscriptionReader
{
    private static readonly Reason NumberOfYear = new("marks.number-of-year");
    private static readonly Reason DesignWord = new("marks.design-word");

    private void Extend(int end) => drafts[drafts.Count - 1].End = EndOf(end);

    private MarkDraft AddClaimed(in Claim claim, MarkKind kind, int from, int end)
    {
        MarkDraft draft = Add(kind, from, end);
        draft.Office = claim.Office ?? "US";
        draft.IsOfficeAssumed = claim.Office is null;
        draft.Right = claim.Right(draft.Office);
        if (claim.SeveralOffices is { } offices)
        {
            draft.Because(new Reason("marks.several-offices", "offices", string.Join(", ", offices)));
        }

        return draft;
    }

    private int AddPending(in Claim claim, int from, int end)
    {
        bool design = claim.IsDesign && !IsMarkedInGroup();
        MarkDraft draft = AddClaimed(claim, design ? MarkKind.DesignPending : MarkKind.Pending, from, end);
        draft.Wording = design ? lexicon.DesignPending : lexicon.Pending;
        if (NumberBehindPending(end, out int behind) is not { } number)
        {
            return end;
        }

        draft.Number = number;
        Extend(behind);
        if (number.Year is not null && draft.IsOfficeAssumed)
        {
            draft.NameOffice("GB", "patent");
        }

        return behind;
    }

    private bool IsMarkedInGroup() => drafts.Count > 0 && drafts[drafts.Count - 1].Group == group;

    /// <summary>The number of the application, with its year: <c>PATENT APPLIED FOR No. 12345/46</c>.</summary>
    private StampedNumber? NumberBehindPending(int end, out int behind)
    {
        behind = end;
        int at = SkipSoft(end);
        bool explicitNumber = tokens[at].Is(Terms.No);
        at = explicitNumber ? SkipSoft(at + 1) : at;
        return (explicitNumber || tokens[at].IsDigits) && NumberGrammar.Read(tokens, at, out behind) is { } number
            && (explicitNumber || number.Year is not null)
            ? number
            : null;
    }

    private void AddDate(in Claim claim, in StampedDate date, int from, int end)
    {
        MarkDraft draft = AddClaimed(claim, MarkKind.PatentDate, from, end);
        draft.Date = date;
        if (claim.Names("US"))
        {
            // Of several countries it was the United States that asked for the date.
            draft.Office = "US";
            draft.Right = claim.Right("US");
        }
    }

    private void AddNumber(in Claim claim, StampedNumber number, int from, int end)
    {
        bool design = claim.IsDesign || number.Right == "design";
        MarkDraft draft = AddClaimed(claim, MarkKind.PatentNumber, from, end);
        draft.Number = number;
        if (number.Right == "reissue")
        {
            draft.Right = "reissue";
        }

        if (design)
        {
            draft.Kind = draft.Office == "US" ? MarkKind.DesignNumber : MarkKind.RegisteredDesign;
            draft.Right = draft.Office == "US" ? "design" : "registered-design";
        }
        else if (number.Year is not null && draft.IsOfficeAssumed)
        {
            draft.NameOffice("GB", "patent");
            draft.Because(NumberOfYear);
        }
    }

    private int AddWords(in Claim claim, int from, int end)
    {
        if (claim.IsProvisional)
        {
            MarkDraft pending = AddClaimed(claim, MarkKind.Pending, from, end);
            pending.NameOffice(claim.Office ?? "GB", "patent");
            pending.Wording = lexicon["mk.prov_pat"];
            return end;
        }

        int webEnd = WebAddress(end);
        MarkDraft draft = AddClaimed(claim, MarkKind.PatentWord, from, webEnd);
        if (webEnd > end)
        {
            draft.Wording = lexicon["mk.patent_web"];
        }

        if (claim.IsDesign)
        {
            draft.Because(DesignWord);
        }

        return webEnd;
    }

    /// <summary>The token behind a web address that starts at most three signs behind the word, or the token itself.</summary>
    private int WebAddress(int at)
    {
        int next = SkipSoft(at);
        if (!IsOfWeb(next))
        {
            return at;
        }

        while (tokens[next].Kind is not (TokenKind.Break or TokenKind.None) && (next == at || tokens[next].Joined || IsOfWeb(next)))
        {
            next++;
        }

        while (tokens[next].Joined)
        {
            next++;
        }

        return next;
    }

    private bool IsOfWeb(int at) => tokens.Text(at) is "WWW" or "HTTP" or "HTTPS";
}
