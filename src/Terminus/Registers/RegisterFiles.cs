using System.Reflection;

namespace Terminus;

/// <summary>
/// The shipped tables: for each register one file of rows, and one of dated numbers where there are any, embedded as plain text
/// and named after office and right (<c>us-utility.csv</c>, <c>us-utility-dated.csv</c>).
/// </summary>
internal static class RegisterFiles
{
    internal const string DiamondFile = "registers/gb-registry-diamond.csv";

    private const string Folder = "registers/";

    private const string Ending = ".csv";

    private const string DatedEnding = "-dated.csv";

    private const string Header = "series,first,last,not_before,not_after,allowance,origin,source,note";

    private static readonly Assembly Home = typeof(RegisterFiles).Assembly;

    /// <summary>Office and right of each shipped register, in alphabetical order.</summary>
    internal static IEnumerable<(string Office, string Right)> Names()
        => Home.GetManifestResourceNames()
            .Where(n => n.StartsWith(Folder, StringComparison.Ordinal) && n != DiamondFile)
            .Where(n => !n.EndsWith(DatedEnding, StringComparison.Ordinal))
            .OrderBy(n => n, StringComparer.Ordinal)
            .Select(n => (
                n.Substring(Folder.Length, 2).ToUpperInvariant(),
                n.Substring(Folder.Length + 3, n.Length - Folder.Length - 3 - Ending.Length)));

    /// <summary>Reads the register of an office and right.</summary>
    internal static Register Read(string office, string right)
    {
        string stem = Folder + office.ToLowerInvariant() + "-" + right;
        var rows = new List<RegisterRow>();
        foreach (string name in new[] { stem + Ending, stem + DatedEnding })
        {
            Lines(name, Header, fields => rows.Add(Row(fields)));
        }

        return new Register(office, right, rows);
    }

    /// <summary>Calls <paramref name="take"/> with the fields of each line below the header; a missing file has no lines.</summary>
    internal static void Lines(string name, string header, Action<List<string>> take)
    {
        using Stream? stream = Home.GetManifestResourceStream(name);
        if (stream is null)
        {
            return;
        }

        using var reader = new StreamReader(stream);
        if (reader.ReadLine() != header)
        {
            throw new InvalidDataException(name + " does not start with " + header);
        }

        var fields = new List<string>();
        while (reader.ReadLine() is { } line)
        {
            CsvLine.Split(line, fields);
            take(fields);
        }
    }

    internal static RowOrigin Origin(string text)
        => text switch
        {
            "source" => RowOrigin.Source,
            "estimate" => RowOrigin.Estimate,
            "memory" => RowOrigin.Memory,
            _ => throw new InvalidDataException("An origin is source, estimate or memory, not " + text + "."),
        };

    private static RegisterRow Row(List<string> fields)
        => new(
            Number(fields[1]),
            Number(fields[2]),
            DateWindow.OfDays(Day(fields[3]), Day(fields[4])),
            Origin(fields[6]),
            fields[7],
            fields[0],
            Number(fields[5]));

    private static int Number(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static int Day(string text) => DayNumber.Of(Part(text, 0, 4), Part(text, 5, 2), Part(text, 8, 2));

    private static int Part(string text, int start, int length)
    {
        int value = 0;
        for (int i = start; i < start + length; i++)
        {
            value = (value * 10) + (text[i] - '0');
        }

        return value;
    }
}
