using System.Text;

namespace Terminus;

/// <summary>A comparison in plain text, at most 100 columns wide.</summary>
/// <remarks>The look is no promise; the facts are those of <see cref="ChangesDocument"/>.</remarks>
public static class ChangesText
{
    /// <summary>The pieces whose dates moved, then those of one run alone, then the counts; each paragraph as it is known.</summary>
    /// <param name="changes">The pieces of the comparison.</param>
    public static IEnumerable<string> Of(IEnumerable<ChangesPiece> changes) => Paragraphs(Guard.NotNull(changes, nameof(changes)));

    private static IEnumerable<string> Paragraphs(IEnumerable<ChangesPiece> changes)
    {
        var summary = new ChangesSummary();
        foreach (ChangesPiece change in changes.Select(summary.Add).Where(c => c.HasMoved || !c.IsInBoth))
        {
            yield return Paragraph(change);
        }

        var text = new StringBuilder();
        Explanation.Paragraph(
            text,
            "",
            $"{DateText.Digits(summary.Compared)} compared, {DateText.Digits(summary.Moved)} moved, {DateText.Digits(summary.OnlyBefore)} only before, "
                + $"{DateText.Digits(summary.OnlyAfter)} only after.");
        AddTerms(text, "before: ", summary.TermsBefore);
        AddTerms(text, "after:  ", summary.TermsAfter);
        yield return text.ToString();
    }

    private static void AddTerms(StringBuilder text, string run, IReadOnlyList<string> terms)
        => Explanation.Paragraph(text, run, terms.Count == 0 ? "no result" : string.Join("; or ", terms), "        ");

    private static string Paragraph(ChangesPiece change)
    {
        if (!change.IsInBoth)
        {
            return change.Id + (change.After is null ? ": only before\n" : ": only after\n");
        }

        var text = new StringBuilder(change.Id).Append('\n');
        AddMove(text, "possible", change.Possible);
        AddMove(text, "interval", change.Interval);
        AddMove(text, "likely", change.Likely);
        foreach (ChangesCause cause in change.Causes)
        {
            Explanation.Paragraph(text, "  moved by  ", InWords(cause), "            ");
        }

        if (change.OtherDay || change.OtherTerms || change.Causes.Count == 0)
        {
            Explanation.Paragraph(text, "  note      ", Note(change), "            ");
        }

        return text.ToString();
    }

    private static void AddMove(StringBuilder text, string name, WindowMove move)
    {
        if (move.IsMove)
        {
            Explanation.Paragraph(text, "  " + name.PadRight(10), Years(move.Before) + " → " + Years(move.After) + WindowWords.Ends(move), "            ");
        }
    }

    private static string Years(DateWindow? window) => window is { } known ? WindowWords.Years(known) : "no single date";

    private static string InWords(ChangesCause cause)
        => (cause.Entries.Count == 0 ? "the description itself" : string.Join(", ", cause.Entries))
            + " (" + cause.Kind + (cause.Part is null ? "" : " on the " + cause.Part)
            + (cause.Before is null ? ", new" : cause.After is null ? ", gone" : "") + ")"
            + (cause.Alone ? "" : ", only together with the others");

    private static string Note(ChangesPiece change)
        => change.OtherTerms ? "the assumptions or the level differ, and may have moved it with no entry changed"
            : change.OtherDay ? "the day of the opinion differs, and may have moved it"
            : "no item differs; the two results were not made by the same rules";
}
