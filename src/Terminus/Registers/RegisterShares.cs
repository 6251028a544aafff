namespace Terminus;

/// <summary>
/// The confidences that registers state, all in one place, with what was measured beside each. Each is a lower bound with a margin:
/// published lists of dated numbers hold about seven slips in a thousand, and these count against the window that they miss.
/// </summary>
/// <remarks>
/// docs/registers.md has the full table of measured shares; a test measures them again and fails where one falls below what is stated.
/// </remarks>
internal static class RegisterShares
{
    /// <summary>
    /// The outer window. US series by Tuesday: 99.3 % of several thousand dated utility numbers kept apart fall in the year of the table,
    /// and 99.7 % of the designs. Others: all of 124 dated German grants within a year of the table, and 17 of 18 dated British numbers
    /// inside a table from memory before it was widened; the rest are house estimates with no source.
    /// </summary>
    internal static double Outer(bool tuesdays, RowOrigin weakest)
        => weakest switch
        {
            RowOrigin.Source => tuesdays ? 0.99 : 0.97,
            RowOrigin.Estimate => tuesdays ? 0.98 : 0.95,
            _ => tuesdays ? 0.98 : 0.93,
        };

    /// <summary>
    /// The table at its word, where the outer window allows for more. US designs from memory: all of 137 dated. German grants: 112 of
    /// 124. Memory and estimates outside the US series: house estimates with no source.
    /// </summary>
    internal static double Table(bool tuesdays, RowOrigin weakest)
        => weakest switch
        {
            RowOrigin.Source => tuesdays ? 0.97 : 0.85,
            RowOrigin.Estimate => tuesdays ? 0.90 : 0.80,
            _ => tuesdays ? 0.95 : 0.70,
        };

    /// <summary>
    /// The windows around the estimated issue day, widest first, by how many weeks the dated numbers leave possible; empty where they
    /// leave more than two years.
    /// </summary>
    /// <param name="right">The right: utility patents have many dated numbers, designs and reissues few and small issues.</param>
    /// <param name="weeksPossible">From 1.</param>
    internal static WeekShare[] Weeks(string right, int weeksPossible)
        => weeksPossible > MostWeeks ? [] : right == "utility" ? Utility(weeksPossible) : Small(weeksPossible);

    private const int MostWeeks = 106;

    // Measured, each dated number left out in turn: 1 week 649 of 649; 2 weeks 0.854 on the day and all within one week; 3 to 8 weeks 0.824
    // and 0.999; 9 to 20 weeks 0.715 and 1.000. More than 20 weeks, with nothing but the starts of the years: 0.462 on the day, 0.863
    // within one week, 0.955 within two, 0.997 within four, all within six.
    private static WeekShare[] Utility(int weeks)
        => weeks switch
        {
            1 => UtilityCertain,
            2 => UtilityTwo,
            <= 8 => UtilityFew,
            <= 20 => UtilitySome,
            _ => UtilityMany,
        };

    // Measured, each dated design left out in turn: 1 week 45 of 45; 2 to 8 weeks 0.769 on the day and all within one week; 9 to 20 weeks
    // 0.632 and 0.947. More than 20 weeks, with nothing but the starts of the years: 0.269 on the day, 0.557 within one week, 0.814
    // within two, 0.988 within four, all within eight. Reissues are few: 41 of 41 where one week is left, otherwise 10 of 24 on the day.
    private static WeekShare[] Small(int weeks)
        => weeks switch
        {
            1 => SmallCertain,
            <= 8 => SmallFew,
            <= 20 => SmallSome,
            _ => SmallMany,
        };

    private static readonly WeekShare[] UtilityCertain = [new(0, 0.97)];

    private static readonly WeekShare[] UtilityTwo = [new(1, 0.97), new(0, 0.78)];

    private static readonly WeekShare[] UtilityFew = [new(1, 0.96), new(0, 0.70)];

    private static readonly WeekShare[] UtilitySome = [new(3, 0.97), new(1, 0.94), new(0, 0.60)];

    private static readonly WeekShare[] UtilityMany = [new(6, 0.97), new(4, 0.95), new(2, 0.90), new(1, 0.80), new(0, 0.38)];

    private static readonly WeekShare[] SmallCertain = [new(0, 0.95)];

    private static readonly WeekShare[] SmallFew = [new(1, 0.93), new(0, 0.40)];

    private static readonly WeekShare[] SmallSome = [new(3, 0.97), new(1, 0.85), new(0, 0.25)];

    private static readonly WeekShare[] SmallMany = [new(8, 0.97), new(4, 0.88), new(2, 0.70), new(1, 0.50), new(0, 0.15)];
}
