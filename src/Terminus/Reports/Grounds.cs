namespace Terminus;

/// <summary>
/// Why the answer is what it is, as reasons: what sets its two ends and how firmly, what firm evidence alone leaves, what the answer sets
/// aside, and what would change it.
/// </summary>
internal static class Grounds
{
    private const int MostTried = 16;

    private const int MostTooWeak = 3;

    internal static IEnumerable<Reason> Of(PieceDating dating)
    {
        if (dating.Interval is not { IsAnyDate: false } interval)
        {
            return dating.Interval is null ? Silent(dating) : TooWeak(dating, DateWindow.Any, start: true)
                .Concat(TooWeak(dating, DateWindow.Any, start: false))
                .Concat(Silent(dating));
        }

        return Ends(dating, interval)
            .Concat(Firm(dating, interval))
            .Concat(SetAside(dating, interval))
            .Concat(Silent(dating))
            .Concat(Changes(dating, interval));
    }

    /// <summary>The items with a window that starts, or ends, on a day.</summary>
    internal static IEnumerable<int> Setting(Dating dating, int day, bool start)
        => day == DayNumber.Open
            ? []
            : Enumerable.Range(0, dating.Evidence.Count).Where(item => ConfidenceAt(dating, item, day, start) is not null);

    /// <summary>The items that set an end of an answer; none for an end that is open or only the day of the opinion.</summary>
    internal static IEnumerable<int> Setting(Dating dating, DatedInterval interval)
        => Setting(dating, interval.Window.FirstDay, start: true)
            .Concat(interval.EndsToday ? [] : Setting(dating, interval.Window.LastDay, start: false))
            .Distinct();

    private static IEnumerable<Reason> Ends(PieceDating dating, DatedInterval interval)
    {
        DateWindow window = interval.Window;
        return window.FirstDay == DayNumber.Open
            ? [None("grounds.no-start"), .. TooWeak(dating, window, start: true), End(dating, "grounds.end", window.LastDay, start: false)]
            : [
                End(dating, "grounds.start", window.FirstDay, start: true),
                .. interval.EndsToday
                    ? TooWeak(dating, window, start: false).Prepend(None("grounds.no-end"))
                    : [End(dating, "grounds.end", window.LastDay, start: false)],
            ];

        Reason None(string rule) => new(rule, "confidence", WindowWords.Share(dating.Confidence));
    }

    // The items that speak for an earliest, or a latest, date, though not at the level asked for; the strongest first. Those that firm
    // evidence, or the answer, contradicts are no help.
    private static IEnumerable<Reason> TooWeak(PieceDating dating, DateWindow answer, bool start)
    {
        DateWindow left = dating.Dating.Possible ?? answer;
        List<(int Item, StatedDay Window)> weak =
        [
            .. Enumerable.Range(0, dating.Dating.Evidence.Count)
                .Select(item => (Item: item, Window: Bounding(dating.Dating.Stated[item], start)))
                .Where(w => w.Window.Confidence > 0 && w.Window.Confidence < dating.Confidence && w.Window.Low <= left.High && w.Window.High >= left.Low)
                .OrderByDescending(w => w.Window.Confidence)
                .Take(MostTooWeak),
        ];
        if (weak.Count > 0)
        {
            yield return new Reason(
                start ? "grounds.weak-start" : "grounds.weak-end",
                "confidence", WindowWords.Share(dating.Confidence),
                "items", string.Join(" and ", weak.Select(w => Bound(w.Item, w.Window))));
        }

        string Bound(int item, StatedDay window)
            => $"{EvidenceName.Of(dating.Dating.Evidence[item], dating.Reference)} ({(start ? "from" : "until")} "
                + $"{DateText.Words(start ? window.Low : window.High)}, {WindowWords.Share(window.Confidence)})";
    }

    // The widest window that has a start, or an end; of no confidence where none has.
    private static StatedDay Bounding(ReadOnlySpan<StatedDay> stated, bool start)
    {
        foreach (StatedDay window in stated)
        {
            if (start ? window.Low != int.MinValue : window.High != int.MaxValue)
            {
                return window;
            }
        }

        return default;
    }

    private static Reason End(PieceDating dating, string rule, int day, bool start)
    {
        List<int> items = [.. Setting(dating.Dating, day, start)];
        IEnumerable<double> confidences = items.Select(item => ConfidenceAt(dating.Dating, item, day, start)!.Value);
        return new Reason(
            rule,
            "date", DateText.Words(day),
            "items", Names(dating, items),
            "strength", items.Exists(item => IsFirmAt(dating.Dating, item, day, start)) ? "firm" : "usage",
            "confidence", WindowWords.Share(confidences.DefaultIfEmpty(0).Max()));
    }

    // The confidence of the item's widest window that starts, or ends, on the day.
    private static double? ConfidenceAt(Dating dating, int item, int day, bool start)
    {
        foreach (StatedDay window in dating.Stated[item])
        {
            if (IsAt(window, day, start))
            {
                return window.Confidence;
            }
        }

        return null;
    }

    // Only an item's widest window is firm, and only from the level of the house: those bound what is possible.
    private static bool IsFirmAt(Dating dating, int item, int day, bool start)
        => IsAt(dating.Stated[item][0], day, start) && dating.Stated[item][0].Confidence >= dating.Assumptions.FirmAt;

    private static bool IsAt(StatedDay window, int day, bool start) => (start ? window.Low : window.High) == day;

    private static IEnumerable<Reason> Firm(PieceDating dating, DatedInterval interval)
    {
        if (dating.Dating.Possible is { } possible && possible != interval.Window)
        {
            string years = WindowWords.DaysUpTo(possible, dating.Dating.AsOfDay);
            yield return years == "any date" ? new Reason("grounds.nothing-firm") : new Reason("grounds.firm", "window", years);
        }
    }

    private static IEnumerable<Reason> SetAside(PieceDating dating, DatedInterval interval)
    {
        List<int> items = [.. Enumerable.Range(0, dating.Dating.Evidence.Count).Where(item => IsApart(dating.Dating, item, interval.Window))];
        if (items.Count > 0)
        {
            yield return new Reason("grounds.set-aside", "items", Names(dating, items));
        }
    }

    private static bool IsApart(Dating dating, int item, DateWindow window)
        => dating.Stated[item] is { Length: > 0 } stated && (stated[0].Low > window.High || stated[0].High < window.Low);

    private static IEnumerable<Reason> Silent(PieceDating dating)
    {
        List<int> items = [.. Enumerable.Range(0, dating.Dating.Evidence.Count).Where(item => dating.Dating.Stated[item].Length == 0)];
        if (items.Count > 0)
        {
            yield return new Reason("grounds.silent", "items", Names(dating, items));
        }
    }

    private static IEnumerable<Reason> Changes(PieceDating dating, DatedInterval interval)
    {
        // Dating anew without each item is quick for a few items; of many, only those that set an end are tried.
        int count = dating.Dating.Evidence.Count;
        IEnumerable<int> tried = count <= MostTried ? Enumerable.Range(0, count) : Setting(dating.Dating, interval);
        foreach (int item in tried)
        {
            Influence influence = dating.Dating.InfluenceOf(item, dating.Confidence);
            if (influence.ChangesInterval)
            {
                yield return new Reason(
                    "grounds.without",
                    "item", EvidenceName.Of(dating.Dating.Evidence[item], dating.Reference),
                    "years", WindowWords.Years(influence.IntervalWithout));
            }
        }

        if (interval.EndsToday)
        {
            yield return new Reason("grounds.would-close");
        }
    }

    private static string Names(PieceDating dating, IEnumerable<int> items)
        => string.Join(
            " and ", items.Select(item => EvidenceName.Of(dating.Dating.Evidence[item], dating.Reference)).Distinct(StringComparer.Ordinal));
}
