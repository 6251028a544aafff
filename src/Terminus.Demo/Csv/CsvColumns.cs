using System.Text.Json;

namespace Terminus.Demo.Csv;

/// <summary>The columns that a collection in CSV may have, and how their cells become members of a piece document.</summary>
/// <remarks>
/// <c>id</c>, <c>title</c>, <c>object</c> and <c>stated</c> are as in the document. Every other column is a list, its entries parted by
/// <c>|</c>; <c>features.back</c> holds the features of the part "back". Entries of <c>inscriptions</c>, <c>commemorations</c>, <c>records</c>,
/// <c>receipts</c> and <c>adverts</c> are a date, a space and words: <c>1963 sales receipt</c>. <c>absent</c> holds features that were looked
/// for and are not there, <c>patents</c> the patents that marks are known to speak of, <c>receipts</c> records of a sale as new, and
/// <c>replaced</c> the parts that are not original. Empty cells say nothing.
/// </remarks>
internal sealed class CsvColumns
{
    private const char Between = '|';

    private static readonly string[] Plain = ["id", "title", "object", "stated"];

    // The member that a column goes into, the name of its entries' word, and what is said of each entry.
    private static readonly Dictionary<string, Entry> Lists = new(StringComparer.Ordinal)
    {
        ["marks"] = new("marks", "text"),
        ["patents"] = new("marks", "patent"),
        ["features"] = new("features", "feature"),
        ["absent"] = new("features", "feature") { Flag = "absent", Is = true },
        ["subjects"] = new("subjects", "subject"),
        ["makers"] = new("makers", "maker"),
        ["inscriptions"] = new("inscriptions", "text") { HasDate = true },
        ["commemorations"] = new("inscriptions", "text") { HasDate = true, Of = "commemorative" },
        ["records"] = new("records", "what") { HasDate = true },
        ["receipts"] = new("records", "what") { HasDate = true, Flag = "new", Is = true },
        ["adverts"] = new("adverts", "what") { HasDate = true },
        ["replaced"] = new("parts", "part") { Flag = "original", Is = false },
    };

    private readonly int width;
    private readonly List<(int Index, string Member)> plain = [];
    private readonly List<(string Member, List<(int Index, Entry Entry, string? Part)> Columns)> lists = [];

    /// <summary>Finds out what each column holds.</summary>
    /// <param name="header">The names of the columns.</param>
    /// <exception cref="InvalidDataException">A name is not known; the message lists those that are.</exception>
    internal CsvColumns(IReadOnlyList<string> header)
    {
        width = header.Count;
        for (int i = 0; i < width; i++)
        {
            string name = header[i].Trim();
            int dot = name.IndexOf('.', StringComparison.Ordinal);
            if (Plain.Contains(name))
            {
                plain.Add((i, name));
            }
            else if (Lists.TryGetValue(dot < 0 ? name : name[..dot], out Entry? entry))
            {
                Column(entry.Member).Add((i, entry, dot < 0 ? null : name[(dot + 1)..]));
            }
            else
            {
                throw new InvalidDataException(
                    $"The column \"{name}\" is not known; a collection has {string.Join(", ", Plain.Concat(Lists.Keys))}, and lists may name a part, as features.back.");
            }
        }
    }

    /// <summary>Writes a row as a piece document. A cell beyond the header becomes a member that no piece has, so that it is reported.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="cells">The cells of the row.</param>
    internal void Write(Utf8JsonWriter json, string[] cells)
    {
        json.WriteStartObject();
        foreach ((int index, string member) in plain)
        {
            if (index < cells.Length && cells[index] is { Length: > 0 } value)
            {
                json.WriteString(member, value);
            }
        }

        for (int beyond = width; beyond < cells.Length; beyond++)
        {
            json.WriteString(FormattableString.Invariant($"column {beyond + 1}"), cells[beyond]);
        }

        foreach ((string member, List<(int Index, Entry Entry, string? Part)> columns) in lists)
        {
            bool isOpen = false;
            foreach ((int index, Entry entry, string? part) in columns)
            {
                string[] values = index < cells.Length ? cells[index].Split(Between, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) : [];
                foreach (string value in values)
                {
                    if (!isOpen)
                    {
                        json.WriteStartArray(member);
                        isOpen = true;
                    }

                    entry.Write(json, value, part);
                }
            }

            if (isOpen)
            {
                json.WriteEndArray();
            }
        }

        json.WriteEndObject();
    }

    private List<(int Index, Entry Entry, string? Part)> Column(string member)
    {
        int known = lists.FindIndex(l => l.Member == member);
        if (known < 0)
        {
            known = lists.Count;
            lists.Add((member, []));
        }

        return lists[known].Columns;
    }

    private sealed record Entry(string Member, string Word)
    {
        internal bool HasDate { get; init; }

        internal string? Of { get; init; }

        internal string? Flag { get; init; }

        internal bool Is { get; init; }

        internal void Write(Utf8JsonWriter json, string value, string? part)
        {
            json.WriteStartObject();
            int space = HasDate ? value.IndexOf(' ', StringComparison.Ordinal) : -1;
            if (HasDate)
            {
                json.WriteString("date", space < 0 ? value : value[..space]);
            }

            if (!HasDate || space >= 0)
            {
                json.WriteString(Word, value[(space + 1)..].TrimStart());
            }

            if (Of is not null)
            {
                json.WriteString("of", Of);
            }

            if (Flag is not null)
            {
                json.WriteBoolean(Flag, Is);
            }

            if (part is not null)
            {
                json.WriteString("part", part);
            }

            json.WriteEndObject();
        }
    }
}
