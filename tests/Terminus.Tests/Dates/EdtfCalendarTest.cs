using System.Globalization;
using FsCheck.Xunit;
using NodaTime;

namespace Terminus.Tests.Dates;

public class EdtfCalendarTest
{
    // Oracle: every filling of every X in turn, with NodaTime's ISO calendar for the lengths of months.
    [Property(Arbitrary = [typeof(Gens)], MaxTest = 500)]
    public void The_ends_of_unspecified_digits_are_the_first_and_last_of_all_fillings(UnspecifiedText text)
    {
        string[] parts = text.Value.TrimStart('-').Split('-');
        bool negative = text.Value[0] == '-';
        if (parts.Length > 1 && !parts[1].Contains('X', StringComparison.Ordinal) && int.Parse(parts[1], CultureInfo.InvariantCulture) > 12)
        {
            return; // A grouping, or no month at all.
        }

        int[] years = [.. Fillings(parts[0]).Where(y => !negative || y > 0).Select(y => negative ? -y : y).Order()];
        string[]? first = years.Select(y => DaysOf(y, parts)).FirstOrDefault(days => days.Length > 0);
        string[]? last = Enumerable.Reverse(years).Select(y => DaysOf(y, parts)).FirstOrDefault(days => days.Length > 0);

        Assert.Equal(first is not null, EdtfDate.TryParse(text.Value, out EdtfDate? date));
        Assert.Equal((first?[0], last?[^1]), (date?.Earliest.ToString(), date?.Latest.ToString()));
    }

    [Fact]
    public void IsLeapYear_EveryYear_AgreesWithNodaTime()
    {
        for (int year = -9998; year <= 9999; year++)
        {
            Assert.Equal(CalendarSystem.Iso.IsLeapYear(year), EdtfCalendar.IsLeapYear(year));
        }
    }

    private static string[] DaysOf(int year, string[] parts)
        => [.. from month in parts.Length > 1 ? Fillings(parts[1]) : Enumerable.Range(1, 12)
               where month is >= 1 and <= 12
               let length = CalendarSystem.Iso.GetDaysInMonth(2000 + (year % 400), month)
               from day in parts.Length > 2 ? Fillings(parts[2]) : Enumerable.Range(1, length)
               where day >= 1 && day <= length
               select Text(year, month, day)];

    private static string Text(int year, int month, int day)
        => FormattableString.Invariant($"{(year < 0 ? "-" : "")}{Math.Abs(year):0000}-{month:00}-{day:00}");

    private static IEnumerable<int> Fillings(string digits)
    {
        IEnumerable<int> values = [0];
        foreach (char c in digits)
        {
            values = [.. from value in values
                         from digit in c == 'X' ? Enumerable.Range(0, 10) : [c - '0']
                         select (value * 10) + digit];
        }

        return values;
    }
}
