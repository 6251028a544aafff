namespace Terminus;

/// <summary>Cautions, each tied to what the piece shows or is called. They are reminders, no advice: rules differ between countries and change.</summary>
/// <remarks>
/// <para>Sources of the facts behind them. Ivory: a ban on dealing with exemptions by age, in force in the United Kingdom since 6 June 2022 (British Antique
/// Dealers' Association, antique ivory). Cellulose nitrate: Canadian Conservation Institute, Note 15/3. Radium: US Environmental Protection
/// Agency, radioactivity in antiques. False marking: 35 USC 292. "Antique": customs heading 9706, over 100 years. Lead: press and trade
/// warnings of old cheap jewellery. Tortoiseshell, and that a metal mark is a claim and no test: common practice, no source.</para>
/// <para>Materials are known by whole words of ids, names and groups of the entries seen, and of the piece's title and kind.</para>
/// </remarks>
internal static class Cautions
{
    private static readonly (string Rule, string[] Words)[] Materials =
    [
        ("caution.ivory", ["ivory", "scrimshaw"]),
        ("caution.tortoiseshell", ["tortoiseshell"]),
        ("caution.cellulose-nitrate", ["celluloid", "nitrate", "xylonite", "early_cellulose_plastic", "cellulose_one_piece"]),
        ("caution.radium", ["radium", "luminous"]),
        ("caution.lead", ["lead", "pewter"]),
        ("caution.precious-metal", ["gold", "silver", "platinum", "sterling"]),
    ];

    internal static IEnumerable<Reason> Of(PieceDating dating)
    {
        HashSet<string> words = Words(dating);
        foreach ((string rule, string[] any) in Materials)
        {
            if (any.Any(words.Contains))
            {
                yield return new Reason(rule);
            }
        }

        if (dating.Dating.Evidence.Concat(dating.LeftOut).Any(e => e is RightEvidence))
        {
            yield return new Reason("caution.patent-status");
        }

        if (dating.OverHundredYears.Verdict == AgeVerdict.Yes)
        {
            yield return new Reason("caution.over-hundred");
        }
        else if (words.Contains("antique"))
        {
            yield return new Reason("caution.antique");
        }

        yield return new Reason("caution.opinion");
    }

    private static HashSet<string> Words(PieceDating dating)
    {
        var words = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        Add(words, dating.Piece.Title);
        Add(words, dating.Piece.ObjectKind);
        foreach (PieceMark mark in dating.Piece.Marks)
        {
            Add(words, mark.Text);
        }

        foreach (string entry in dating.Dating.Evidence.Concat(dating.LeftOut).SelectMany(e => e.Entries))
        {
            Add(words, entry);
            words.Add(entry.Substring(entry.LastIndexOf('.') + 1));
            Add(words, dating.Reference.Feature(entry)?.Name);
            Add(words, dating.Reference.Feature(entry)?.Group);
        }

        return words;
    }

    private static void Add(HashSet<string> words, string? text)
    {
        int start = 0;
        for (int i = 0; text is not null && i <= text.Length; i++)
        {
            if (i == text.Length || !char.IsLetter(text[i]))
            {
                words.Add(text.Substring(start, i - start));
                start = i + 1;
            }
        }
    }
}
