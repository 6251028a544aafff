namespace Terminus;

/// <summary>
/// The months that the groupings of a year stand for, codes 21 to 41 of ISO 8601-2:2019.
/// </summary>
/// <remarks>
/// The standard gives the lengths of quarters (33 to 36), quadrimesters (37 to 39) and semesters (40, 41), but no dates of seasons. These
/// are conventions of the library. Seasons are whole months, as meteorologists count them: on the northern half spring is March to May.
/// A season without a hemisphere (21 to 24) is the hull of both, so spring is March to November. A season that begins late in the year
/// runs into the next: winter 2010 of the north is December 2010 to February 2011.
/// </remarks>
internal static class EdtfSeasons
{
    internal const int First = 21;
    internal const int Last = 41;

    /// <summary>The last code of level 1; those above are of level 2.</summary>
    internal const int LastOfLevel1 = 24;

    // First and last month of each code from 21; 13 and 14 are January and February of the next year.
    private static readonly byte[] Months =
    [
        3, 11, 6, 14, 3, 11, 6, 14, // 21 to 24: spring, summer, autumn, winter, anywhere
        3, 5, 6, 8, 9, 11, 12, 14, // 25 to 28: the same in the north
        9, 11, 12, 14, 3, 5, 6, 8, // 29 to 32: the same in the south
        1, 3, 4, 6, 7, 9, 10, 12, // 33 to 36: quarters
        1, 4, 5, 8, 9, 12, // 37 to 39: quadrimesters
        1, 6, 7, 12, // 40 and 41: semesters
    ];

    internal static EdtfBound FirstDay(long year, int code) => EdtfBound.On(year, Months[(code - First) * 2], 1);

    internal static EdtfBound LastDay(long year, int code)
    {
        int month = Months[((code - First) * 2) + 1];
        (long y, int m) = month > 12 ? (year + 1, month - 12) : (year, month);
        return EdtfBound.On(y, m, EdtfCalendar.DaysInMonth(y, m));
    }
}
