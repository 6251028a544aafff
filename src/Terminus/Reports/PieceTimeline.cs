namespace Terminus;

/// <summary>The picture of one piece.</summary>
internal static class PieceTimeline
{
    private const double AnswerHeight = 14;
    private const double ItemHeight = 7;
    private const double SpreadHeight = 36;

    internal static string Of(PieceDating dating)
    {
        Dating whole = dating.Dating;
        var picture = new Picture(TimeScale.Over(Windows(dating), whole.AsOfDay));
        AddAnswers(picture, dating);
        AddItems(picture, dating);
        return picture.ToSvg(
            "Timeline of " + NameOf(dating),
            string.Join(" ", new[] { Statement.Of(dating) }.Concat(Disagreements(dating))),
            ("firm", "firm"),
            ("usual", "usual"),
            ("out", "left out"));
    }

    /// <summary>The id and the title.</summary>
    internal static string NameOf(PieceDating dating) => dating.Piece.Title is { } title ? dating.Piece.Id + ", " + title : dating.Piece.Id;

    /// <summary>An end that is only the day of the opinion is drawn as open.</summary>
    internal static DateWindow Drawn(DateWindow window, int asOf)
        => window.LastDay == asOf ? DateWindow.OfDays(window.FirstDay, DayNumber.Open) : window;

    private static IEnumerable<DateWindow> Windows(PieceDating dating)
        => dating.Dating.Evidence.Concat(dating.LeftOut).SelectMany(e => e.StatedWindows(dating.Dating.Assumptions)).Select(w => w.Window);

    private static void AddAnswers(Picture picture, PieceDating dating)
    {
        Dating whole = dating.Dating;
        if (whole.Possible is { IsAny: false } possible && Drawn(possible, whole.AsOfDay) is { IsAny: false } drawn)
        {
            picture.Label("Possible: " + DateText.Years(drawn), "head");
            picture.Bracket(drawn, "Possible: " + WindowWords.Days(drawn));
        }
        else
        {
            picture.Label(whole.Possible is null ? "Possible: nothing, firm evidence excludes itself" : "Possible: any date", "head");
        }

        AddAnswer(picture, dating, Statement.Capital(Likelihood.Of(dating.Confidence)), dating.Interval, dating.Confidence);
        AddAnswer(picture, dating, "Likely", dating.Likely, Dating.LikelyLevel);
        if (whole.Spread.Cells.Count > 0 && whole.Evidence.Count > 0)
        {
            picture.Label("Spread of the evidence (no confidence)", "quiet");
            picture.Spread(whole.Spread, SpreadHeight);
        }
    }

    private static void AddAnswer(Picture picture, PieceDating dating, string name, DatedInterval? interval, double level)
    {
        string label = $"{name}: {WindowWords.Years(interval)} ({WindowWords.Share(level)}){(dating.Dating.Qualified ? ", in doubt" : "")}";
        picture.Label(label, "head");
        if (interval is { IsAnyDate: false })
        {
            DateWindow drawn = Drawn(interval.Window, dating.Dating.AsOfDay);
            bool isFirm = dating.Dating.Possible == interval.Window;
            picture.Bar(drawn, isFirm ? "firm" : "usual", AnswerHeight, name + ": " + WindowWords.Days(drawn));
        }
    }

    private static void AddItems(Picture picture, PieceDating dating)
    {
        int count = dating.Dating.Evidence.Count;
        IEnumerable<(Evidence Item, int Number)> numbered = dating.Dating.Evidence.Concat(dating.LeftOut).Select((item, i) => (item, i + 1));
        foreach (IGrouping<string?, (Evidence Item, int Number)> part in numbered.GroupBy(n => n.Item.Part))
        {
            picture.Space(8);
            picture.Label(part.Key is null ? "The whole piece" : "Part: " + part.Key, "head");
            foreach ((Evidence item, int number) in part)
            {
                AddItem(picture, dating, item, number <= count ? number : null);
            }
        }
    }

    private static void AddItem(Picture picture, PieceDating dating, Evidence item, int? number)
    {
        IReadOnlyList<StatedWindow> windows = item.StatedWindows(dating.Dating.Assumptions);
        string name = EvidenceName.Of(item.Part is null ? item : item with { Part = null }, dating.Reference);
        string label = number is { } n ? DateText.Digits(n) + "  " + Statement.Capital(name) : "–  " + Statement.Capital(name) + ", left out";
        picture.Label(label, tooltip: ReasonText.Of(EvidenceReasons.Main(item, dating.Reference)));
        for (int i = 0; i < windows.Count; i++)
        {
            // Only an item's widest window can be firm: it bounds what is possible.
            StatedWindow window = windows[i];
            bool isFirm = i == 0 && window.Confidence >= dating.Dating.Assumptions.FirmAt;
            string style = number is null ? "out" : isFirm ? "firm" : "usual";
            picture.Bar(window.Window, style, ItemHeight, $"{WindowWords.Days(window.Window)}, stated at {WindowWords.Share(window.Confidence)}");
        }

        foreach (string disagreement in number is { } own ? With(dating, own - 1) : [])
        {
            picture.Warning(disagreement);
        }
    }

    private static IEnumerable<string> With(PieceDating dating, int item)
        => dating.Dating.Disagreements.Where(d => d.First == item || d.Second == item)
            .Select(d => d.Second is null ? "lies after the day of the opinion"
                : $"does not fit {DateText.Digits((d.First == item ? d.Second.Value : d.First) + 1)}"
                    + $" ({WindowWords.Lower(d.Mass)}, {(d.Level == DisagreementLevel.Face ? "at face value" : "in usage")})");

    private static IEnumerable<string> Disagreements(PieceDating dating)
        => dating.Dating.Disagreements.Select(d => ReasonText.Of(Statement.OfDisagreement(dating, d)));
}
