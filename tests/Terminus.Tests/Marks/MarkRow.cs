using System.Text.Json;

namespace Terminus.Tests.Marks;

/// <summary>One row of the inscriptions that were gathered or invented, with a careful reading of it.</summary>
/// <remarks>Source: the column source_or_invented of TestData/marks/inscriptions.csv, row by row.</remarks>
public sealed record MarkRow(string Text, string Category, JsonElement Parsed)
{
    internal static IReadOnlyList<MarkRow> All { get; } = [.. TestTable.Rows("marks", "inscriptions.csv")
        .Select(f => new MarkRow(f[0], f[1], JsonDocument.Parse(f[2]).RootElement))];

    internal static IReadOnlyDictionary<string, string> Disagreements { get; } =
        TestTable.Rows("marks", "disagreements.csv").ToDictionary(f => f[0], f => f[1], StringComparer.Ordinal);

    internal IReadOnlyList<string> Numbers => Strings("number");

    internal IReadOnlyList<string> Dates => Strings("date");

    internal string? Office => Parsed.GetProperty("office").GetString();

    private string Right => Parsed.GetProperty("kind").GetString()!;

    private bool IsApplied => Parsed.GetProperty("status").GetString() == "applied";

    /// <summary>The kinds of mark that say what the row says.</summary>
    internal MarkKind[] Kinds => Right switch
    {
        "patent" or "reissue" when IsApplied => [MarkKind.Pending],
        "patent" or "reissue" when Numbers.Count > 0 => [MarkKind.PatentNumber],
        "patent" or "reissue" when Dates.Count > 0 || Category == "bad date" => [MarkKind.PatentDate],
        "patent" or "reissue" => [MarkKind.PatentWord],
        "design" when IsApplied => [MarkKind.DesignPending],
        "design" when Numbers.Count > 0 => [MarkKind.DesignNumber],
        "design" when Dates.Count > 0 => [MarkKind.PatentDate],
        "design" => [MarkKind.RegisteredDesign, MarkKind.Protected],
        "registered design" when Category == "registry diamond" => [MarkKind.RegistryDiamond],
        "registered design" => [MarkKind.RegisteredDesign],
        "utility model" => [MarkKind.UtilityModel],
        "trade mark" => [MarkKind.TradeMark],
        "copyright" => [MarkKind.Copyright],
        "origin" => [MarkKind.Origin],
        "metal" => [MarkKind.Metal],
        _ => [MarkKind.Other, MarkKind.TradeMark],
    };

    /// <summary>What a reading has wrong beside the row, or nothing.</summary>
    internal IReadOnlyList<string> Faults(Inscription read, bool withOffice = false)
    {
        var faults = new List<string>();
        bool silent = Right == "unknown" && Numbers.Count == 0 && Dates.Count == 0 && read.Marks.Count == 0;
        if (!silent && !read.Marks.Any(m => Kinds.Contains(m.Kind)))
        {
            faults.Add("kind: " + string.Join(", ", read.Marks.Select(m => m.KindName)));
        }

        List<string?> numbers = [.. read.Marks.Select(m => m.Number?.Replace('?', 'X'))];
        List<string?> dates = [.. read.Marks.Select(m => m.Date)];
        faults.AddRange(Numbers.Where(n => !numbers.Contains(n)).Select(n => "number " + n + " not read"));
        faults.AddRange(Dates.Where(d => !dates.Contains(d)).Select(d => "date " + d + " not read"));
        faults.AddRange(read.Marks
            .Where(m => m.Kind is not (MarkKind.Other or MarkKind.DesignNumber) && m.Number is { } n && !Numbers.Contains(n.Replace('?', 'X')))
            .Select(m => "number " + m.Number + " is not there"));
        faults.AddRange(read.Marks
            .Where(m => m.Kind != MarkKind.Other && m.Date is { } d && !Dates.Contains(d))
            .Select(m => "date " + m.Date + " is not there"));
        if (withOffice && Office is { } office && office[^1] != '?' && !read.Marks.Any(m => m.Office == office))
        {
            faults.Add("office " + office + " not read");
        }

        return faults;
    }

    private List<string> Strings(string name)
    {
        JsonElement value = Parsed.GetProperty(name);
        return value.ValueKind switch
        {
            JsonValueKind.Null => [],
            JsonValueKind.Array => [.. value.EnumerateArray().Select(v => v.GetString()!)],
            _ => [value.GetString()!],
        };
    }

    public override string ToString() => Text;
}
