namespace Terminus;

/// <summary>
/// Finds which items moved a date between two results. Items that stand unchanged in both are out; each of the rest is put alone into the evidence
/// before, and taken alone out of the evidence after. Where either moves a date, it is a cause.
/// </summary>
internal static class ChangesSearch
{
    internal static IEnumerable<ChangesCause> Causes(ChangesRecord before, ChangesRecord after)
    {
        List<ChangesCause> differing = Differing(before.Items, after.Items);
        if (before.AsOf is null || after.AsOf is null)
        {
            return differing;
        }

        Answer first = Answer.Of(before.Items, before);
        Answer last = Answer.Of(after.Items, after);
        List<ChangesCause> judged =
        [
            .. differing.Select(cause => cause with
            {
                Alone = Answer.Of(With(before.Items, cause.Before, cause.After), before) != first
                    || Answer.Of(With(after.Items, cause.After, cause.Before), after) != last,
            }),
        ];
        return judged.Exists(c => c.Alone) ? judged.Where(c => c.Alone) : judged;
    }

    // An item belongs to the one of its kind and part with which it shares an entry, or which like it has none.
    private static List<ChangesCause> Differing(IReadOnlyList<ChangesItem> before, IReadOnlyList<ChangesItem> after)
    {
        List<ChangesItem> gone = [.. before];
        List<ChangesItem> come = [];
        foreach (ChangesItem item in after)
        {
            if (!gone.Remove(item))
            {
                come.Add(item);
            }
        }

        var causes = new List<ChangesCause>();
        foreach (ChangesItem item in come)
        {
            ChangesItem? was = gone.Find(g => g.Kind == item.Kind && g.Part == item.Part
                && (g.Entries.Intersect(item.Entries, StringComparer.Ordinal).Any() || g.Entries.Count + item.Entries.Count == 0));
            if (was is not null)
            {
                gone.Remove(was);
            }

            causes.Add(new ChangesCause(was, item, EntriesOf(was, item)));
        }

        causes.AddRange(gone.Select(item => new ChangesCause(item, null, item.Entries)));
        return [.. causes.Where(c => c.Before is null || c.After is null || !c.Before.Windows.Equals(c.After.Windows))];
    }

    private static IEnumerable<string> EntriesOf(ChangesItem? before, ChangesItem after)
    {
        if (before is null)
        {
            return after.Entries;
        }

        string[] gained = [.. after.Entries.Except(before.Entries, StringComparer.Ordinal)];
        string[] lost = [.. before.Entries.Except(after.Entries, StringComparer.Ordinal)];
        return gained.Length + lost.Length > 0 ? gained.Concat(lost) : after.Entries;
    }

    private static List<ChangesItem> With(IReadOnlyList<ChangesItem> items, ChangesItem? old, ChangesItem? with)
    {
        List<ChangesItem> result = [.. items];
        if (old is not null)
        {
            result.Remove(old);
        }

        if (with is not null)
        {
            result.Add(with);
        }

        return result;
    }

    /// <summary>The three windows that the items of a result give when they are combined anew.</summary>
    private readonly record struct Answer(DateWindow? Possible, DateWindow? Interval, DateWindow? Likely)
    {
        internal static Answer Of(IReadOnlyList<ChangesItem> items, ChangesRecord under)
        {
            // Two equal items are two witnesses here: each has its own name.
            IEnumerable<Evidence> evidence = items.Take(WindowEnds.MostItems).Select((item, i) => new Opinion(item.Windows, by: DateText.Digits(i)));
            Dating dating = Dating.Of(evidence, under.AsOf!.Value);
            DatedInterval? interval = dating.Interval(under.Confidence);
            return new Answer(dating.Possible, interval?.Window, dating.Interval(Dating.LikelyLevel, interval)?.Window);
        }
    }
}
