namespace Terminus.Benchmarks.Figures;

/// <summary>
/// The page of figures. Between <c>&lt;!-- figures NAME --&gt;</c> and <c>&lt;!-- end --&gt;</c> stands a table, which is written anew; the rest is prose
/// and stays.
/// </summary>
internal static class PerformancePage
{
    private const string Open = "<!-- figures ";
    private const string Close = "<!-- end -->";

    /// <summary>Writes the tables into the page from the figures in a folder.</summary>
    internal static void Write(string folder, string page) => File.WriteAllText(page, Text(folder, File.ReadAllLines(page)));

    /// <summary>The page as it should stand.</summary>
    internal static string Text(string folder, IEnumerable<string> page)
    {
        var tables = new Tables(new RawFigures(folder), folder);
        List<string> lines = [];
        bool isOld = false;
        foreach (string line in page)
        {
            isOld &= line != Close;
            if (isOld)
            {
                continue;
            }

            lines.Add(line);
            if (line.StartsWith(Open, StringComparison.Ordinal))
            {
                string name = line[Open.Length..].Split(' ')[0];
                lines.AddRange(["", .. tables.Named(name) ?? throw new InvalidDataException("No table is called " + name + "."), ""]);
                isOld = true;
            }
        }

        return string.Join('\n', lines) + "\n";
    }
}
