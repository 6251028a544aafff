namespace Terminus;

/// <summary>The page of many pieces.</summary>
internal static class InventoryPage
{
    // A picture of more rows than this is no longer looked at, and the table holds them all.
    private const int MostDrawn = 200;

    private const string NotBefore = "Not before";

    // The style of the column that a narrow screen leaves out.
    private const string Wide = "wide";

    // Sorts the rows by a column's keys, numbers as numbers; rows without a key stay last either way. It has no ampersand and no less-than, so that
    // the page is well-formed XML.
    private const string Script =
        "document.querySelectorAll('th button').forEach(function(button,column){button.addEventListener('click',function(){"
        + "var head=button.parentNode,table=head.closest('table'),body=table.tBodies[0];"
        + "var down=head.getAttribute('aria-sort')==='ascending';"
        + "table.querySelectorAll('th').forEach(function(other){other.removeAttribute('aria-sort')});"
        + "head.setAttribute('aria-sort',down?'descending':'ascending');"
        + "var key=function(row){return row.cells[column].dataset.key};"
        + "var compare=function(a,b){var x=key(a),y=key(b);"
        + "if(x===y)return 0;if(x==='')return 1;if(y==='')return -1;"
        + "var order=isNaN(x)||isNaN(y)?x.localeCompare(y,'en',{numeric:true}):x-y;return down?-order:order};"
        + "Array.from(body.rows).sort(compare).forEach(function(row){body.appendChild(row)});"
        + "document.getElementById('sorted').textContent='Sorted by '+button.textContent+(down?', descending':', ascending')})});";

    internal static string Of(IReadOnlyList<PieceDating> datings, IReadOnlyList<string> notDated)
        => PageFrame.Of("Inventory", page => Fill(page, datings, notDated), Script);

    private static void Fill(Markup page, IReadOnlyList<PieceDating> datings, IReadOnlyList<string> notDated)
    {
        page.Element("h1", "Inventory").Element("p", InventoryTimeline.Summary(datings), "class", "say").Line();
        AddTable(page, datings);
        AddNotDated(page, notDated);
        page.Element("h2", "Timeline");
        if (datings.Count > MostDrawn)
        {
            page.Element("p", $"The first {DateText.Digits(MostDrawn)} pieces of {DateText.Digits(datings.Count)}.", "class", "quiet");
        }

        page.Raw(InventoryTimeline.Of([.. datings.Take(MostDrawn)]));
        page.Element("p", ReasonText.Of(new Reason("caution.opinion")), "class", "quiet");
        if (datings.Count > 0)
        {
            PageFrame.AddFoot(page, datings[0]);
        }
    }

    private static void AddTable(Markup page, IReadOnlyList<PieceDating> datings)
    {
        string level = datings.Count == 0 ? "Interval" : Statement.Capital(Likelihood.Of(datings[0].Confidence));
        page.Element("p", "", "id", "sorted", "role", "status", "class", "quiet");
        page.Open("table").Element("caption", "Press a heading to sort by it.").Open("thead").Open("tr");
        foreach (string heading in new[] { "Piece", level, "Likely", NotBefore, "Evidence" })
        {
            string? style = heading == NotBefore ? Wide : null;
            page.Open("th", "scope", "col", "class", style).Element("button", heading, "type", "button").Close();
        }

        page.Close().Close().Line().Open("tbody").Line();
        foreach (PieceDating dating in datings)
        {
            AddRow(page, dating);
        }

        page.Close().Close().Line();
    }

    private static void AddNotDated(Markup page, IReadOnlyList<string> notDated)
    {
        if (notDated.Count == 0)
        {
            return;
        }

        page.Element("h2", "Not dated").Open("ul").Line();
        foreach (string said in notDated)
        {
            page.Element("li", said).Line();
        }

        page.Close().Line();
    }

    private static void AddRow(Markup page, PieceDating dating)
    {
        page.Open("tr").Open("td", "data-key", dating.Piece.Id)
            .Element("strong", dating.Piece.Id).Text(dating.Piece.Title is { } title ? " " + title : "")
            .Open("details").Element("summary", "Statement", "aria-label", "Statement of " + dating.Piece.Id)
            .Text(Statement.Of(dating)).Close();
        foreach (DocumentProblem problem in dating.Problems)
        {
            page.Element("p", "Problem: " + problem.Message, "class", "quiet");
        }

        page.Close();
        AddCell(page, Key(dating.Interval), Years(dating, dating.Interval));
        AddCell(page, Key(dating.Likely), Years(dating, dating.Likely));
        int start = dating.Dating.Possible?.FirstDay ?? DayNumber.Open;
        AddCell(page, start == DayNumber.Open ? "" : DateText.Digits(start), start == DayNumber.Open ? "–" : DateText.YearOf(start), Wide);
        AddVerdict(page, dating);
        page.Close().Line();
    }

    private static void AddVerdict(Markup page, PieceDating dating)
    {
        if (dating.Dating.Evidence.Count == 0)
        {
            AddCell(page, "", "none");
            return;
        }

        bool disagrees = InventoryTimeline.Disagrees(dating);
        string verdict = dating.Dating.Qualified ? "contradicts itself" : disagrees ? "disagrees" : "agrees";
        AddCell(page, disagrees ? "1" : "0", verdict, disagrees ? "no" : null);
    }

    private static void AddCell(Markup page, string key, string text, string? style = null)
        => page.Element("td", text, "data-key", key, "class", style);

    private static string Years(PieceDating dating, DatedInterval? interval) => dating.Dating.Qualified ? "in doubt" : WindowWords.Years(interval);

    // By the first day; of an answer without a start, by its last.
    private static string Key(DatedInterval? interval)
        => interval is null or { IsAnyDate: true } ? ""
            : DateText.Digits(interval.Window.FirstDay == DayNumber.Open ? interval.Window.LastDay : interval.Window.FirstDay);
}
