using NodaTime;

namespace Terminus;

/// <summary>
/// A date as evidence knows it: a window, or several nested windows of which the narrower are less sure, and whether it was
/// written as approximate or uncertain.
/// </summary>
/// <remarks>
/// A date known only to the year or decade is a window. "From" such a date starts at its earliest day and "until" it ends at
/// its latest. An approximate date (<c>~</c>) is widened by <see cref="Assumptions.CircaYears"/> on both sides, and an
/// uncertain one (<c>?</c>) caps its item at <see cref="Assumptions.UncertainCap"/>, when the evidence states its windows.
/// </remarks>
public sealed record EvidenceDate
{
    /// <summary>A date from nested windows, widest first, such as the register gives for a number.</summary>
    /// <param name="windows">At least one window. Each is cut to the one before it, and left out where nothing remains.</param>
    /// <param name="isApproximate">Written with <c>~</c> or <c>%</c>.</param>
    /// <param name="isUncertain">Written with <c>?</c> or <c>%</c>.</param>
    /// <exception cref="ArgumentException">There is no window.</exception>
    public EvidenceDate(IEnumerable<StatedWindow> windows, bool isApproximate = false, bool isUncertain = false)
    {
        Windows = ValueList.Of(NestedWindows.Cut(Guard.NotNull(windows, nameof(windows)), keepAny: true));
        if (Windows.Count == 0)
        {
            throw new ArgumentException("A date needs at least one window.", nameof(windows));
        }

        IsApproximate = isApproximate;
        IsUncertain = isUncertain;
    }

    private EvidenceDate(DateWindow window, bool isApproximate, bool isUncertain)
    {
        Windows = ValueList<StatedWindow>.Owning([new StatedWindow(window, 1)]);
        IsApproximate = isApproximate;
        IsUncertain = isUncertain;
    }

    /// <summary>The nested windows, widest first; at least one.</summary>
    public IReadOnlyList<StatedWindow> Windows { get; }

    /// <summary>Whether the date was written as approximate, so that evidence widens it.</summary>
    public bool IsApproximate { get; }

    /// <summary>Whether the date was written as uncertain, so that evidence trusts it less.</summary>
    public bool IsUncertain { get; }

    /// <summary>The widest window, before any widening.</summary>
    public DateWindow Outer => Windows[0].Window;

    /// <summary>A date known to the day.</summary>
    public static EvidenceDate On(LocalDate date) => In(DateWindow.On(date));

    /// <summary>A date known to lie in a window, such as a year.</summary>
    public static EvidenceDate In(DateWindow window) => new(window, isApproximate: false, isUncertain: false);

    /// <summary>A date known to the year.</summary>
    /// <param name="year">From -9998 to 9999.</param>
    /// <exception cref="ArgumentOutOfRangeException">The year lies outside the ISO calendar.</exception>
    public static EvidenceDate InYear(int year) => In(DateWindow.InYear(year));

    /// <summary>The date that an EDTF expression denotes; an expression outside the ISO calendar gives any date.</summary>
    /// <param name="date">The expression.</param>
    public static EvidenceDate From(EdtfDate date)
    {
        Guard.NotNull(date, nameof(date));
        return new EvidenceDate(date.Window ?? DateWindow.Any, date.IsApproximate, date.IsUncertain);
    }

    internal static EvidenceDate? FromOrNull(EdtfDate? date) => date is null ? null : From(date);

    /// <summary>Reads an EDTF expression, such as <c>1955~</c> or <c>1961-07-11</c>.</summary>
    /// <param name="edtf">The expression.</param>
    /// <exception cref="EdtfException">The text is not EDTF; the exception says where and why.</exception>
    public static EvidenceDate Parse(string edtf) => From(EdtfDate.Parse(edtf));

    /// <summary>The first day of the widest window after widening, or <see cref="DayNumber.Open"/>.</summary>
    internal int FirstDay(Assumptions house) => FirstDay(Outer, house);

    /// <summary>The last day of the widest window after widening, or <see cref="DayNumber.Open"/>.</summary>
    internal int LastDay(Assumptions house)
        => IsApproximate ? DayNumber.PlusYears(Outer.LastDay, house.CircaYears) : Outer.LastDay;

    internal int FirstDay(DateWindow window, Assumptions house)
        => IsApproximate ? DayNumber.PlusYears(window.FirstDay, -house.CircaYears) : window.FirstDay;

    /// <summary>The widest window as EDTF, with its qualifiers.</summary>
    public override string ToString()
        => Outer + (IsApproximate && IsUncertain ? " %" : IsApproximate ? " ~" : IsUncertain ? " ?" : string.Empty);
}
