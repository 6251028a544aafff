using System.Text;
using Terminus.Tests.Reports;

namespace Terminus.Tests.Registers;

/// <summary>
/// All that each shipped register says of the numbers of TestData/registers/readings.csv, and which numbers it gives for a few windows, against an
/// approved text. What is right is for the tests with a source to say; this shows what a change of a register changes.
/// </summary>
public class RegisterReadingsTest
{
    private static readonly DateWindow[] Asked =
    [
        DateWindow.Any, DateWindow.InYear(1790), DateWindow.InYear(1848), DateWindow.InYear(1871), DateWindow.InYear(1899), DateWindow.BetweenYears(1914, 1918),
        DateWindow.InYear(1952), DateWindow.InYear(1990), DateWindow.InYear(2030), Days(1880, 6, 1, 1), Days(1880, 6, 2, 6), Days(1880, 6, 2, 7), Days(1847, 12, 30, 3),
    ];

    /// <summary>The shipped registers by the names of their files.</summary>
    public static TheoryData<string> Names
        => [.. RegisterFiles.Names().Select(name => name.Office.ToLowerInvariant() + "-" + name.Right)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Read_NumbersOfARegister_AreTheApprovedText(string name)
    {
        Register register = RegisterFiles.Read(name[..2].ToUpperInvariant(), name[3..]);
        var text = new StringBuilder();
        foreach (string[] row in TestTable.Rows("registers", "readings.csv").Where(row => row[0] == name))
        {
            Write(text, row[1], register.Read(row[1]));
        }

        foreach (DateWindow dates in Asked)
        {
            text.Append("== numbers of ").Append(dates).Append('\n');
            foreach (NumberRange range in register.Numbers(dates))
            {
                text.Append("  ").Append(range.Series).Append(range.Series.Length > 0 ? ": " : "").Append(range)
                    .Append(range.Likely is { } likely ? ", likely " + likely : "").Append('\n');
            }
        }

        ApprovedText.Check(text.ToString(), "tests", "Terminus.Tests", "Registers", "Approved", name + ".txt");
    }

    internal static void Write(StringBuilder text, string number, NumberReading reading)
    {
        text.Append("== ").Append(number).Append('\n').Append(reading).Append(", ").Append(reading.Outcome).Append(", ").Append(reading.Origin).Append('\n');
        foreach (StatedWindow window in reading.Windows)
        {
            text.Append("  ").Append(window).Append('\n');
        }

        Line(text, "best", reading.Best is { } best ? [best.ToString()] : []);
        Line(text, "or", reading.Alternatives.Select(window => window.ToString()));
        Line(text, "ids", reading.DocumentIds);
        Line(text, "written", reading.Writings);
        Line(text, "sources", reading.Sources);
        foreach (Reason reason in reading.Reasons)
        {
            text.Append("  ").Append(reason.Rule).Append(": ").Append(ReasonText.Of(reason)).Append('\n');
        }
    }

    private static void Line(StringBuilder text, string name, IEnumerable<string> values)
    {
        string all = string.Join(" | ", values);
        text.Append(all.Length > 0 ? "  " + name + ": " + all + "\n" : "");
    }

    private static DateWindow Days(int year, int month, int day, int count)
        => DateWindow.OfDays(DayNumber.Of(year, month, day), DayNumber.Of(year, month, day) + count - 1);
}
