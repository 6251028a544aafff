namespace Terminus;

/// <summary>Measures what questions would tell of one dated piece.</summary>
internal sealed class QuestionWorth
{
    private readonly PieceDating dating;
    private readonly int spreadFrom;

    internal QuestionWorth(PieceDating dating)
    {
        this.dating = dating;
        spreadFrom = DayNumber.Of(dating.Dating.Assumptions.SpreadFrom, 1, 1);
        Entropy = Split([]).Density.Entropy;
    }

    /// <summary>The entropy of the spread in bits.</summary>
    internal double Entropy { get; }

    internal NextStep Of(OpenQuestion question)
    {
        (StepDensity density, int[] firstDays) = Split(question.Breaks);
        double[][] byCell = [.. firstDays.Select(question.Probabilities)];
        var model = new OutcomeModel(density, [.. question.Answers.Select((_, answer) => byCell.Select(cell => cell[answer]).ToArray())]);
        PieceAnswer[] after = [.. question.Answers.Select(a => question.Redate(dating, a))];
        double Expected(Func<PieceAnswer, DatedInterval?> interval) => after.Select((a, i) => model.Probabilities[i] * Width(interval(a))).Sum();

        double share = dating.Confidence;
        return new NextStep(Ask(question), question.Id, question.Part, model.Information, Answers(question, model, after))
        {
            SpreadWidth = density.ShortestWidth(share),
            ExpectedSpreadWidth = model.Expected(d => d.ShortestWidth(share)),
            Width = Width(dating.Interval),
            ExpectedWidth = Expected(a => a.Interval),
            LikelyWidth = Width(dating.Likely),
            ExpectedLikelyWidth = Expected(a => a.Likely),
        };
    }

    private IEnumerable<NextAnswer> Answers(OpenQuestion question, OutcomeModel model, PieceAnswer[] after)
        => question.Answers
            .Select((answer, i) => new NextAnswer(Say(question, answer), answer.Id, model.Probabilities[i], dating, after[i]))
            .OrderBy(a => a.Id is null)
            .ThenByDescending(a => Math.Round(a.Probability, 9));

    // The spread, cut also wherever the probability of an answer may change.
    private (StepDensity Density, int[] FirstDays) Split(IEnumerable<int> breaks)
    {
        IReadOnlyList<SpreadCell> cells = dating.Dating.Spread.Cells;
        var cuts = new SortedSet<int>(breaks);
        var firstDays = new List<int>();
        var widths = new List<double>();
        var masses = new List<double>();
        foreach (SpreadCell cell in cells)
        {
            int first = cell.Window.FirstDay;
            int end = cell.Window.LastDay + 1;
            IEnumerable<int> inside = first + 1 < end ? cuts.GetViewBetween(first + 1, end - 1) : [];
            int[] edges = [first, .. inside, end];
            for (int i = 0; i + 1 < edges.Length; i++)
            {
                firstDays.Add(edges[i]);
                widths.Add(edges[i + 1] - edges[i]);
                masses.Add(cell.Mass * (edges[i + 1] - edges[i]) / (end - first));
            }
        }

        return (new StepDensity(widths, masses), [.. firstDays]);
    }

    // Where there is no answer, or none with a start, the width is that of the period of the spread.
    private double Width(DatedInterval? interval)
    {
        int asOf = dating.Dating.AsOfDay;
        int first = interval is null || interval.Window.FirstDay == DayNumber.Open ? spreadFrom : interval.Window.FirstDay;
        int last = interval?.Window.LastDay ?? asOf;
        return Math.Max(1, last - first + 1);
    }

    private static Reason Ask(OpenQuestion question)
        => question.Text is { } text ? new Reason("advice.ask", "question", text) : new Reason("advice.ask-patent");

    private static Reason Say(OpenQuestion question, OpenAnswer answer)
        => answer.Id is null ? new Reason(question.Text is null ? "advice.no-patent" : "advice.none-of-these")
            : answer.Name is { } name ? new Reason("advice.answer", "name", name)
            : new Reason("advice.granted", "decade", answer.Id);
}
