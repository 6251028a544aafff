namespace Terminus;

/// <summary>What the caller knows of how a feature came in or went out, and so how its end is estimated.</summary>
public enum SightingMethod
{
    /// <summary>
    /// Nothing is known of it. The bound for a gradual end is used, unless the sightings themselves speak clearly against one; then
    /// the end counts as abrupt.
    /// </summary>
    Auto,

    /// <summary>
    /// At once, by a law, a patent or a dated change of type: the range of the sightings where they pass a check for evenness, else the gap
    /// between the two nearest to the end.
    /// </summary>
    Abrupt,

    /// <summary>By slow adoption or slow decline: the gap between the two sightings nearest to the end, widened for a ramp.</summary>
    Gradual,

    /// <summary>
    /// The optimal linear estimator: a point and a one-sided bound only, both approximate, from five or more sources.
    /// </summary>
    Linear,
}
