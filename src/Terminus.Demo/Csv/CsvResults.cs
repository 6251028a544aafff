using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;
using Terminus.Demo.Commands;

namespace Terminus.Demo.Csv;

/// <summary>
/// Writes answers as CSV, a row for each line of the collection, for a spreadsheet: the figures and the statement, not the reasons. What
/// the collection itself said is guarded against being run as a formula.
/// </summary>
internal static class CsvResults
{
    private const int FlushFrom = 64 * 1024;

    /// <summary>The columns, in order. A line that holds no piece has only the last three.</summary>
    internal static readonly string[] Columns =
    [
        "id", "title", "possibleNotBefore", "possibleNotAfter", "notBefore", "notAfter", "earliestYear", "latestYear", "edtf", "belief", "likelyNotBefore",
        "likelyNotAfter", "conflict", "qualified", "overHundredYears", "statement", "problems", "error", "path", "text",
    ];

    internal static async Task<InventorySummary> WriteAsync(
        IAsyncEnumerable<InventoryResult> results, Stream output, IProgress<InventorySummary> progress)
    {
        var summary = InventorySummary.None;
        var buffer = new StringBuilder(string.Join(',', Columns)).Append('\n');
        await foreach (InventoryResult result in results)
        {
            Append(buffer, result);
            summary = summary.Plus(InventorySummary.Of(result));
            if (buffer.Length >= FlushFrom)
            {
                WriteWhole(buffer, output);
                progress.Report(summary);
            }
        }

        WriteWhole(buffer, output);
        return summary;
    }

    private static void WriteWhole(StringBuilder buffer, Stream output)
    {
        byte[] rows = Encoding.UTF8.GetBytes(buffer.ToString());
        output.Write(rows, 0, rows.Length);
        buffer.Clear();
    }

    private static void Append(StringBuilder buffer, InventoryResult result)
    {
        string[] cells = result.Dating is { } dating ? Cells(dating) : [.. new string[Columns.Length - 3], result.Error!.Message, result.Error.Path, FormulaGuard.On(result.Error.Text)];
        for (int i = 0; i < Columns.Length; i++)
        {
            buffer.Append(i == 0 ? "" : ",").Append(Quoted(i < cells.Length ? cells[i] ?? "" : ""));
        }

        buffer.Append('\n');
    }

    private static string Quoted(string cell)
        => cell.AsSpan().IndexOfAny(",\"\r\n;") < 0 ? cell : "\"" + cell.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";

    private static string[] Cells(PieceDating dating) =>
    [
        FormulaGuard.On(dating.Piece.Id),
        FormulaGuard.On(dating.Piece.Title ?? ""),
        Day(dating.Dating.Possible?.NotBefore),
        Day(dating.Dating.Possible?.NotAfter),
        Day(dating.Interval?.Window.NotBefore),
        Day(dating.Interval?.Window.NotAfter),
        Number(dating.Interval?.EarliestYear),
        Number(dating.Interval?.LatestYear),
        dating.Interval?.ToEdtf() ?? "",
        Number(dating.Interval?.Belief),
        Day(dating.Likely?.Window.NotBefore),
        Day(dating.Likely?.Window.NotAfter),
        Number(dating.Dating.Conflict),
        dating.Dating.Qualified ? "true" : "false",
        JsonText.Kebab(dating.OverHundredYears.Verdict.ToString()).Replace('-', ' '),
        Statement.Of(dating),
        string.Join(" ", dating.Problems.Select(p => p.Path + ": " + p.Message)),
    ];

    private static string Day(LocalDate? day) => day is { } known ? LocalDatePattern.Iso.Format(known) : "";

    private static string Number(double? value) => value is { } known ? Math.Round(known, 12).ToString(CultureInfo.InvariantCulture) : "";
}
