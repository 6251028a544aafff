namespace Terminus;

/// <summary>What items that share a cause have in common, so that they can be found by it.</summary>
/// <param name="Of">What they are of: an entry, a maker, a question, a kind.</param>
/// <param name="Part">The part, where only items of one part share the cause.</param>
/// <param name="From">For a maker, when the form or address that is shown began.</param>
/// <param name="Until">For a maker, when it ended.</param>
internal readonly record struct CauseKey(string Of, string? Part = null, EvidenceDate? From = null, EvidenceDate? Until = null)
{
    /// <summary>Of a right: the kind and the part that carries it.</summary>
    internal static CauseKey? Carried(Evidence item) => item is RightEvidence ? new CauseKey(item.Kind, item.Part) : null;

    /// <summary>Of what rests on an entry: the entry, whatever the part.</summary>
    internal static CauseKey? Entry(Evidence item) => item switch
    {
        FeatureSeen { StatesSomething: true } feature => new CauseKey(feature.Feature),
        SubjectShown subject => new CauseKey(subject.Subject),
        MarkInUse { Entries.Count: > 0 } mark => new CauseKey(mark.Entries[0]),
        MakerActive maker => new CauseKey(maker.Maker, "maker", maker.From, maker.Until),
        _ => null,
    };

    /// <summary>Of a feature that answers a question: the question and the part.</summary>
    internal static CauseKey? Question(Evidence item, ReferenceSet reference)
        => item is FeatureSeen { StatesSomething: true } feature && reference.Feature(feature.Feature)?.Question is { } question
            ? new CauseKey(question, feature.Part)
            : null;
}
