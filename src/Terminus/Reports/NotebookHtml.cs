namespace Terminus;

/// <summary>
/// What the library answers as fragments of HTML, for a notebook's cell. The package registers them with the notebook that loads it; a
/// program can put them into a page of its own.
/// </summary>
/// <remarks>The look is no promise. A fragment is well-formed XML, fetches nothing and has no script.</remarks>
public static class NotebookHtml
{
    // A cell that holds more rows than this is no longer read; a page of all is HtmlPage.
    private const int MostRows = 100;

    /// <summary>The types that <see cref="Of"/> shows; a value of a derived or implementing type is shown too.</summary>
    public static IReadOnlyList<Type> Types { get; } = ValueList.Of(
    [
        typeof(PieceDating), typeof(IEnumerable<PieceDating>), typeof(Dating), typeof(Piece), typeof(Inscription), typeof(NumberReading), typeof(SightingEstimate),
    ]);

    /// <summary>A value of one of <see cref="Types"/> as HTML; the text of any other value.</summary>
    /// <param name="value">The value.</param>
    public static string Of(object value)
    {
        var html = new Markup();
        html.Open("div");
        switch (Guard.NotNull(value, nameof(value)))
        {
            case PieceDating dating: AddDating(html, dating); break;
            case IEnumerable<PieceDating> datings: AddInventory(html, [.. datings]); break;
            case Dating dating: AddEvidence(html, dating, ReferenceSet.Empty); break;
            case Piece piece: html.Element("pre", piece.ToJson()); break;
            case Inscription inscription: AddInscription(html, inscription); break;
            case NumberReading number: AddNumber(html, number); break;
            case SightingEstimate estimate: AddEstimate(html, estimate); break;
            default: html.Text(value.ToString() ?? ""); break;
        }

        return html.Close().ToString();
    }

    private static void AddDating(Markup html, PieceDating dating)
    {
        html.Open("p").Element("strong", dating.Piece.Id).Text(dating.Piece.Title is { } title ? " " + title : "").Close();
        html.Element("p", Statement.Of(dating)).Raw(Timeline.ToSvg(dating));
        AddEvidence(html, dating.Dating, dating.Reference);
        AddList(html, dating.Problems.Select(p => p.Path + ": " + p.Message));
    }

    private static void AddInventory(Markup html, List<PieceDating> datings)
    {
        AddTable(
            html,
            ["Piece", "Title", "Interval", "Likely", "Stated"],
            datings.Take(MostRows).Select(d => new[]
            {
                d.Piece.Id, d.Piece.Title ?? "", Interval(d, d.Interval), Interval(d, d.Likely),
                d.Stated is { } claim ? claim.Stated.Text + ": " + Words.Spaced(claim.Verdict) : "",
            }));
        if (datings.Count > MostRows)
        {
            html.Element("p", $"The first {DateText.Digits(MostRows)} pieces of {DateText.Digits(datings.Count)}.");
        }
    }

    private static void AddEvidence(Markup html, Dating dating, ReferenceSet reference)
    {
        if (reference == ReferenceSet.Empty)
        {
            html.Element("p", dating.Qualified ? "The evidence contradicts itself." : Interval(dating.Interval(PieceDating.UsualConfidence)));
        }

        AddTable(
            html,
            ["Part", "Evidence", "States"],
            dating.Evidence.Select(item => new[]
            {
                item.Part ?? "", string.Join(" ", EvidenceReasons.Of(item, reference).Select(ReasonText.Of)), Windows(item.StatedWindows(dating.Assumptions)),
            }));
    }

    private static void AddInscription(Markup html, Inscription inscription)
    {
        AddTable(
            html,
            ["Text", "Mark", "Number or date", "States"],
            inscription.Marks.Select(mark => new[] { mark.Text, mark.KindName, mark.Number ?? mark.Date ?? "", Windows(mark.Windows) }));
        AddList(html, inscription.Unread.Where(rest => rest.HasWords).Select(rest => "Not read: " + rest.Text));
    }

    private static void AddNumber(Markup html, NumberReading number)
    {
        html.Element("p", number.Office + " " + number.Right + " " + number.Number + ": " + Windows(number.Windows));
        AddList(html, number.Reasons.Select(ReasonText.Of));
    }

    private static void AddEstimate(Markup html, SightingEstimate estimate)
    {
        html.Element("p", estimate.IsRefused ? "No estimate." : Windows(estimate.EndWindows));
        AddList(html, estimate.Reasons.Select(ReasonText.Of));
    }

    private static string Interval(PieceDating dating, DatedInterval? interval) => dating.Dating.Qualified ? "in doubt" : Interval(interval);

    private static string Interval(DatedInterval? interval) => WindowWords.Years(interval);

    private static string Windows(IEnumerable<StatedWindow> windows)
        => string.Join("; ", windows.Select(w => WindowWords.Days(w.Window) + " (" + WindowWords.Share(w.Confidence) + ")"));

    private static void AddTable(Markup html, IEnumerable<string> headings, IEnumerable<string[]> rows)
    {
        html.Open("table").Open("thead").Open("tr");
        foreach (string heading in headings)
        {
            html.Element("th", heading, "scope", "col", "style", "text-align:left");
        }

        html.Close().Close().Open("tbody");
        foreach (string[] row in rows)
        {
            html.Open("tr");
            foreach (string cell in row)
            {
                html.Element("td", cell, "style", "text-align:left");
            }

            html.Close();
        }

        html.Close().Close();
    }

    private static void AddList(Markup html, IEnumerable<string> lines)
    {
        List<string> all = [.. lines];
        if (all.Count == 0)
        {
            return;
        }

        html.Open("ul");
        foreach (string line in all)
        {
            html.Element("li", line);
        }

        html.Close();
    }
}
