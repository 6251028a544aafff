using NodaTime.Text;

namespace Terminus.Tests.Registers;

/// <summary>Published dated numbers that the registers do not contain: TestData/registers, each row with its source.</summary>
internal static class DatedNumbers
{
    internal sealed record Dated(string Office, string Right, string Number, string Filed, string Issued, string Source)
    {
        /// <summary>The issue day as a number, or null where the list gives a year or less.</summary>
        internal int? Day => LocalDatePattern.Iso.Parse(Issued) is { Success: true } day ? DayNumber.Of(day.Value) : null;
    }

    internal static IReadOnlyList<Dated> Read(string file)
    {
        var fields = new List<string>();
        var rows = new List<Dated>();
        foreach (string line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "TestData", "registers", file)).Skip(1))
        {
            CsvLine.Split(line, fields);
            rows.Add(new Dated(fields[0], fields[1], fields[2], fields[3], fields[4], fields[5]));
        }

        return rows;
    }

    internal static IEnumerable<Dated> All() => Read("dated-patents.csv").Concat(Read("number-date-anchors.csv"));
}
