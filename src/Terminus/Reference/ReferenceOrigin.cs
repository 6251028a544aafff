namespace Terminus;

/// <summary>How an entry of a reference file came to be.</summary>
public enum ReferenceOrigin
{
    /// <summary>Read in the source that is named.</summary>
    Source,

    /// <summary>Recalled and not looked up: it counts as an entry of low grade.</summary>
    Memory,

    /// <summary>Made up, for a demonstration or a test.</summary>
    Invented,
}
