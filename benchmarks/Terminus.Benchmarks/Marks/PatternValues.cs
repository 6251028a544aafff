using System.Globalization;
using System.Text.RegularExpressions;

namespace Terminus.Benchmarks.Marks;

/// <summary>The number and the date in the groups of a match. US patents issue on Tuesdays, which settles the century and the order of figures.</summary>
internal static class PatternValues
{
    // Patents of the United States have numbers since 1836.
    private const int FirstNumbered = 36;

    private const string MonthStarts = "JANFEBMARAPRMAYJUNJULAUGSEPOCTNOVDEC";

    /// <summary>The digits of a number, with letters read as the digits they resemble and what is lost as <c>?</c>; or null.</summary>
    internal static string? Number(Match match)
    {
        Group group = match.Groups["number"];
        if (!group.Success)
        {
            return null;
        }

        Span<char> digits = stackalloc char[group.Length];
        int count = 0;
        foreach (char c in group.ValueSpan)
        {
            if (c is not (',' or '.' or ' '))
            {
                digits[count++] = char.ToUpperInvariant(c) switch { 'I' or 'L' => '1', 'S' => '5', 'O' => '0', _ => c };
            }
        }

        return new string(digits[..count]);
    }

    /// <summary>The date, or null where there is none or no such day.</summary>
    internal static string? Date(Match match, Func<string, int>? monthOf = null)
    {
        if (!match.Groups["year"].Success)
        {
            return match.Groups["late"] is { Success: true } late ? "19" + late.Value : match.Groups["roman"] is { Success: true } roman ? Roman(roman.ValueSpan) : null;
        }

        ReadOnlySpan<char> year = match.Groups["year"].ValueSpan;
        if (match.Groups["month"] is { Success: true } month)
        {
            int number = monthOf?.Invoke(month.Value) ?? MonthNumber(month.ValueSpan);
            return match.Groups["day"] is { Success: true } day
                ? Day(year, number, Int(day))
                : FormattableString.Invariant($"{WholeYear(Int(year)):0000}-{number:00}");
        }

        if (match.Groups["first"] is { Success: true } first)
        {
            (int one, int two) = (Int(first), Int(match.Groups["second"]));
            return TuesdayOf(year, one, two) ?? TuesdayOf(year, two, one) ?? Day(year, one, two);
        }

        return year.Length == 4 ? year.ToString() : (Int(year) < 50 ? "19" : "18") + year.ToString();
    }

    private static string Roman(ReadOnlySpan<char> figures)
    {
        (int total, int before) = (0, 0);
        for (int i = figures.Length - 1; i >= 0; i--)
        {
            int value = figures[i] switch { 'M' => 1000, 'D' => 500, 'C' => 100, 'L' => 50, 'X' => 10, 'V' => 5, _ => 1 };
            total += value < before ? -value : value;
            before = Math.Max(before, value);
        }

        return total.ToString(CultureInfo.InvariantCulture);
    }

    private static int MonthNumber(ReadOnlySpan<char> name)
    {
        Span<char> start = stackalloc char[3];
        name[..3].ToUpperInvariant(start);
        return start is "MCH" ? 3 : start is "APL" ? 4 : (MonthStarts.AsSpan().IndexOf(start) / 3) + 1;
    }

    private static string? Day(ReadOnlySpan<char> year, int month, int day)
        => TuesdayOf(year, month, day) ?? Text(year.Length == 4 ? WholeYear(Int(year)) : (Int(year) < 36 ? 1900 : 1800) + Int(year), month, day, false);

    private static string? TuesdayOf(ReadOnlySpan<char> year, int month, int day)
        => year.Length == 4
            ? Text(WholeYear(Int(year)), month, day, true)
            : (Int(year) < FirstNumbered ? null : Text(1800 + Int(year), month, day, true)) ?? Text(1900 + Int(year), month, day, true);

    private static string? Text(int year, int month, int day, bool tuesday)
        => month is >= 1 and <= 12 && day >= 1 && year is > 0 and < 2100 && day <= DateTime.DaysInMonth(year, month)
            && (!tuesday || new DateTime(year, month, day).DayOfWeek == DayOfWeek.Tuesday)
                ? FormattableString.Invariant($"{year:0000}-{month:00}-{day:00}")
                : null;

    // Patents were not numbered or dated on things before 1790: a worn 8 reads as 7.
    private static int WholeYear(int year) => year < 1790 ? year + 100 : year;

    private static int Int(Group group) => Int(group.ValueSpan);

    private static int Int(ReadOnlySpan<char> digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);
}
