namespace Terminus;

/// <summary>The standing of a figure in a register.</summary>
public enum RowOrigin
{
    /// <summary>Read in a published copy of the named source.</summary>
    Source,

    /// <summary>Placed between sourced figures, or added up from sourced counts.</summary>
    Estimate,

    /// <summary>Recalled, and seen in no text: unpublished, with a wider window.</summary>
    Memory,
}
