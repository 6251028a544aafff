namespace Terminus;

/// <summary>How the reading of a number ended.</summary>
public enum NumberOutcome
{
    /// <summary>The number lies in the register and has a window.</summary>
    Found,

    /// <summary>
    /// Several spans come into question, because the office counted anew or because digits are lost: the window covers them all, and
    /// the alternatives are listed.
    /// </summary>
    Several,

    /// <summary>The number is lower than the first of the register.</summary>
    BeforeSeries,

    /// <summary>The number is higher than the last that the register knows.</summary>
    BeyondSeries,

    /// <summary>The number lies between two series of the office and was not given.</summary>
    BetweenSeries,

    /// <summary>No number of the register fits, or the text is not a number.</summary>
    Impossible,

    /// <summary>There is no register for this office and right.</summary>
    UnknownRegister,
}
