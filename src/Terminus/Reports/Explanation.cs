using System.Text;

namespace Terminus;

/// <summary>A dated piece explained step by step in plain text, at most 100 columns wide.</summary>
/// <remarks>The look is no promise; the facts are those of <see cref="ResultDocument"/>.</remarks>
public static class Explanation
{
    private const int Width = 100;

    /// <summary>The explanation, with a line break at its end.</summary>
    /// <param name="dating">The dated piece.</param>
    /// <param name="steps">Whether to add the answers at all levels.</param>
    public static string Of(PieceDating dating, bool steps = false)
    {
        Guard.NotNull(dating, nameof(dating));
        var text = new StringBuilder();
        AddHeading(text, dating);
        AddAnswer(text, dating);
        AddWhy(text, dating);
        AddParts(text, dating);
        AddEvidence(text, dating);
        AddDisagreements(text, dating);
        if (steps)
        {
            AddSteps(text, dating.Dating);
        }

        AddProblems(text, dating);
        AddCautions(text, dating);
        Paragraph(text, "", Statement.Behind(dating));
        return text.ToString();
    }

    private static void AddHeading(StringBuilder text, PieceDating dating)
    {
        Paragraph(text, "", dating.Piece.Id + (dating.Piece.Title is null ? "" : "  " + dating.Piece.Title));
        Paragraph(text, "  ", Statement.Of(dating));
    }

    private static void AddAnswer(StringBuilder text, PieceDating dating)
    {
        Dating whole = dating.Dating;
        text.Append('\n');
        Row(text, "possible", Possible(whole));
        AddInterval(text, dating, "at " + WindowWords.Share(dating.Confidence), dating.Interval);
        AddInterval(text, dating, "likely", dating.Likely);
        Row(text, "conflict", whole.Conflict == 0 ? "0: all windows meet" : WindowWords.Upper(whole.Conflict) + " of the evidence is in conflict");
        Row(text, "over 100 years", Words.Spaced(dating.OverHundredYears.Verdict));
        if (dating.Stated is { } claim)
        {
            Row(text, "stated", claim.Stated.Text + ": " + Words.Spaced(claim.Verdict) + ". " + ReasonText.Of(ClaimReasons.Of(dating, claim)));
        }
    }

    private static string Possible(Dating dating)
        => dating.Possible is not { } possible ? "nothing: firm evidence excludes itself"
            : WindowWords.DaysUpTo(possible, dating.AsOfDay) is "any date" ? "any date: nothing firm bounds it"
            : WindowWords.DaysUpTo(possible, dating.AsOfDay) + ", from firm evidence";

    private static void AddInterval(StringBuilder text, PieceDating dating, string name, DatedInterval? interval)
    {
        if (interval is null)
        {
            Row(text, name, "none: the conflict is total");
            return;
        }

        string line = WindowWords.DaysUpTo(interval.Window, dating.Dating.AsOfDay);
        string shares = "; belief " + WindowWords.Lower(interval.Belief) + ", plausibility " + WindowWords.Upper(interval.Plausibility);
        Row(text, name, interval.IsAnyDate ? line : line + shares + Sets(dating.Dating, interval));
    }

    // Which items set the two ends, by number in the list below.
    private static string Sets(Dating dating, DatedInterval interval)
    {
        string start = Numbers(dating, interval.Window.FirstDay, start: true);
        string end = interval.EndsToday ? "" : Numbers(dating, interval.Window.LastDay, start: false);
        return (start.Length == 0 ? "" : "; starts by " + start) + (end.Length == 0 ? "" : "; ends by " + end);
    }

    private static string Numbers(Dating dating, int day, bool start)
        => string.Join(", ", Grounds.Setting(dating, day, start).Select(item => "item " + DateText.Digits(item + 1)));

    private static void AddWhy(StringBuilder text, PieceDating dating)
    {
        IReadOnlyList<Reason> why = Statement.WhyReasons(dating);
        if (why.Count > 0)
        {
            text.Append("\n  Why, and what would change it\n");
            foreach (Reason reason in why)
            {
                Paragraph(text, "    ", ReasonText.Of(reason), "      ");
            }
        }
    }

    private static void AddParts(StringBuilder text, PieceDating dating)
    {
        if (dating.Parts.Count == 0)
        {
            return;
        }

        text.Append("\n  Parts\n");
        foreach (PartDating part in dating.Parts)
        {
            string interval = WindowWords.Years(part.Interval);
            string likely = part.Likely is { } narrower ? ", likely " + WindowWords.Years(narrower) : "";
            string original = part.Original ? "" : "; not original" + (part.Why is null ? "" : " (" + part.Why + ")") + ", left out of the whole";
            Paragraph(text, "    ", part.Part + ": " + interval + likely + original);
        }
    }

    private static void AddEvidence(StringBuilder text, PieceDating dating)
    {
        if (dating.Dating.Evidence.Count + dating.LeftOut.Count == 0)
        {
            return;
        }

        text.Append("\n  Evidence\n");
        int number = 0;
        foreach (Evidence evidence in dating.Dating.Evidence.Concat(dating.LeftOut))
        {
            bool isLeftOut = number >= dating.Dating.Evidence.Count;
            string mark = isLeftOut ? "  – " : DateText.Digits(++number).PadLeft(3) + " ";
            string part = evidence.Part is null ? "" : "[" + evidence.Part + "] ";
            List<string> reasons = [.. EvidenceReasons.Of(evidence, dating.Reference).Select(ReasonText.Of)];
            Paragraph(text, mark + " ", part + reasons[0], "     ");
            foreach (string reason in reasons.Skip(1))
            {
                Paragraph(text, "     ", reason, "       ");
            }

            foreach (StatedWindow window in evidence.StatedWindows(dating.Dating.Assumptions))
            {
                Paragraph(text, "       ", WindowWords.Share(window.Confidence).PadRight(5) + WindowWords.Days(window.Window));
            }

            if (EvidenceReasons.UnsaidSource(evidence, reasons) is { } source)
            {
                Paragraph(text, "       ", "source: " + source, "         ");
            }

            if (evidence.Entries.Count > 0)
            {
                Paragraph(text, "       ", "reference: " + string.Join(", ", evidence.Entries), "         ");
            }
        }
    }

    private static void AddDisagreements(StringBuilder text, PieceDating dating)
    {
        if (dating.Dating.Disagreements.Count == 0)
        {
            return;
        }

        text.Append("\n  What disagrees\n");
        foreach (Disagreement disagreement in dating.Dating.Disagreements)
        {
            Paragraph(text, "    ", ReasonText.Of(Statement.OfDisagreement(dating, disagreement)), "      ");
        }
    }

    private static void AddSteps(StringBuilder text, Dating dating)
    {
        text.Append("\n  At each level\n");
        foreach (DatedInterval step in dating.Steps)
        {
            Paragraph(text, "    ", "up to " + WindowWords.Lower(step.Belief).PadRight(7) + WindowWords.DaysUpTo(step.Window, dating.AsOfDay));
        }
    }

    private static void AddProblems(StringBuilder text, PieceDating dating)
    {
        if (dating.Problems.Count > 0)
        {
            text.Append("\n  Problems in the description\n");
            foreach (DocumentProblem problem in dating.Problems)
            {
                Paragraph(text, "    ", problem.Path + ": " + problem.Message, "      ");
            }
        }
    }

    private static void AddCautions(StringBuilder text, PieceDating dating)
    {
        text.Append('\n');
        foreach (Reason caution in Phrasing.Cautions(dating))
        {
            Paragraph(text, "", ReasonText.Of(caution), "  ");
        }
    }

    private static void Row(StringBuilder text, string name, string value) => Paragraph(text, "  " + name.PadRight(16), value, new string(' ', 18));

    // Words are kept whole; a word longer than the line stands on its own.
    internal static void Paragraph(StringBuilder text, string first, string words, string? following = null)
    {
        following ??= first;
        int column = first.Length;
        text.Append(first);
        bool start = true;
        foreach (string word in words.Split(' '))
        {
            if (!start && column + 1 + word.Length > Width)
            {
                text.Append('\n').Append(following);
                column = following.Length;
                start = true;
            }

            text.Append(start ? "" : " ").Append(word);
            column += word.Length + (start ? 0 : 1);
            start = false;
        }

        text.Append('\n');
    }
}
