namespace Terminus;

/// <summary>
/// What the document behind a number is called: the identifier by which any patent library finds it, and the ways records write it.
/// </summary>
/// <remarks>
/// Codes of offices follow WIPO standard ST.3 and kinds of document ST.16. From the first issue of 2001 (2 January) US patents carry
/// B1 (no earlier publication) or B2, designs S1, reissues E1 and plant patents P2 or P3. Kinds of offices other than US and GB are
/// common practice, no source.
/// </remarks>
internal static class DocumentNames
{
    private static readonly int NewKinds = DayNumber.Of(2001, 1, 1);

    /// <summary>The identifiers, the likeliest first; empty where the right has no document of its own.</summary>
    internal static IReadOnlyList<string> Ids(string office, string right, int number, string series, DateWindow window)
    {
        string stem = Stem(office, right, number, series);
        return stem.Length == 0 ? [] : ValueList.Of(Kinds(office, right, number, window).Select(k => stem + k));
    }

    /// <summary>The ways to write the number on a record, the fullest first.</summary>
    internal static IReadOnlyList<string> Writings(string office, string right, int number, string series, DateWindow window)
    {
        string grouped = Grouped(number);
        bool yearly = IsYear(series);
        var writings = new List<string>
        {
            office + " " + Words(right) + " " + (yearly ? DateText.Digits(number) + " of " + series : grouped),
        };
        if (yearly)
        {
            writings.Add("No. " + DateText.Digits(number) + " of " + series);
            writings.Add(DateText.Digits(number) + "/" + series[2] + series[3]);
        }
        else if (office == "US")
        {
            writings.Add("U.S. " + Title(right) + " No. " + grouped);
            writings.Add("US " + Prefix(right) + grouped);
        }
        else
        {
            writings.Add(right == "registered-design" ? "Rd No " + DateText.Digits(number) : office + " " + DateText.Digits(number));
        }

        writings.AddRange(Ids(office, right, number, series, window));
        return ValueList.Of(writings.Distinct());
    }

    private static string Stem(string office, string right, int number, string series)
        => (office, right) switch
        {
            ("US", "trade-mark" or "x-patent") or (_, "registered-design") => "",
            ("US", _) => "US" + Prefix(right) + DateText.Digits(number),
            _ when IsYear(series) => office + series + DateText.Digits(number).PadLeft(5, '0'),
            _ => office + DateText.Digits(number),
        };

    private static IEnumerable<string> Kinds(string office, string right, int number, DateWindow window)
        => office == "US" ? UnitedStates(right, window)
            : (office, right, number) switch
            {
                (_, "utility-model", _) => ["U"],
                ("DE", _, < 1_000_000) => ["C"],
                ("DE", _, < 1_400_001) => ["B"],
                ("DE", _, _) => ["A1", "B2", "C2"],
                ("GB", _, > 2_000_000) => ["A", "B"],
                ("FR", _, > 2_000_000) => ["A1", "B1"],
                ("CA", _, >= 2_000_000) => ["A1", "C"],
                ("AT", _, _) => ["B"],
                _ => ["A"],
            };

    private static IEnumerable<string> UnitedStates(string right, DateWindow window)
    {
        bool old = window.Low < NewKinds;
        bool young = window.High >= NewKinds;
        (string before, string[] since) = right switch
        {
            "design" => ("S", new[] { "S1" }),
            "reissue" => ("E", ["E1"]),
            "plant" => ("P", ["P2", "P3"]),
            _ => ("A", ["B2", "B1"]),
        };
        return [.. old ? new[] { before } : [], .. young ? since : []];
    }

    private static string Prefix(string right)
        => right switch
        {
            "design" => "D",
            "reissue" => "RE",
            "plant" => "PP",
            "x-patent" => "X",
            _ => "",
        };

    private static string Title(string right)
        => right switch
        {
            "design" => "Design Patent",
            "reissue" => "Reissue Patent",
            "plant" => "Plant Patent",
            "trade-mark" => "Trade-Mark Registration",
            "x-patent" => "Patent X",
            _ => "Patent",
        };

    private static string Words(string right)
        => right switch
        {
            "utility" => "patent",
            "design" => "design patent",
            "plant" => "plant patent",
            "x-patent" => "X-patent",
            _ => right.Replace('-', ' '),
        };

    private static bool IsYear(string series) => series.Length == 4 && series.All(c => c is >= '0' and <= '9');

    private static string Grouped(int number) => number.ToString("N0", System.Globalization.CultureInfo.InvariantCulture);
}
