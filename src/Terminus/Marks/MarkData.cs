using System.Text;

namespace Terminus;

/// <summary>Reads the tables of the reader of marks, which are shipped as plain text.</summary>
internal static class MarkData
{
    /// <summary>The rows of an embedded CSV table below its header.</summary>
    internal static IEnumerable<string[]> Rows(string name)
    {
        using Stream stream = typeof(MarkData).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException("The table " + name + " is not in the assembly.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        _ = reader.ReadLine();
        var fields = new List<string>();
        while (reader.ReadLine() is { } line)
        {
            CsvLine.Split(line, fields);
            yield return [.. fields];
        }
    }

    /// <summary>The window from the first day of one date to the last day of another, each a year, a month or a day, or empty for open.</summary>
    internal static DateWindow Period(string from, string to)
        => DateWindow.OfDays(
            from.Length == 0 ? DayNumber.Open : EdtfDate.Parse(from).Window!.Value.FirstDay,
            to.Length == 0 ? DayNumber.Open : EdtfDate.Parse(to).Window!.Value.LastDay);
}
