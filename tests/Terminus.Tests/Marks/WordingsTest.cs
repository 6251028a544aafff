namespace Terminus.Tests.Marks;

/// <summary>Every phrase of data/marks/wordings.csv, written out with the first form of each of its words in data/marks/words.csv.</summary>
public class WordingsTest
{
    private static readonly Dictionary<string, string> Forms = Rows("marks/words.csv").ToDictionary(row => row[0], row => row[3].Split(' ')[0], StringComparer.Ordinal);

    private static readonly List<string[]> Wordings = [.. Rows("marks/wordings.csv")];

    /// <summary>Phrases that mean another wording too, which stands before theirs in the table, or that an acronym or a worn digit swallows.</summary>
    private static readonly string[] Shadowed =
    [
        "PAT ANG", "PAT ANM", "REGD", "D R PAT ANG", "D R GEBRAUCHSMUSTER", "D R GEBRAUCHSMUSTER NO",
    ];

    /// <summary>The kinds of mark that have wordings.</summary>
    public static TheoryData<string> Kinds => [.. Wordings.Where(row => row[5].Length > 0).Select(row => row[1]).Distinct()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Read_PhraseOfAWording_IsThatWording(string kind)
    {
        var wrong = new List<string>();
        foreach (string[] row in Wordings.Where(row => row[1] == kind))
        {
            foreach (string text in row[5].Split('|', StringSplitOptions.RemoveEmptyEntries).SelectMany(phrase => Texts(phrase.Split(' '), 0, "")))
            {
                string written = row[4] == "number!" ? text + " 123456" : text;
                IReadOnlyList<Mark> marks = Inscription.Read(written).Marks;
                if (!Shadowed.Contains(text) && !(marks.Count == 1 && marks[0].Length == written.Length && (row[4] == "number!" || marks[0].WordingId == row[0])))
                {
                    wrong.Add(row[0] + ": " + written + ": " + string.Join("; ", marks.Select(mark => mark + " " + mark.WordingId)));
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
    }

    [Theory]
    [InlineData("number", "", " 123456")]
    [InlineData("number!", "", " 123456")]
    [InlineData("year", "", " 1958")]
    [InlineData("karat", "14K ", "")]
    [InlineData("karat", "1/20 12K ", "")]
    public void Read_PhraseWithWhatItTakes_IsOneMark(string takes, string before, string behind)
    {
        var wrong = new List<string>();
        foreach (string[] row in Wordings.Where(row => row[4] == takes))
        {
            foreach (string text in row[5].Split('|', StringSplitOptions.RemoveEmptyEntries).SelectMany(phrase => Texts(phrase.Split(' '), 0, "")))
            {
                string written = before + text + behind;
                IReadOnlyList<Mark> marks = Inscription.Read(written).Marks;
                if (!(before.Length > 0 && char.IsDigit(text[0])) && !Shadowed.Contains(text) && !(marks.Count == 1 && marks[0].Length == written.Length && behind == Taken(marks[0])))
                {
                    wrong.Add(row[0] + ": " + written + ": " + string.Join("; ", marks.Select(mark => mark + " " + mark.WordingId)));
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
    }

    private static string Taken(Mark mark) => string.Concat(new[] { mark.Number, mark.Date }.Select(part => part is null ? "" : " " + part));

    /// <summary>A phrase with and without each word that ends in a question mark.</summary>
    private static IEnumerable<string> Texts(string[] words, int next, string before)
    {
        if (next == words.Length)
        {
            return [before];
        }

        string word = words[next];
        bool optional = word.Length > 1 && word[^1] == '?';
        word = optional ? word[..^1] : word;
        string form = word switch
        {
            "{country}" => "PORTUGAL",
            "{demonym}" => "DANISH",
            "#" => "20",
            _ => Forms.GetValueOrDefault(word, word),
        };
        IEnumerable<string> with = Texts(words, next + 1, before.Length == 0 ? form : before + " " + form);
        return optional ? Texts(words, next + 1, before).Concat(with) : with;
    }

    private static IEnumerable<string[]> Rows(string table)
    {
        using var reader = new StreamReader(typeof(Inscription).Assembly.GetManifestResourceStream(table)!);
        reader.ReadLine();
        var fields = new List<string>();
        var rows = new List<string[]>();
        while (reader.ReadLine() is { } line)
        {
            CsvLine.Split(line, fields);
            rows.Add([.. fields]);
        }

        return rows;
    }
}
