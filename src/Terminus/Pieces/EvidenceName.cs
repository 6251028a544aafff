namespace Terminus;

/// <summary>What an item is called in a sentence: names of the reference file where it knows them, never an id that has a name.</summary>
internal static class EvidenceName
{
    /// <summary>A short name with the part: <c>the feature swivelling bar on the back</c>.</summary>
    internal static string Of(Evidence evidence, ReferenceSet reference)
    {
        string name = evidence switch
        {
            PatentIssued e => "the patent mark" + Spaced(e.Number),
            PatentPending e => "the pending mark" + Spaced(e.Number),
            RightRegistered e => "the registration mark" + Spaced(e.Number),
            FeatureSeen e => (IsWording(e, reference) ? "the wording " : "the feature ") + Thing(evidence, reference),
            MarkInUse => "the wording " + Thing(evidence, reference),
            SubjectShown => "the subject " + Thing(evidence, reference),
            DateInscribed => "the inscribed date",
            KnownBy => Thing(evidence, reference),
            MakerActive => "the maker " + Thing(evidence, reference),
            ModelAdvertised => "the advertisements",
            Opinion => Thing(evidence, reference),
            _ => evidence.Kind,
        };
        return evidence.Part is null ? name : name + " on the " + evidence.Part;
    }

    /// <summary>What the item speaks of, without its kind: the feature's name, the wording, the right with its number, the opinion's author.</summary>
    internal static string Thing(Evidence evidence, ReferenceSet reference) => evidence switch
    {
        RightEvidence { Number: null } e => Unnumbered(e),
        RightEvidence e => RightName.Of(e.Office, e.Right, e.Number),
        FeatureSeen e => FeatureNames(e.Entries, e.Feature, reference),
        SubjectShown e => FeatureNames(e.Entries, e.Subject, reference),
        MarkInUse e => reference.Mark(e.Wording) is { } mark ? "\"" + mark.Text + "\"" : Lexicon.BuiltIn.Find(e.Wording)?.Name ?? e.Wording,
        MakerActive e => reference.Maker(e.Maker)?.Name ?? e.Maker,
        KnownBy e => e.What ?? "the record",
        ModelAdvertised e => e.What ?? "advertisements",
        Opinion { By: { } by } => "the opinion of " + by,
        Opinion { Label: { } label } => "the opinion \"" + label + "\"",
        Opinion { Windows.Count: > 0 } e => "the unsigned opinion for " + DateText.Years(e.Windows[0].Window),
        Opinion => "the unsigned opinion",
        _ => evidence.Kind,
    };

    // An item that stands for two answers to one question rests on the entries of both.
    private static string FeatureNames(IReadOnlyList<string> entries, string given, ReferenceSet reference)
    {
        IEnumerable<string> ids = entries.Count == 0 ? [given] : entries;
        string names = string.Join(" or ", ids.Select(id => NameOf(id, reference)).OfType<string>());
        return names.Length == 0 ? given : names;
    }

    private static string? NameOf(string id, ReferenceSet reference) => reference.Feature(id)?.Name ?? reference.Mark(id)?.Text ?? Lexicon.BuiltIn.Find(id)?.Name;

    // A wording that was looked for among the features and is not there.
    private static bool IsWording(FeatureSeen feature, ReferenceSet reference)
        => reference.Feature(feature.Feature) is null && Lexicon.BuiltIn.Find(feature.Feature) is not null;

    // "a US utility patent", "a GB registered design", "a patent".
    private static string Unnumbered(RightEvidence right)
    {
        string kind = right.Right is { } named ? RightName.Words(named) : right is RightRegistered ? "registered right" : "patent";
        return right.Office is null ? "a " + kind : (BeginsAsVowel(right.Office) ? "an " : "a ") + right.Office + " " + kind;
    }

    // The letters of an office are said one by one: an FR patent, a US patent.
    private static bool BeginsAsVowel(string letters) => letters is [('A' or 'E' or 'F' or 'H' or 'I' or 'L' or 'M' or 'N' or 'O' or 'R' or 'S' or 'X'), ..];

    private static string Spaced(string? number) => number is null ? "" : " " + number;
}
