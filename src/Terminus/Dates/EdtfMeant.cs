namespace Terminus;

/// <summary>What people write for a date in the commonest other ways, as EDTF: <c>1930s</c>, <c>c. 1950</c>, <c>1890-1900</c>.</summary>
internal static class EdtfMeant
{
    // Longer than "approximately 1890s".
    private const int LongestText = 24;

    private const int YearLength = 4;

    // "1950-60" is a span; of "2001-99" nobody knows.
    private const int LongestShortSpan = 50;

    private static readonly string[] About = ["approximately", "approx", "circa", "about", "abt", "ca", "c"];

    /// <summary>The EDTF that the text most likely means, or null where that is not plain.</summary>
    internal static string? Of(string? text)
    {
        if (text is null || text.Length > LongestText)
        {
            return null;
        }

        string written = text.Trim();
        string? about = Array.Find(About, word => written.StartsWith(word, StringComparison.OrdinalIgnoreCase));
        string rest = about is null ? written : written.Substring(about.Length).TrimStart('.', ' ');
        string? date = rest.Length == YearLength && about is not null && IsNumber(rest) ? rest : DecadeOf(rest) ?? (about is null ? SpanOf(rest) : null);
        return date is null || about is null ? date : date + "~";
    }

    // "1930s"; of "1900s" nobody knows whether the decade or the century is meant.
    private static string? DecadeOf(string text)
        => text.Length == YearLength + 1 && IsNumber(text.Substring(0, YearLength)) && text[3] == '0' && text[4] == 's' && text[2] != '0'
            ? text.Remove(YearLength - 1) + "X"
            : null;

    // "1890-1900", "1890 – 1900", "1950-60".
    private static string? SpanOf(string text)
    {
        string[] ends = text.Split('-', '–');
        if (ends.Length != 2)
        {
            return null;
        }

        string first = ends[0].Trim();
        string last = ends[1].Trim();
        if (first.Length != YearLength || last.Length is not (2 or YearLength) || !IsNumber(first) || !IsNumber(last))
        {
            return null;
        }

        bool isShort = last.Length < YearLength;
        last = first.Remove(YearLength - last.Length) + last;
        int years = Year(last) - Year(first);
        return years > 0 && (!isShort || years <= LongestShortSpan) ? first + "/" + last : null;
    }

    private static int Year(string digits) => int.Parse(digits, System.Globalization.CultureInfo.InvariantCulture);

    private static bool IsNumber(string text) => text.All(c => c is >= '0' and <= '9');
}
