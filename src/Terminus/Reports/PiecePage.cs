namespace Terminus;

/// <summary>The page of one piece.</summary>
internal static class PiecePage
{
    internal static string Of(PieceDating dating) => PageFrame.Of(PieceTimeline.NameOf(dating), page => Fill(page, dating));

    private static void Fill(Markup page, PieceDating dating)
    {
        page.Element("div", dating.Piece.Id, "class", "id").Element("h1", dating.Piece.Title ?? dating.Piece.Id)
            .Element("p", Statement.Of(dating), "class", "say").Line();
        AddAnswers(page, dating);
        page.Element("h2", "Timeline").Raw(PieceTimeline.Of(dating));
        PageFrame.AddList(page, "Why, and what would change it", Statement.WhyReasons(dating).Select(ReasonText.Of));
        PageFrame.AddList(page, "What disagrees", dating.Dating.Disagreements.Select(d => ReasonText.Of(Statement.OfDisagreement(dating, d))));
        PageFrame.AddList(page, "Parts", dating.Parts.Select(PartText));
        AddEvidence(page, dating);
        PageFrame.AddList(page, "Remarks", Phrasing.Remarks(dating).Select(ReasonText.Of));
        PageFrame.AddList(page, "Problems in the description", dating.Problems.Select(p => p.Path + ": " + p.Message));
        PageFrame.AddList(page, "Cautions", Phrasing.Cautions(dating).Select(ReasonText.Of));
        PageFrame.AddFoot(page, dating);
    }

    private static void AddAnswers(Markup page, PieceDating dating)
    {
        MuseumDate record = Phrasing.MuseumDate(dating);
        page.Open("dl");
        AddTerm(page, "For a listing", Phrasing.ListingLine(dating));
        AddTerm(page, "For a record", record.Display);
        AddTerm(page, "Years to search by", (record.EarliestYear is { } year ? DateText.Digits(year) : "–") + " to " + DateText.Digits(record.LatestYear));
        AddTerm(page, "EDTF", record.Edtf ?? "–");
        AddTerm(page, "Over 100 years old", Words.Spaced(dating.OverHundredYears.Verdict));
        if (dating.Stated is { } claim)
        {
            AddTerm(page, "Stated " + claim.Stated.Text, Words.Spaced(claim.Verdict) + ". " + ReasonText.Of(ClaimReasons.Of(dating, claim)));
        }

        page.Close().Line();
    }

    private static void AddTerm(Markup page, string term, string text) => page.Element("dt", term).Element("dd", text);

    private static string PartText(PartDating part)
        => part.Part + ": " + WindowWords.Years(part.Interval)
            + (part.Likely is null ? "" : ", likely " + WindowWords.Years(part.Likely))
            + (part.Original ? "" : "; not original" + (part.Why is null ? "" : " (" + part.Why + ")") + ", left out of the whole");

    private static void AddEvidence(Markup page, PieceDating dating)
    {
        if (dating.Dating.Evidence.Count + dating.LeftOut.Count == 0)
        {
            return;
        }

        page.Element("h2", "Evidence").Open("ol").Line();
        foreach (Evidence item in dating.Dating.Evidence)
        {
            AddItem(page, dating, item, isLeftOut: false);
        }

        foreach (Evidence item in dating.LeftOut)
        {
            AddItem(page, dating, item, isLeftOut: true);
        }

        page.Close().Line();
    }

    private static void AddItem(Markup page, PieceDating dating, Evidence item, bool isLeftOut)
    {
        string[] reasons = [.. EvidenceReasons.Of(item, dating.Reference).Select(ReasonText.Of)];
        page.Open("li").Text((item.Part is null ? "" : item.Part + ": ") + string.Join(" ", reasons) + (isLeftOut ? " Left out of the whole." : ""));
        page.Open("ul", "class", "plain");
        foreach (StatedWindow window in item.StatedWindows(dating.Dating.Assumptions))
        {
            page.Element("li", WindowWords.Days(window.Window) + ", stated at " + WindowWords.Share(window.Confidence));
        }

        AddLine(page, "Source: ", EvidenceReasons.UnsaidSource(item, reasons));
        AddLine(page, "Reference: ", item.Entries.Count == 0 ? null : string.Join(", ", item.Entries));
        page.Close().Close().Line();
    }

    private static void AddLine(Markup page, string name, string? text)
    {
        if (text is not null)
        {
            page.Element("li", name + text);
        }
    }
}
