namespace Terminus;

/// <summary>The estimator that gave an answer.</summary>
public enum SightingEstimator
{
    /// <summary>The range of the sightings, for sightings spread evenly up to an abrupt end (Strauss and Sadler 1989).</summary>
    Range,

    /// <summary>The gap between the two sightings nearest to an abrupt end (Robson and Whitlock 1964).</summary>
    Gap,

    /// <summary>The same gap, for sightings that thin out to nothing towards the end.</summary>
    GradualGap,

    /// <summary>The optimal linear estimator (Roberts and Solow 2003).</summary>
    OptimalLinear,
}
