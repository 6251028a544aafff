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
    internal static ValueList<Evidence> Merge(ValueList<Evidence> items, ReferenceSet reference, Assumptions house)
    {
        SharedCauses shared = SharedCause.Among(items.Span, reference);
        return shared == SharedCauses.None ? items : Merge(items, shared, reference, house);
    }

    private static ValueList<Evidence> Merge(ValueList<Evidence> items, SharedCauses shared, ReferenceSet reference, Assumptions house)
    {
        KeptEvidence kept = KeptEvidence.Of(reference, house);
        List<Evidence> merged = [.. (shared & SharedCauses.Everything) != 0 ? DistinctItems.Of(items) : items];
        if ((shared & SharedCauses.Carrier) != 0)
        {
            merged = CauseGroups.Merge(merged, CauseKey.Carried, kept, members => Newest(members, reference, house));
        }

        if ((shared & SharedCauses.Patent) != 0)
        {
            merged = MarksWithTheirFeatures(merged, reference);
        }

        if ((shared & SharedCauses.Entry) != 0)
        {
            // One entry on two parts speaks for the whole piece, and may then answer a question together with others that do.
            merged = CauseGroups.Merge(merged, CauseKey.Entry, kept, members => First(members, reference));
            shared |= SharedCause.Among([.. merged], reference);
        }

        if ((shared & SharedCauses.Question) != 0)
        {
            merged = CauseGroups.Merge(merged, item => CauseKey.Question(item, reference), kept, members => BothAnswers(members, reference));
        }

        // Opinions that are made silent can become identical.
        return (shared & SharedCauses.Ground) != 0 ? DistinctItems.Of(ValueList.Of(Opinions(merged))) : ValueList.Of(merged);
    }

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
        List<Evidence> result = [.. items];
        for (int i = 0; i < result.Count; i++)
        {
            Evidence mark = result[i];
            List<Evidence> features = [.. result.OfType<FeatureSeen>().Where(f => SharedCause.IsMarkOf(mark, f, reference))];
            if (features.Count > 0)
            {
                result[i] = Standing(mark, [mark, .. features], item => new Reason("pieces.feature-of-patent", "what", EvidenceName.Thing(item, reference)));
                result.RemoveAll(features.Contains);
                i = result.IndexOf(result.First(item => item.Kind == mark.Kind && item.Part == mark.Part));
            }
        }

        return result;
    }

    // The same entry on two parts speaks for the piece, not for one of them.
    private static Evidence First(List<Evidence> members, ReferenceSet reference)
        => Standing(members[0], members, item => new Reason("pieces.same-entry", "what", EvidenceName.Thing(item, reference), "part", item.Part ?? ""))
            is var standing && members.TrueForAll(m => m.Part == standing.Part) ? standing : standing with { Part = null };

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
        return Standing(both, members, item => new Reason("pieces.two-answers", "what", EvidenceName.Thing(item, reference)));
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
    private static Evidence Standing(Evidence standing, List<Evidence> members, Func<Evidence, Reason> reasonOf)
        => standing with
        {
            Entries = ValueList.Of(standing.Entries.Concat(members.SelectMany(m => m.Entries)).Distinct(StringComparer.Ordinal)),
            Reasons = ValueList.Of(standing.Reasons.Concat(members.Where(m => !ReferenceEquals(m, standing)).Select(reasonOf)).Distinct()),
        };
}
