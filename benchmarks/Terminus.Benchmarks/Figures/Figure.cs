using System.Globalization;

namespace Terminus.Benchmarks.Figures;

/// <summary>One measured value: what was measured, of what, and the unit. It is kept as a line of tab-separated text.</summary>
internal sealed record Figure(string What, string Of, double Value, string Unit)
{
    internal string Key => What + "|" + Of;

    internal static Figure Parse(string line)
    {
        string[] fields = line.Split('\t');
        return new Figure(fields[0], fields[1], double.Parse(fields[2], CultureInfo.InvariantCulture), fields[3]);
    }

    public override string ToString() => string.Join('\t', What, Of, Value.ToString("R", CultureInfo.InvariantCulture), Unit);
}
