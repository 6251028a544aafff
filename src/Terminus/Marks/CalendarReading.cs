namespace Terminus;

/// <summary>One date that a stamped date can mean: a year, with a month and a day where they are known.</summary>
/// <param name="Year">The year in full.</param>
/// <param name="Month">The month, or 0.</param>
/// <param name="Day">The day of the month, or 0.</param>
/// <param name="DayFirst">Whether the day is read before the month where both are digits.</param>
internal readonly record struct CalendarReading(int Year, int Month, int Day, bool DayFirst = false)
{
    private const int ShortestMonth = 28;

    /// <summary>Whether the calendar has such a date.</summary>
    internal bool Exists => Year is >= 1 and <= 9999 && Month is >= 0 and <= 12 && Day >= 0
        && (Day == 0 || (Month > 0 && (Day <= ShortestMonth || Day <= NodaTime.CalendarSystem.Iso.GetDaysInMonth(Year, Month))));

    /// <summary>The first of the days that it covers.</summary>
    internal int FirstDay => DayNumber.Of(Year, Month > 0 ? Month : 1, Day > 0 ? Day : 1);

    /// <summary>The days that it covers.</summary>
    internal DateWindow Window
    {
        get
        {
            int last = Day > 0 ? Day : Month > 0 ? NodaTime.CalendarSystem.Iso.GetDaysInMonth(Year, Month) : 31;
            return DateWindow.OfDays(FirstDay, DayNumber.Of(Year, Month > 0 ? Month : 12, last));
        }
    }

    /// <summary>As EDTF: <c>1894-04-17</c>, <c>1894-04</c> or <c>1894</c>.</summary>
    internal string ToEdtf()
    {
        string day = DateText.Iso(Year, Month > 0 ? Month : 1, Day > 0 ? Day : 1);
        return Day > 0 ? day : day.Substring(0, day.Length - (Month > 0 ? 3 : 6));
    }
}
