using System.Text;
using Terminus.Tests.Reports;

namespace Terminus.Tests.Marks;

/// <summary>
/// Everything that is read in the gathered and the invented inscriptions, to the last window and reason, against an approved text. What is
/// right is for the rows of <see cref="InscriptionRowsTest"/> to say; this shows what a change of the reader changes.
/// </summary>
public class ReadingsTest
{
    private static readonly string[] Approved = ["tests", "Terminus.Tests", "Marks", "Approved", "readings.txt"];

    [Fact]
    public void Read_GatheredAndInventedInscriptions_IsTheApprovedText()
    {
        var text = new StringBuilder();
        foreach (string inscription in MarkRow.All.Select(row => row.Text).Concat(TestTable.Rows("marks", "invented.csv").Select(row => row[0])).Distinct())
        {
            Write(text, Inscription.Read(inscription));
        }

        ApprovedText.Check(text.ToString(), Approved);
    }

    internal static void Write(StringBuilder text, Inscription read)
    {
        text.Append("== ").Append(read.Text.ReplaceLineEndings("\\n")).Append('\n');
        foreach (Mark mark in read.Marks)
        {
            Write(text, mark, "", "");
        }

        text.Append(read.Unread.Count > 0 ? "unread: " + string.Join(" | ", read.Unread.Select(part => part.Text)).ReplaceLineEndings("\\n") + "\n" : "");
    }

    private static void Write(StringBuilder text, Mark mark, string indent, string before)
    {
        text.Append(indent).Append(before).Append(mark.ToString().ReplaceLineEndings("\\n")).Append(mark.IsUncertain ? " ?" : "")
            .Append(" @").Append(mark.Start).Append('+').Append(mark.Length).Append(" #").Append(mark.Group)
            .Append(mark.WordingId is null ? "" : " " + mark.WordingId).Append('\n');
        foreach (StatedWindow window in mark.Windows)
        {
            text.Append(indent).Append("  ").Append(window).Append('\n');
        }

        foreach (Reason reason in mark.Reasons)
        {
            text.Append(indent).Append("  ").Append(reason.ToString().ReplaceLineEndings("\\n")).Append('\n');
        }

        foreach (Mark alternative in mark.Alternatives)
        {
            Write(text, alternative, indent + "  ", "or ");
        }
    }
}
