namespace Terminus;

/// <summary>How a window moved from one answer to another. Where there was or is no answer, that window is null.</summary>
public sealed record WindowMove
{
    /// <summary>Compares two windows.</summary>
    /// <param name="before">The window before, or null for none.</param>
    /// <param name="after">The window after, or null for none.</param>
    public WindowMove(DateWindow? before, DateWindow? after)
    {
        Before = before;
        After = after;
    }

    /// <summary>The window before, or null for none.</summary>
    public DateWindow? Before { get; }

    /// <summary>The window after, or null for none.</summary>
    public DateWindow? After { get; }

    /// <summary>Whether anything moved.</summary>
    public bool IsMove => Before != After;

    /// <summary>
    /// The days by which the start moved, later above 0; 0 where it stayed, open ends included; null where it was open and is not, or
    /// the reverse, or where there is no window on one side.
    /// </summary>
    public int? StartDays => Days(Before?.FirstDay, After?.FirstDay);

    /// <summary>The days by which the end moved, with the same signs as <see cref="StartDays"/>.</summary>
    public int? EndDays => Days(Before?.LastDay, After?.LastDay);

    // Where there is no window on one side, the difference is null by itself.
    private static int? Days(int? before, int? after)
        => (before == DayNumber.Open) != (after == DayNumber.Open) ? null : after - before;
}
