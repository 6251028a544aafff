using System.Text;

namespace Terminus;

/// <summary>What to look at next in plain text, at most 100 columns wide.</summary>
/// <remarks>The look is no promise; the facts are those of <see cref="AdviceDocument"/>.</remarks>
public static class AdviceText
{
    private const int MostAnswers = 8;
    private const int FewAnswers = 3;
    private const double ShownFrom = 0.01;

    /// <summary>The advice, with a line break at its end.</summary>
    /// <param name="advice">The advice.</param>
    public static string Of(NextSteps advice)
    {
        Guard.NotNull(advice, nameof(advice));
        PieceDating dating = advice.Dating;
        var text = new StringBuilder();
        Explanation.Paragraph(text, "", dating.Piece.Id + (dating.Piece.Title is null ? "" : "  " + dating.Piece.Title));
        Explanation.Paragraph(text, "  ", "now: " + InWords(dating.Interval) + ", likely " + InWords(dating.Likely));
        foreach (Reason note in advice.Notes)
        {
            Explanation.Paragraph(text, "  ", ReasonText.Of(note));
        }

        for (int i = 0; i < advice.Best.Count; i++)
        {
            AddStep(text, DateText.Digits(i + 1), advice.Best[i], dating);
        }

        if (advice.NotHelpful.Count > 0)
        {
            text.Append('\n');
            Explanation.Paragraph(text, "  ", "Would not help: " + string.Join(" ", advice.NotHelpful.Select(Question)));
        }

        if (advice.Unseen.Count > 0)
        {
            text.Append("\n  What cannot be seen\n");
            foreach (Reason caution in advice.Unseen)
            {
                Explanation.Paragraph(text, "    ", ReasonText.Of(caution), "      ");
            }
        }

        return text.ToString();
    }

    private static void AddStep(StringBuilder text, string number, NextStep step, PieceDating dating)
    {
        text.Append('\n');
        Explanation.Paragraph(text, "  " + number + "  ", Question(step), "     ");
        Explanation.Paragraph(text, "     ", ReasonText.Of(step.Why));
        List<NextAnswer> named = [.. step.Answers.Where(a => a.Id is not null)];
        int shown = Math.Min(MostAnswers, Math.Max(FewAnswers, named.Count(a => a.Probability >= ShownFrom)));
        foreach (NextAnswer answer in named.Take(shown))
        {
            AddAnswer(text, answer, dating);
        }

        if (named.Count > shown)
        {
            Explanation.Paragraph(text, "       ", "and " + DateText.Digits(named.Count - shown) + " more, each less likely");
        }

        foreach (NextAnswer none in step.Answers.Where(a => a.Id is null))
        {
            AddAnswer(text, none, dating);
        }
    }

    private static void AddAnswer(StringBuilder text, NextAnswer answer, PieceDating dating)
    {
        string probability = answer.Probability < ShownFrom ? "under " + WindowWords.Share(ShownFrom) : WindowWords.Share(answer.Probability);
        Explanation.Paragraph(text, "       ", ReasonText.Of(answer.Answer) + " (" + probability + "): " + Outcome(answer, dating), "         ");
    }

    private static string Question(NextStep step) => ReasonText.Of(step.Question) + (step.Part is null ? "" : " [" + step.Part + "]");

    private static string Outcome(NextAnswer answer, PieceDating dating)
    {
        if (!answer.MovesDate)
        {
            return "nothing moves";
        }

        string contradicts = answer.Conflict >= Math.Max(dating.Dating.Conflict, dating.Dating.Assumptions.SaidFrom)
            ? "; it would contradict what is known"
            : "";
        return InWords(answer.Interval) + WindowWords.Ends(answer.IntervalMove) + ", likely " + InWords(answer.Likely) + WindowWords.Ends(answer.LikelyMove) + contradicts;
    }

    private static string InWords(DatedInterval? interval)
        => interval is null ? "no single date" : interval.IsAnyDate ? "any date" : WindowWords.Years(interval);
}
