namespace Terminus;

/// <summary>What two items can have in common so that they count once.</summary>
[Flags]
internal enum SharedCauses
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Every field.</summary>
    Everything = 1,

    /// <summary>The kind of right and the part that carries it.</summary>
    Carrier = 2,

    /// <summary>A patent, which one bears and on which the other rests.</summary>
    Patent = 4,

    /// <summary>An entry of the reference file.</summary>
    Entry = 8,

    /// <summary>A question that both answer.</summary>
    Question = 16,

    /// <summary>What an opinion rests on.</summary>
    Ground = 32,

    /// <summary>Any of these.</summary>
    Any = 63,
}

/// <summary>
/// What causes any two items may share. The usual piece has a few items of which no two share one, and this one pass finds that out without
/// making anything; <see cref="OneCause"/> looks closer where there is one.
/// </summary>
internal static class SharedCause
{
    // So many items are compared two by two; more are grouped by their keys at once.
    private const int Few = 16;

    internal static SharedCauses Among(ReadOnlySpan<Evidence> items, ReferenceSet reference)
    {
        if (items.Length > Few)
        {
            return SharedCauses.Any;
        }

        var shared = SharedCauses.None;
        for (int i = 0; i < items.Length; i++)
        {
            Evidence item = items[i];
            shared |= item is Opinion { RestsOn.Count: > 0 } ? SharedCauses.Ground : SharedCauses.None;
            for (int j = 0; j < i; j++)
            {
                shared |= Of(item, items[j], reference);
            }
        }

        return shared;
    }

    private static SharedCauses Of(Evidence one, Evidence other, ReferenceSet reference)
    {
        if (ReferenceEquals(one, other) || (one.GetType() == other.GetType() && one.Equals(other)))
        {
            return SharedCauses.Everything;
        }

        if (AreOne(CauseKey.Entry(one), CauseKey.Entry(other)))
        {
            return SharedCauses.Entry;
        }

        return (one, other) switch
        {
            (FeatureSeen, FeatureSeen) => AreOne(CauseKey.Question(one, reference), CauseKey.Question(other, reference)) ? SharedCauses.Question : SharedCauses.None,
            (FeatureSeen feature, RightEvidence mark) => IsMarkOf(mark, feature, reference) ? SharedCauses.Patent : SharedCauses.None,
            (RightEvidence mark, FeatureSeen feature) => IsMarkOf(mark, feature, reference) ? SharedCauses.Patent : SharedCauses.None,
            (RightEvidence, RightEvidence) => AreOne(CauseKey.Carried(one), CauseKey.Carried(other)) ? SharedCauses.Carrier : SharedCauses.None,
            _ => SharedCauses.None,
        };
    }

    private static bool AreOne(CauseKey? one, CauseKey? other) => one is not null && one == other;

    /// <summary>Whether a mark is that of a patent on which a feature rests, on one part or where one of them speaks for the whole piece.</summary>
    internal static bool IsMarkOf(Evidence mark, FeatureSeen feature, ReferenceSet reference)
    {
        if (mark is not (PatentIssued or PatentPending) || mark.Entries.Count == 0
            || !(mark.Part is null || feature.Part is null || string.Equals(mark.Part, feature.Part, StringComparison.Ordinal))
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
