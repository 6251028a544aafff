namespace Terminus.Demo.Commands;

/// <summary>Puts sightings into a reference file: each feature keeps them, and an end of its time is estimated from them anew.</summary>
/// <param name="end">The end that is estimated, beside those that already are.</param>
/// <param name="replaceFacts">Whether an estimate also takes the place of a date that a patent, a law or an event gives.</param>
/// <param name="report">Is told of sightings of a feature that the file does not have, and of those that allow no estimate.</param>
/// <param name="note">Is told of each date of a patent, a law or an event: that it stays, or gives way.</param>
internal sealed class SightingsInto(SightingEnd end, bool replaceFacts, Action<DocumentProblem> report, Action<string> note)
{
    private readonly EstimatedEnds estimated = end == SightingEnd.First ? EstimatedEnds.Introduced : EstimatedEnds.Gone;

    /// <summary>The corrected file.</summary>
    /// <param name="file">The reference file.</param>
    /// <param name="sightings">The sightings, each with the id of its feature; one without goes to the only feature there is.</param>
    internal ReferenceFile Correct(ReferenceFile file, IReadOnlyList<Sighting> sightings)
    {
        List<FeatureEntry> features = [.. file.Features];
        foreach (IGrouping<string, Sighting> group in sightings.GroupBy(s => s.Feature, StringComparer.Ordinal))
        {
            int place = group.Key.Length == 0 && features.Count == 1 ? 0 : features.FindIndex(f => f.Id == group.Key);
            if (place < 0)
            {
                string known = features.Count == 0 ? "none" : string.Join(", ", features.Select(f => f.Id));
                report(new DocumentProblem(
                    group.Key.Length == 0 ? $"Sightings name no feature, and the file has {known}." : $"The file has no feature \"{group.Key}\"; it has {known}.",
                    "feature"));
                continue;
            }

            features[place] = Correct(features[place], group);
        }

        return file with { Features = features };
    }

    private FeatureEntry Correct(FeatureEntry feature, IEnumerable<Sighting> sightings)
    {
        FeatureEntry seen = feature.WithSightings(sightings);
        bool isFact = IsFact(feature);
        if (isFact && !replaceFacts)
        {
            note($"{Fact(feature)} stays, and the sightings are kept beside it. --replace-facts estimates it from them.");
            return seen;
        }

        FeatureEntry corrected = seen.WithEstimate(feature.Estimate | estimated);
        if (isFact)
        {
            note($"{Fact(feature)} gives way to {DateOf(corrected)?.Text ?? "no date"}, an estimate, which counts as usage of the trade.");
        }

        if (DateOf(corrected) is null)
        {
            report(new DocumentProblem($"The sightings of {feature.Id} allow no estimate, so that end has no date.", "feature"));
        }

        return corrected;
    }

    private bool IsFact(FeatureEntry feature)
        => DateOf(feature) is not null && (feature.Estimate & estimated) == 0 && BasisOf(feature) != EvidenceBasis.Trade;

    // As in: qh.bar: "introduced", 1961 by a patent, … to be followed by what becomes of it.
    private string Fact(FeatureEntry feature)
        => $"{feature.Id}: {(end == SightingEnd.First ? "\"introduced\"" : "\"gone\"")}, {DateOf(feature)!.Text} by {BasisOf(feature) switch
        {
            EvidenceBasis.Patent => "a patent",
            EvidenceBasis.Law => "law",
            _ => "an event",
        }},";

    private EdtfDate? DateOf(FeatureEntry feature) => end == SightingEnd.First ? feature.Introduced : feature.Gone;

    // One patent of a wider class does not say when the class began.
    private EvidenceBasis BasisOf(FeatureEntry feature)
        => end == SightingEnd.Last ? feature.EndedBy : feature.PatentOfWiderClass ? EvidenceBasis.Trade : feature.Basis;
}
