using System.Text;

namespace Terminus.Tests;

/// <summary>A table of TestData: comma-separated values with a header, fields perhaps in quotes, no line breaks in a field.</summary>
internal static class TestTable
{
    /// <summary>The rows without the header; a row has as many fields as the header.</summary>
    internal static IEnumerable<string[]> Rows(params string[] path)
    {
        string[] lines = File.ReadAllLines(Path.Combine([AppContext.BaseDirectory, "TestData", .. path]));
        int width = Fields(lines[0]).Length;
        foreach (string line in lines.Skip(1))
        {
            string[] fields = Fields(line);
            yield return fields.Length == width ? fields : throw new InvalidDataException($"Not {width} fields: {line}");
        }
    }

    private static string[] Fields(string line)
    {
        List<string> fields = [];
        StringBuilder field = new();
        bool quoted = false;
        for (int i = 0; i < line.Length; i++)
        {
            if (line[i] == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"')
            {
                field.Append('"');
                i++;
            }
            else if (line[i] == '"')
            {
                quoted = !quoted;
            }
            else if (line[i] == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(line[i]);
            }
        }

        fields.Add(field.ToString());
        return [.. fields];
    }
}
