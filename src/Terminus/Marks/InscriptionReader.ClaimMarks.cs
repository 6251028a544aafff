namespace Terminus;

/// <content>The marks that a claim makes.</content>
internal sealed partial class InscriptionReader
{
    private void Extend(int end) => drafts[drafts.Count - 1].End = end < tokens.Count && tokens[end].IsSign('.') && tokens[end].Joined
        ? tokens[end].End
        : tokens[end - 1].End;

    private MarkDraft AddClaimed(Claim claim, MarkKind kind, int from, int end)
    {
        MarkDraft draft = Add(kind, from, end);
        draft.Office = claim.Office ?? "US";
        draft.IsOfficeAssumed = claim.Office is null;
        draft.Right = claim.Right(draft.Office);
        if (claim.Offices.Count > 1)
        {
            draft.Reasons.Add(new Reason("marks.several-offices", "offices", string.Join(", ", claim.Offices)));
        }

        return draft;
    }

    private int AddPending(Claim claim, int from, int end)
    {
        bool design = claim.IsDesign && drafts.All(d => d.Group != group);
        MarkDraft draft = AddClaimed(claim, design ? MarkKind.DesignPending : MarkKind.Pending, from, end);
        draft.Wording = lexicon[design ? "mk.us_design_pending" : "mk.us_pending"];
        if (NumberBehindPending(end, out int behind) is { } number)
        {
            draft.Number = number;
            Extend(behind);
            if (number.Year is not null && draft.IsOfficeAssumed)
            {
                draft.Office = "GB";
                draft.Right = "patent";
                draft.IsOfficeAssumed = false;
            }

            return behind;
        }

        return end;
    }

    /// <summary>The number of the application, with its year: <c>PATENT APPLIED FOR No. 12345/46</c>.</summary>
    private StampedNumber? NumberBehindPending(int end, out int behind)
    {
        behind = end;
        int at = SkipSoft(end);
        bool explicitNumber = Is(at, Term.No);
        at = explicitNumber ? SkipSoft(at + 1) : at;
        return at < tokens.Count && (explicitNumber || IsDigits(at)) && NumberGrammar.Read(tokens, at, out behind) is { } number
            && (explicitNumber || number.Year is not null)
            ? number
            : null;
    }

    private void AddDate(Claim claim, StampedDate date, int from, int end)
    {
        MarkDraft draft = AddClaimed(claim, MarkKind.PatentDate, from, end);
        draft.Date = date;
        if (claim.Offices.Contains("US"))
        {
            // Of several countries it was the United States that asked for the date.
            draft.Office = "US";
            draft.Right = claim.Right("US");
        }
    }

    private void AddNumber(Claim claim, StampedNumber number, int from, int end)
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
            draft.Office = "GB";
            draft.Right = "patent";
            draft.IsOfficeAssumed = false;
            draft.Reasons.Add(new Reason("marks.number-of-year"));
        }
    }

    private int AddWords(Claim claim, int from, int end)
    {
        if (claim.IsProvisional)
        {
            MarkDraft pending = AddClaimed(claim, MarkKind.Pending, from, end);
            pending.Office = claim.Office ?? "GB";
            pending.Right = "patent";
            pending.IsOfficeAssumed = false;
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
            draft.Reasons.Add(new Reason("marks.design-word"));
        }

        return webEnd;
    }

    /// <summary>The token behind a web address that starts at most three signs behind the word, or the token itself.</summary>
    private int WebAddress(int at)
    {
        int next = SkipSoft(at);
        if (next >= tokens.Count || tokens[next].Text is not ("WWW" or "HTTP" or "HTTPS"))
        {
            return at;
        }

        while (next < tokens.Count && tokens[next].Kind != TokenKind.Break && (next == at || tokens[next].Joined || tokens[next].Text is "WWW" or "HTTP" or "HTTPS"))
        {
            next++;
        }

        while (next < tokens.Count && tokens[next].Joined)
        {
            next++;
        }

        return next;
    }
}
