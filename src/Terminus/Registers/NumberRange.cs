namespace Terminus;

/// <summary>The numbers of one series that can belong to a window of dates. Both ends belong to the range.</summary>
public sealed record NumberRange
{
    /// <summary>The numbers from <paramref name="first"/> to <paramref name="last"/>.</summary>
    /// <param name="series">The name of the series, the year where an office counts anew each year.</param>
    /// <param name="first">The lowest number.</param>
    /// <param name="last">The highest number.</param>
    /// <exception cref="ArgumentOutOfRangeException">The last number is lower than the first.</exception>
    public NumberRange(string series, int first, int last)
    {
        Series = Guard.NotNull(series, nameof(series));
        First = first;
        Last = last >= first ? last : throw new ArgumentOutOfRangeException(nameof(last), last, "A range ends no lower than it starts.");
    }

    /// <summary>The name of the series, the year where an office counts anew each year.</summary>
    public string Series { get; }

    /// <summary>The lowest number that can belong to the window.</summary>
    public int First { get; }

    /// <summary>The highest number that can belong to the window.</summary>
    public int Last { get; }

    /// <summary>
    /// The numbers that belong to the window by their estimated week of issue, where the register estimates weeks; otherwise null. Every
    /// number whose best day lies in the window is among them.
    /// </summary>
    public NumberRange? Likely { get; internal init; }

    /// <summary>Whether a number lies in the range.</summary>
    /// <param name="number">The number.</param>
    public bool Contains(int number) => number >= First && number <= Last;

    /// <summary>Such as <c>223211–236136</c>.</summary>
    public override string ToString() => DateText.Digits(First) + "–" + DateText.Digits(Last);
}
