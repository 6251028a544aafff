namespace Terminus;

/// <summary>What a wording says of the time of making, and why.</summary>
internal sealed class WordingStatement
{
    internal WordingStatement(Wording wording)
    {
        Windows = ValueList.Of(wording.ToEvidence().StatedWindows());
        string from = EndOf(wording.Period.FirstDay, 1, 1);
        string to = EndOf(wording.Period.LastDay, 12, 31);
        string rule = from.Length == 0 ? "marks.wording-undated"
            : "marks.wording-" + (wording.IsLegal ? "legal" : "customary") + (to.Length == 0 ? "-from" : "-between");
        Reason = new Reason(
            rule, "wording", wording.Id, "from", from, "to", to, "source", wording.Source.Length == 0 ? "recalled, no source" : wording.Source);
    }

    internal IReadOnlyList<StatedWindow> Windows { get; }

    internal Reason Reason { get; }

    /// <summary>The end of a period as it was stated: a year where it is the first or the last day of one, otherwise the day; empty where open.</summary>
    private static string EndOf(int day, int monthOfYear, int dayOfYear)
    {
        if (day == DayNumber.Open)
        {
            return string.Empty;
        }

        (int year, int month, int dayOfMonth) = DayNumber.Parts(day);
        return month == monthOfYear && dayOfMonth == dayOfYear ? DateText.Digits(year) : DateText.Iso(day);
    }
}
