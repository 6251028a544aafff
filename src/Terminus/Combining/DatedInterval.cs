namespace Terminus;

/// <summary>An answer: the shortest window that reaches a level, with what the evidence says of it.</summary>
public sealed record DatedInterval
{
    internal DatedInterval(double confidence, DateWindow window, int asOf, double belief, double plausibility, bool insidePossible)
    {
        Confidence = confidence;
        Window = window;
        Belief = belief;
        Plausibility = plausibility;
        InsidePossible = insidePossible;
        EndsToday = window.LastDay == asOf;
    }

    /// <summary>The level asked for, above 0 and at most 1.</summary>
    public double Confidence { get; }

    /// <summary>
    /// The window. Its start is null where the evidence gives none; its end is never null, and is the day of the opinion where the
    /// evidence gives none.
    /// </summary>
    public DateWindow Window { get; }

    /// <summary>The lower probability: at least this much of the evidence puts the date inside.</summary>
    public double Belief { get; }

    /// <summary>The upper probability: at most this much of the evidence does not rule the window out.</summary>
    public double Plausibility { get; }

    /// <summary>Whether the window lies inside <see cref="Dating.Possible"/>.</summary>
    public bool InsidePossible { get; }

    /// <summary>Whether the end is only the day of the opinion, so that the words are "or later".</summary>
    public bool EndsToday { get; }

    /// <summary>Whether the window says nothing: no start, and an end that is only the day of the opinion.</summary>
    public bool IsAnyDate => EndsToday && Window.FirstDay == DayNumber.Open;

    /// <summary>The year of the first day, or null where the start is open.</summary>
    public int? EarliestYear => Window.FirstDay == DayNumber.Open ? null : DayNumber.Year(Window.FirstDay);

    /// <summary>The year of the last day.</summary>
    public int LatestYear => DayNumber.Year(Window.LastDay);

    /// <summary>The interval in EDTF, with <c>..</c> for an end that is only the day of the opinion; null for any date.</summary>
    public string? ToEdtf() => Said.ToEdtf();

    /// <summary>The window as it is said: open at the end where that is only the day of the opinion.</summary>
    internal DateWindow Said => EndsToday ? DateWindow.OfDays(Window.FirstDay, DayNumber.Open) : Window;

    /// <summary>Such as <c>1956-03-06/1961-07-11 (0.9)</c>.</summary>
    public override string ToString()
        => (ToEdtf() ?? "any date") + " (" + Confidence.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture) + ")";
}
