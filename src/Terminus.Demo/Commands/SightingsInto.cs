namespace Terminus.Demo.Commands;

/// <summary>Puts sightings into a reference file: each feature keeps them, and an end of its time is estimated from them anew.</summary>
internal static class SightingsInto
{
    /// <summary>The corrected file.</summary>
    /// <param name="file">The reference file.</param>
    /// <param name="sightings">The sightings, each with the id of its feature; one without goes to the only feature there is.</param>
    /// <param name="end">The end that is estimated, beside those that already are.</param>
    /// <param name="report">Is told of sightings of a feature that the file does not have, and of those that allow no estimate.</param>
    internal static ReferenceFile Correct(ReferenceFile file, IReadOnlyList<Sighting> sightings, SightingEnd end, Action<DocumentProblem> report)
    {
        EstimatedEnds estimated = end == SightingEnd.First ? EstimatedEnds.Introduced : EstimatedEnds.Gone;
        List<FeatureEntry> features = [.. file.Features];
        foreach (IGrouping<string, Sighting> group in sightings.GroupBy(s => s.Feature, StringComparer.Ordinal))
        {
            int place = group.Key.Length == 0 && features.Count == 1 ? 0 : features.FindIndex(f => f.Id == group.Key);
            if (place < 0)
            {
                report(new DocumentProblem(
                    $"The file has no feature \"{group.Key}\"; it has {(features.Count == 0 ? "none" : string.Join(", ", features.Select(f => f.Id)))}.", "feature"));
                continue;
            }

            FeatureEntry feature = features[place];
            features[place] = feature = feature.WithSightings(group).WithEstimate(feature.Estimate | estimated);
            if ((end == SightingEnd.First ? feature.Introduced : feature.Gone) is null)
            {
                report(new DocumentProblem($"The sightings of {feature.Id} allow no estimate, so that end has no date.", "feature"));
            }
        }

        return file with { Features = features };
    }
}
