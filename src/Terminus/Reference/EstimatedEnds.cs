namespace Terminus;

/// <summary>Which ends of a feature's time are estimated from its sightings, each time the entry is read.</summary>
[Flags]
public enum EstimatedEnds
{
    /// <summary>None: the sightings are only kept.</summary>
    None = 0,

    /// <summary>When it came in.</summary>
    Introduced = 1,

    /// <summary>When it went out.</summary>
    Gone = 2,

    /// <summary>Both.</summary>
    Both = Introduced | Gone,
}
