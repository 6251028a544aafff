namespace Terminus;

/// <summary>How an answer changes without one of its items: what that item is worth.</summary>
public sealed record Influence
{
    internal Influence(Dating dating, int item, double confidence)
    {
        Dating without = dating.Without(item);
        Item = item;
        PossibleWithout = without.Possible;
        IntervalWithout = without.Interval(confidence);
        ConflictWithout = without.Conflict;
        ChangesPossible = PossibleWithout != dating.Possible;
        ChangesInterval = IntervalWithout?.Window != dating.Interval(confidence)?.Window;
    }

    /// <summary>The index of the item in <see cref="Dating.Evidence"/>.</summary>
    public int Item { get; }

    /// <summary>What would be possible without it, or null where the rest excludes itself.</summary>
    public DateWindow? PossibleWithout { get; }

    /// <summary>The interval without it, or null where the conflict of the rest is total.</summary>
    public DatedInterval? IntervalWithout { get; }

    /// <summary>The conflict without it, from 0 to 1.</summary>
    public double ConflictWithout { get; }

    /// <summary>Whether what is possible rests on it.</summary>
    public bool ChangesPossible { get; }

    /// <summary>Whether the interval rests on it.</summary>
    public bool ChangesInterval { get; }

    /// <summary>Such as <c>without 0: 1850-01-01/1891-12-31 (0.9)</c>, never in a culture's format.</summary>
    public override string ToString()
        => "without " + DateText.Digits(Item) + ": " + (IntervalWithout?.ToString() ?? "no answer");
}
