namespace Terminus;

/// <summary>Estimates when a feature came in or went out from the sightings kept with it.</summary>
internal static class FeatureEstimate
{
    /// <summary>The confidence of the bound that becomes a date of the entry; above what an entry of the trade states.</summary>
    internal const double Level = 0.9;

    /// <summary>The entry with each end that is to be estimated set anew; an end whose sightings are refused has no date.</summary>
    internal static FeatureEntry Apply(FeatureEntry feature)
    {
        if ((feature.Estimate & EstimatedEnds.Introduced) != 0)
        {
            feature = feature with { Introduced = Date(feature, SightingEnd.First, IsAbrupt(feature.Basis)) };
        }

        if ((feature.Estimate & EstimatedEnds.Gone) != 0)
        {
            feature = feature with { Gone = Date(feature, SightingEnd.Last, IsAbrupt(feature.EndedBy)) };
        }

        return feature;
    }

    // A patent, a law or an event starts or ends a thing at once; usage may come and go slowly.
    private static bool IsAbrupt(EvidenceBasis basis) => basis != EvidenceBasis.Trade;

    private static EdtfDate? Date(FeatureEntry feature, SightingEnd end, bool isAbrupt)
    {
        SightingEstimate estimate = SightingEstimate.Of(
            feature.Sightings, end, isAbrupt ? SightingMethod.Abrupt : SightingMethod.Auto, Level);
        foreach (StatedWindow window in estimate.EndWindows)
        {
            if (window.Confidence <= Level)
            {
                return EdtfDate.From(window.Window);
            }
        }

        return null;
    }
}
