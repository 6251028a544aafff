namespace Terminus;

/// <summary>The longest term that the law of a day allowed for a right, in whole years, by office.</summary>
/// <remarks>
/// <para>United States: act of 4 July 1836, 5 Stat. 117 (14 years, extension of 7); act of 2 March 1861, 12 Stat. 249, s. 16 (17 years);
/// Pub. L. 103-465 s. 532, 35 USC 154 (20 years from filing, also for patents in force on 8 June 1995). A reissue has what is left of its
/// original's term (act of 4 July 1836, s. 13; 35 USC 251), so one of the four years after 2 March 1861 can outlast 17 years. Designs: act of 29 August 1842,
/// 5 Stat. 543 (7 years); act of 2 March 1861, s. 11 (up to 14); Pub. L. 112-211 (15).</para>
/// <para>The other offices are from memory and taken at the longest, and an office that is not listed counts as the longest of all. A
/// term that is too long only widens a window of low confidence.</para>
/// </remarks>
internal static class LegalTerms
{
    private const int LongestPatent = 21;
    private const int LongestDesign = 25;
    private const int LongestUtilityModel = 10;

    private readonly struct Term(string office, string right, int from, int years)
    {
        internal string Office { get; } = office;

        internal string Right { get; } = right;

        internal int From { get; } = from;

        internal int Years { get; } = years;
    }

    // Newest first within an office and right; the first row whose day is not later than the grant counts.
    private static readonly Term[] Terms =
    [
        new("US", "utility", DayNumber.Of(1978, 6, 8), 20),
        new("US", "utility", DayNumber.Of(1861, 3, 2), 17),
        new("US", "utility", DayNumber.Of(1790, 4, 10), 21),
        new("US", "reissue", DayNumber.Of(1978, 6, 8), 20),
        new("US", "reissue", DayNumber.Of(1865, 3, 2), 17),
        new("US", "reissue", DayNumber.Of(1790, 4, 10), 21),
        new("US", "plant", DayNumber.Of(1978, 6, 8), 20),
        new("US", "plant", DayNumber.Of(1930, 5, 23), 17),
        new("US", "design", DayNumber.Of(2015, 5, 13), 15),
        new("US", "design", DayNumber.Of(1861, 3, 2), 14),
        new("US", "design", DayNumber.Of(1842, 8, 29), 7),
        new("GB", "patent", DayNumber.Of(1978, 6, 1), 20),
        new("GB", "patent", DayNumber.Of(1852, 10, 1), 21),
        new("GB", "registered-design", DayNumber.Of(1989, 8, 1), 25),
        new("GB", "registered-design", DayNumber.Of(1884, 1, 1), 15),
        new("GB", "registered-design", DayNumber.Of(1842, 1, 1), 6),
        new("DE", "patent", DayNumber.Of(1978, 1, 1), 20),
        new("DE", "patent", DayNumber.Of(1923, 1, 1), 18),
        new("DE", "patent", DayNumber.Of(1877, 7, 1), 15),
        new("DE", "utility-model", DayNumber.Of(1990, 1, 1), 10),
        new("DE", "utility-model", DayNumber.Of(1891, 10, 1), 6),
        new("FR", "patent", DayNumber.Of(1844, 10, 9), 20),
        new("CH", "patent", DayNumber.Of(1888, 11, 15), 20),
        new("CA", "patent", DayNumber.Of(1869, 1, 1), 20),
    ];

    /// <summary>The longest term of a right granted in a window, in years: the longest that any day of it allowed.</summary>
    /// <param name="office">WIPO ST.3 code, or null where unknown.</param>
    /// <param name="right">The right, or null where unknown.</param>
    /// <param name="granted">When it was granted.</param>
    internal static int Longest(string? office, string? right, DateWindow granted)
    {
        int longest = 0;
        int until = int.MaxValue;
        foreach (Term term in Terms)
        {
            if (!string.Equals(term.Office, office, StringComparison.Ordinal) || !string.Equals(term.Right, right, StringComparison.Ordinal))
            {
                continue;
            }

            if (term.From <= granted.High && granted.Low < until)
            {
                longest = Math.Max(longest, term.Years);
            }

            until = term.From;
        }

        return longest > 0 ? longest : right switch
        {
            "design" or "registered-design" => LongestDesign,
            "utility-model" => LongestUtilityModel,
            _ => LongestPatent,
        };
    }
}
