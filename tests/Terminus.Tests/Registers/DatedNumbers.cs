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

    internal static IEnumerable<Dated> All() => Read("dated-patents.csv").Concat(Read("number-date-anchors.csv"));

    private static IEnumerable<Dated> Read(string file)
        => TestTable.Rows("registers", file).Select(f => new Dated(f[0], f[1], f[2], f[3], f[4], f[5]));
}
