using System.Text;

namespace Terminus;

/// <summary>Splits one line of the shipped tables: commas between fields, a field in double quotes where it holds a comma.</summary>
/// <remarks>The form is that of RFC 4180 without line breaks inside a field, which the shipped tables do not have.</remarks>
internal static class CsvLine
{
    /// <summary>Replaces the contents of <paramref name="fields"/> by the fields of the line.</summary>
    internal static void Split(string line, List<string> fields)
    {
        fields.Clear();
        int position = 0;
        while (position <= line.Length)
        {
            if (position < line.Length && line[position] == '"')
            {
                fields.Add(Quoted(line, ref position));
            }
            else
            {
                int comma = line.IndexOf(',', position);
                int end = comma < 0 ? line.Length : comma;
                fields.Add(line.Substring(position, end - position));
                position = end;
            }

            position++;
        }
    }

    private static string Quoted(string line, ref int position)
    {
        var text = new StringBuilder();
        for (position++; position < line.Length; position++)
        {
            if (line[position] != '"')
            {
                text.Append(line[position]);
            }
            else if (position + 1 < line.Length && line[position + 1] == '"')
            {
                text.Append('"');
                position++;
            }
            else
            {
                position++;
                break;
            }
        }

        return text.ToString();
    }
}
