using System.Text;
using Terminus.Tests.Reports;

namespace Terminus.Tests.Marks;

/// <summary>
/// The corners of the grammar, invented: each way of stamping beside its neighbours that mean something else or nothing. TestData/marks/corners.csv has
/// what a careful reader makes of them, by theme; all that is read in them stands in an approved text, by theme too.
/// </summary>
public class CornersTest
{
    /// <summary>The themes of the table.</summary>
    public static TheoryData<string> Themes => [.. Rows.Select(row => row[0]).Distinct()];

    private static IEnumerable<string[]> Rows => TestTable.Rows("marks", "corners.csv");

    [Theory]
    [MemberData(nameof(Themes))]
    public void Read_Corner_IsWhatACarefulReaderMakesOfIt(string theme)
    {
        var wrong = new List<string>();
        foreach (string[] row in Rows.Where(row => row[0] == theme))
        {
            string read = string.Join("; ", Inscription.Read(row[1]).Marks.Select(mark => mark.ToString()[..^(mark.Text.Length + 3)]));
            if (read != row[2])
            {
                wrong.Add(row[1] + ": " + read + " for " + row[2]);
            }
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
    }

    [Theory]
    [MemberData(nameof(Themes))]
    public void Read_Corner_IsTheApprovedText(string theme)
    {
        var text = new StringBuilder();
        foreach (string[] row in Rows.Where(row => row[0] == theme))
        {
            Inscription read = Inscription.Read(row[1]);
            ReadingsTest.Write(text, read);
            foreach (Evidence item in read.ToEvidence("back", "an invented list"))
            {
                Write(text, item);
            }
        }

        ApprovedText.Check(text.ToString(), "tests", "Terminus.Tests", "Marks", "Approved", "corners-" + theme + ".txt");
    }

    private static void Write(StringBuilder text, Evidence item)
    {
        text.Append("evidence: ").Append(item.Kind).Append(", ").Append(item.Part).Append(", ").Append(item.Source);
        text.Append(item is RightEvidence right ? ", " + right.Office + " " + right.Right + " " + right.Number : "");
        text.Append(item is RightRegistered { TermYears: { } years } ? ", " + DateText.Digits(years) + " years" : "");
        text.Append(item is DateInscribed inscribed ? ", " + inscribed.Purpose + " " + inscribed.Text : "");
        text.AppendJoin("", item.Entries.Select(entry => ", " + entry)).Append('\n');
        foreach (StatedWindow window in item.StatedWindows())
        {
            text.Append("  ").Append(window).Append('\n');
        }

        foreach (Reason reason in item.Reasons)
        {
            text.Append("  ").Append(reason.Rule).Append('\n');
        }
    }
}
