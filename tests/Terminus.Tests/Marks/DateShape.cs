using System.Globalization;
using System.Text.RegularExpressions;

namespace Terminus.Tests.Marks;

/// <summary>Writes another date in the shape of one that stands in a text, and nothing else of the text changes.</summary>
internal static class DateShape
{
    private static readonly string[] Months = ["JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"];

    /// <summary>The text with the new date, or null where the old one is not found in a known shape.</summary>
    internal static string? Replace(string text, DateTime from, DateTime to)
    {
        string pattern = "(?<month>" + Months[from.Month - 1] + @"[A-Z]*|MCH|APL)(?<sep>[. ]+[Yy]? ?)0?(?<day>" + from.Day + ")(?<ordinal>ST|ND|RD|TH|D)?(?<gap>[-,./ ’']+)(?<year>"
            + from.Year + "|" + (from.Year % 100).ToString("00", CultureInfo.InvariantCulture) + ")(?![0-9])";
        Match match = Regex.Match(text, pattern, RegexOptions.IgnoreCase);
        if (!match.Success)
        {
            return null;
        }

        string month = match.Groups["month"].Value.Length > 4 ? CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(to.Month).ToUpperInvariant() : Months[to.Month - 1];
        string year = to.Year.ToString(CultureInfo.InvariantCulture);
        string written = month + match.Groups["sep"].Value + to.Day.ToString(CultureInfo.InvariantCulture)
            + (match.Groups["ordinal"].Length > 0 ? Ordinal(to.Day) : string.Empty) + match.Groups["gap"].Value
            + (match.Groups["year"].Length == 2 ? year[2..] : year);
        return text[..match.Index] + written + text[(match.Index + match.Length)..];
    }

    private static string Ordinal(int day) => day switch { 1 or 21 or 31 => "ST", 2 or 22 => "ND", 3 or 23 => "RD", _ => "TH" };
}
