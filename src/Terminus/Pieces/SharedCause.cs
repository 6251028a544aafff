namespace Terminus;

/// <summary>
/// Whether any two items may share a cause. The usual piece has a few items of which no two do, and this one pass finds that out without
/// making anything; where it says yes, <see cref="OneCause"/> looks closer.
/// </summary>
internal static class SharedCause
{
    // So many items are compared two by two; more are grouped by their keys at once.
    private const int Few = 16;

    internal static bool MayBeAmong(ReadOnlySpan<Evidence> items, ReferenceSet reference)
    {
        if (items.Length > Few)
        {
            return true;
        }

        for (int i = 0; i < items.Length; i++)
        {
            Evidence item = items[i];
            if (item is Opinion { RestsOn.Count: > 0 })
            {
                return true;
            }

            for (int j = 0; j < i; j++)
            {
                if (MayBeOf(item, items[j], reference))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static bool MayBeOf(Evidence one, Evidence other, ReferenceSet reference)
        => ReferenceEquals(one, other)
            || (CauseKey.Entry(one) is { } entry && entry == CauseKey.Entry(other))
            || one switch
            {
                FeatureSeen feature when other is FeatureSeen second => SamePart(feature, second) && MayAnswerOneQuestion(feature, second, reference),
                FeatureSeen feature => IsMarkOf(other, feature, reference),
                RightEvidence when other is FeatureSeen feature => IsMarkOf(one, feature, reference),
                RightEvidence => one.GetType() == other.GetType() && SamePart(one, other),
                _ => one.Equals(other),
            };

    private static bool SamePart(Evidence one, Evidence other) => string.Equals(one.Part, other.Part, StringComparison.Ordinal);

    private static bool MayAnswerOneQuestion(FeatureSeen one, FeatureSeen other, ReferenceSet reference)
        => one.Equals(other)
            || (one.StatesSomething && other.StatesSomething && reference.Feature(one.Feature)?.Question is { } question
                && string.Equals(question, reference.Feature(other.Feature)?.Question, StringComparison.Ordinal));

    /// <summary>Whether a mark is that of a patent on which a feature rests, on one part or where one of them speaks for the whole piece.</summary>
    internal static bool IsMarkOf(Evidence mark, FeatureSeen feature, ReferenceSet reference)
    {
        if (mark is not (PatentIssued or PatentPending) || mark.Entries.Count == 0
            || !(mark.Part is null || feature.Part is null || SamePart(mark, feature))
            || reference.Feature(feature.Feature) is not { Patents: { Count: > 0 } patents })
        {
            return false;
        }

        for (int i = 0; i < patents.Count; i++)
        {
            if (mark.Entries.Contains(patents[i]))
            {
                return true;
            }
        }

        return false;
    }
}
