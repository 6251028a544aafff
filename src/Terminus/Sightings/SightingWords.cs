using System.Globalization;

namespace Terminus;

/// <summary>Numbers of the reasons in plain digits. Time is counted in days; years are for the words only.</summary>
internal static class SightingWords
{
    /// <summary>The mean year of the Gregorian calendar, exactly.</summary>
    internal const double DaysOfYear = 365.2425;

    internal static string Years(double days) => (days / DaysOfYear).ToString("0.##", CultureInfo.InvariantCulture);

    internal static string Number(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
