namespace Terminus;

/// <summary>
/// Makes items that share a cause one item, before anything is combined: nothing holds for evidence that is counted twice.
/// </summary>
/// <remarks>
/// <para>Patents on one part are governed by the newest, registrations and pending words likewise. A mark of the patent on which a feature rests is one
/// observation with that feature, and the mark's windows stand. Marks and features that rest on one entry of the reference file count
/// once. Two features that answer one question about one part are one item, as wide as both. Opinions that rest on one thing, or on something that is
/// in evidence itself, count once. The items set aside stay as reasons of the one that stands, and their entries with it.</para>
/// </remarks>
internal static class OneCause
{
    /// <summary>The items of one dating with each cause once, in the order of the first of each.</summary>
    internal static List<Evidence> Merge(IEnumerable<Evidence> items, ReferenceSet reference, Assumptions house)
    {
        List<Evidence> merged = [.. Dating.Once(items)];
        if (merged.Count <= 1)
        {
            return merged;
        }

        merged = Group(merged, CarriedKey, group => Newest(group, reference, house));
        merged = MarksWithTheirFeatures(merged, reference);
        merged = Group(merged, EntryKey, group => First(group, reference));
        merged = Group(merged, item => QuestionKey(item, reference), group => BothAnswers(group, reference));
        return Opinions(merged);
    }

    // Replaces each group of items with one key by one item, in the place of its first.
    private static List<Evidence> Group(List<Evidence> items, Func<Evidence, string?> keyOf, Func<List<Evidence>, Evidence> merge)
    {
        string?[] keys = [.. items.Select(keyOf)];
        if (!HasTwice(keys))
        {
            return items;
        }

        var result = new List<Evidence>(items.Count);
        var places = new Dictionary<string, (int Place, List<Evidence> Members)>(StringComparer.Ordinal);
        for (int i = 0; i < items.Count; i++)
        {
            Evidence item = items[i];
            if (keys[i] is not { } key)
            {
                result.Add(item);
            }
            else if (places.TryGetValue(key, out (int Place, List<Evidence> Members) group))
            {
                group.Members.Add(item);
            }
            else
            {
                places[key] = (result.Count, [item]);
                result.Add(item);
            }
        }

        foreach ((int place, List<Evidence> members) in places.Values)
        {
            result[place] = members.Count == 1 ? members[0] : merge(members);
        }

        return result;
    }

    private static bool HasTwice(string?[] keys)
    {
        const int FewKeys = 16;
        if (keys.Length > FewKeys)
        {
            return true;
        }

        for (int i = 1; i < keys.Length; i++)
        {
            if (keys[i] is not null && Array.IndexOf(keys, keys[i], 0, i) >= 0)
            {
                return true;
            }
        }

        return false;
    }

    private static string? CarriedKey(Evidence item) => item is RightEvidence ? item.Kind + "\n" + item.Part : null;

    private static Evidence Newest(List<Evidence> members, ReferenceSet reference, Assumptions house)
    {
        Evidence newest = members.OrderByDescending(item => DayOf(item, house)).First();
        return Standing(newest, members, item => new Reason(
            "pieces.older-on-part", "kind", item.Kind, "what", EvidenceName.Thing(item, reference), "date", DayOf(item, house) is var day && day == DayNumber.Open ? "" : DateText.Iso(day)));
    }

    private static int DayOf(Evidence item, Assumptions house) => item switch
    {
        PatentIssued issued => issued.Issued.FirstDay(house),
        PatentPending pending => (pending.Filed ?? pending.Issued)?.FirstDay(house) ?? DayNumber.Open,
        RightRegistered registered => registered.Registered.FirstDay(house),
        _ => DayNumber.Open,
    };

    private static List<Evidence> MarksWithTheirFeatures(List<Evidence> items, ReferenceSet reference)
    {
        if (!items.Exists(item => item is FeatureSeen))
        {
            return items;
        }

        List<Evidence> result = [.. items];
        for (int i = 0; i < result.Count; i++)
        {
            if (result[i] is not (PatentIssued or PatentPending))
            {
                continue;
            }

            Evidence mark = result[i];
            List<Evidence> features =
            [
                .. result.OfType<FeatureSeen>().Where(f => SamePart(f, mark)
                    && reference.Feature(f.Feature) is { } entry && entry.Patents.Any(mark.Entries.Contains)),
            ];
            if (features.Count > 0)
            {
                result[i] = Standing(mark, [mark, .. features], item => new Reason("pieces.feature-of-patent", "what", EvidenceName.Thing(item, reference)));
                result.RemoveAll(features.Contains);
                i = result.IndexOf(result.First(item => item.Kind == mark.Kind && item.Part == mark.Part));
            }
        }

        return result;
    }

    private static bool SamePart(Evidence one, Evidence other)
        => one.Part is null || other.Part is null || string.Equals(one.Part, other.Part, StringComparison.Ordinal);

    private static string? EntryKey(Evidence item) => item switch
    {
        FeatureSeen feature when feature.StatesSomething => "entry\n" + feature.Feature,
        SubjectShown subject => "entry\n" + subject.Subject,
        MarkInUse mark when mark.Entries.Count > 0 => "entry\n" + mark.Entries[0],
        MakerActive maker => "maker\n" + maker.Maker + "\n" + maker.From + "\n" + maker.Until,
        _ => null,
    };

    // The same entry on two parts speaks for the piece, not for one of them.
    private static Evidence First(List<Evidence> members, ReferenceSet reference)
        => Standing(members[0], members, item => new Reason("pieces.same-entry", "what", EvidenceName.Thing(item, reference), "part", item.Part ?? ""))
            is var standing && members.TrueForAll(m => m.Part == standing.Part) ? standing : standing with { Part = null };

    private static string? QuestionKey(Evidence item, ReferenceSet reference)
        => item is FeatureSeen { StatesSomething: true } feature && reference.Feature(feature.Feature)?.Question is { } question
            ? question + "\n" + feature.Part
            : null;

    // Two answers to one question: at least one of them is wrong, so the item is as wide as both and as sure as the weaker.
    private static Evidence BothAnswers(List<Evidence> members, ReferenceSet reference)
    {
        List<FeatureSeen> answers = [.. members.Cast<FeatureSeen>()];
        FeatureSeen first = answers[0];
        var both = new FeatureSeen(
            string.Join(" / ", answers.Select(a => a.Feature)),
            Widest(answers, a => a.Introduced, earliest: true),
            Widest(answers, a => a.Common, earliest: true),
            Widest(answers, a => a.Fading, earliest: false),
            Widest(answers, a => a.Gone, earliest: false),
            answers.TrueForAll(a => a.Basis == first.Basis) ? first.Basis : EvidenceBasis.Trade,
            answers.Min(a => a.Grade),
            answers.TrueForAll(a => a.EndedByLaw),
            first.Part,
            string.Join("; ", answers.Select(a => a.Source).OfType<string>().Distinct(StringComparer.Ordinal)));
        return Standing(both, members, item => new Reason("pieces.two-answers", "what", EvidenceName.Thing(item, reference)), all: true);
    }

    private static EvidenceDate? Widest(List<FeatureSeen> answers, Func<FeatureSeen, EvidenceDate?> dateOf, bool earliest)
    {
        List<EvidenceDate?> dates = [.. answers.Select(dateOf)];
        return dates.Contains(null) ? null
            : earliest ? dates.OrderBy(d => d!.Outer.Low).First()
            : dates.OrderByDescending(d => d!.Outer.High).First();
    }

    private static List<Evidence> Opinions(List<Evidence> items)
    {
        if (!items.Exists(item => item is Opinion))
        {
            return items;
        }

        var result = new List<Evidence>(items);
        var entries = new HashSet<string>(items.Where(i => i is not Opinion).SelectMany(i => i.Entries), StringComparer.Ordinal);
        foreach (Opinion opinion in items.OfType<Opinion>().OrderByDescending(o => o.Windows.Count == 0 ? 0 : o.Windows[0].Confidence).ToList())
        {
            int place = result.IndexOf(opinion);
            if (opinion.RestsOn.FirstOrDefault(entries.Contains) is { } cause)
            {
                result[place] = opinion with
                {
                    Windows = ValueList<StatedWindow>.Empty,
                    Reasons = ValueList.Of(opinion.Reasons.Append(new Reason("pieces.opinion-same-cause", "cause", cause))),
                };
            }

            entries.UnionWith(opinion.RestsOn);
        }

        return result;
    }

    /// <summary>The item that stands for several, with a reason for each of the others and the entries of all.</summary>
    private static Evidence Standing(Evidence standing, List<Evidence> members, Func<Evidence, Reason> reasonOf, bool all = false)
        => standing with
        {
            Entries = ValueList.Of(standing.Entries.Concat(members.SelectMany(m => m.Entries)).Distinct(StringComparer.Ordinal)),
            Reasons = ValueList.Of(standing.Reasons.Concat(members.Where(m => all || !ReferenceEquals(m, standing)).Select(reasonOf)).Distinct()),
        };
}
