namespace Terminus;

/// <summary>The dating of one part, from its own items and those of no part.</summary>
public sealed record PartDating
{
    internal PartDating(string part, bool original, string? why, Dating dating, DatedInterval? interval, DatedInterval? likely)
    {
        Part = part;
        Original = original;
        Why = why;
        Dating = dating;
        Interval = interval;
        Likely = likely;
    }

    /// <summary>The part.</summary>
    public string Part { get; }

    /// <summary>Whether it is original; a part that is not is left out of the whole.</summary>
    public bool Original { get; }

    /// <summary>Why it is not, or null.</summary>
    public string? Why { get; }

    /// <summary>The dating of the part.</summary>
    public Dating Dating { get; }

    /// <summary>The interval at the level asked for, or null where the conflict is total.</summary>
    public DatedInterval? Interval { get; }

    /// <summary>The likely interval inside it, or null where the conflict is total.</summary>
    public DatedInterval? Likely { get; }
}
