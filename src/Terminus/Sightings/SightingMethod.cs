namespace Terminus;

/// <summary>What the caller knows of how a feature came in or went out, and so how its end is estimated.</summary>
/// <remarks>
/// What a stated 0.90 really held, in simulations of 3 to 20 independent sources: <see cref="Auto"/> 0.86 or more whether the
/// sightings were even, on a ramp or falling off; <see cref="Gradual"/> 0.88 to 0.95; <see cref="Abrupt"/> 0.90 on even sightings
/// but only 0.4 to 0.7 on a ramp, which its check cannot see in so few; <see cref="Linear"/> 0.91 to 0.94 on even ones, 0.7 to 0.8
/// on a ramp. Sightings that share sources under different names break all of them.
/// </remarks>
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
