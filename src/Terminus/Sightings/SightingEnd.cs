namespace Terminus;

/// <summary>Which end of a feature's time is estimated from its sightings.</summary>
public enum SightingEnd
{
    /// <summary>When the feature came in.</summary>
    First,

    /// <summary>When the feature went out.</summary>
    Last,
}
