namespace Terminus;

/// <summary>The values of a reason's parameters in words, put into the draft without a string between.</summary>
internal static class ReasonValues
{
    /// <summary>A date in words, <c>unknown</c> where there is none.</summary>
    internal static ReasonDraft Date(this ReasonDraft draft, string name, EvidenceDate? date)
    {
        draft.Value(name).AddWords(date);
        return draft;
    }

    /// <summary>Two dates: <c>1955 to 1957</c>.</summary>
    internal static ReasonDraft Dates(this ReasonDraft draft, string name, EvidenceDate first, EvidenceDate last)
    {
        draft.Value(name).AddWords(first).Add(" to ").AddWords(last);
        return draft;
    }

    /// <summary>A period of which either end may be unknown: <c>from 1946</c>, <c>until 1968</c>, <c>from 1946 to 1968</c>.</summary>
    internal static ReasonDraft Period(this ReasonDraft draft, string name, EvidenceDate? from, EvidenceDate? until)
    {
        TextBuffer words = draft.Value(name);
        _ = from is null
            ? until is null ? words.Add("at a time not known") : words.Add("until ").AddWords(until)
            : until is null ? words.Add("from ").AddWords(from)
            : words.Add("from ").AddWords(from).Add(" to ").AddWords(until);
        return draft;
    }

    /// <summary>Words that begin a sentence.</summary>
    internal static ReasonDraft Capital(this ReasonDraft draft, string name, string words)
    {
        TextBuffer values = draft.Value(name);
        int start = values.Length;
        values.Add(words).Capitalise(start);
        return draft;
    }

    /// <summary>A window to the day.</summary>
    internal static ReasonDraft Days(this ReasonDraft draft, string name, DateWindow window)
    {
        draft.Value(name).AddDays(window);
        return draft;
    }

    /// <summary>The year of a day.</summary>
    internal static ReasonDraft Year(this ReasonDraft draft, string name, int dayNumber)
    {
        draft.Value(name).AddDigits(DayNumber.Year(dayNumber));
        return draft;
    }

    /// <summary>A window to the year.</summary>
    internal static ReasonDraft Years(this ReasonDraft draft, string name, DateWindow window)
    {
        draft.Value(name).AddYears(window);
        return draft;
    }

    /// <summary>An answer to the year; where the conflict is total there is none.</summary>
    internal static ReasonDraft Years(this ReasonDraft draft, string name, DatedInterval? interval)
        => interval is null ? draft.With(name, WindowWords.NoDate) : draft.Years(name, interval.Said);

    /// <summary>A stated confidence or level.</summary>
    internal static ReasonDraft Share(this ReasonDraft draft, string name, double share)
    {
        draft.Value(name).AddShare(share);
        return draft;
    }

    /// <summary>A lower probability.</summary>
    internal static ReasonDraft Lower(this ReasonDraft draft, string name, double share) => draft.Share(name, WindowWords.RoundedDown(share));

    /// <summary>An upper probability.</summary>
    internal static ReasonDraft Upper(this ReasonDraft draft, string name, double share) => draft.Share(name, WindowWords.RoundedUp(share));
}
