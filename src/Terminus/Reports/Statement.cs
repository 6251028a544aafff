namespace Terminus;

/// <summary>The answer of a dated piece in sentences, as reasons first and as English from them.</summary>
/// <remarks>
/// The statement never says more than the evidence: it gives years, what is firm apart from what is usual, two levels, and begins with the contradiction
/// where the answer is qualified.
/// </remarks>
public static class Statement
{
    private const int MostDisagreements = 3;

    /// <summary>The statement as reasons, in order.</summary>
    /// <param name="dating">The dated piece.</param>
    public static IReadOnlyList<Reason> Reasons(PieceDating dating)
    {
        Guard.NotNull(dating, nameof(dating));
        var said = new List<Reason>();
        if (dating.Dating.Qualified)
        {
            AddReadings(said, dating);
        }
        else
        {
            AddPossible(said, dating.Dating);
            AddInterval(said, dating);
        }

        foreach (Disagreement disagreement in Said(dating.Dating).Take(MostDisagreements))
        {
            said.Add(OfDisagreement(dating, disagreement));
        }

        foreach (PartDating part in dating.Parts.Where(p => !p.Original))
        {
            said.Add(new Reason("statement.left-out", "parts", part.Part));
        }

        return ValueList.Of(said);
    }

    /// <summary>The statement in English.</summary>
    /// <param name="dating">The dated piece.</param>
    public static string Of(PieceDating dating) => string.Join(" ", Reasons(dating).Select(ReasonText.Of));

    /// <summary>
    /// Why the answer is what it is, as reasons: what sets its two ends and how firmly, what firm evidence alone leaves, what is set aside, and
    /// what would change it.
    /// </summary>
    /// <param name="dating">The dated piece.</param>
    public static IReadOnlyList<Reason> WhyReasons(PieceDating dating) => ValueList.Of(Grounds.Of(Guard.NotNull(dating, nameof(dating))));

    /// <summary>The disagreements that are weighty enough to be said.</summary>
    internal static IEnumerable<Disagreement> Said(Dating dating)
        => dating.Disagreements.Where(d => d.Mass >= dating.Assumptions.SaidFrom - Combination.Tolerance);

    /// <summary>What stands behind an answer: the day of the opinion, the reference and the house defaults.</summary>
    internal static string Behind(PieceDating dating)
        => $"As of {DateText.Words(dating.Dating.AsOfDay)}; reference {string.Join(", ", dating.Reference.Layers)}; "
            + $"assumptions {dating.Dating.Assumptions}.";

    /// <summary>Why two items disagree, and what that usually means.</summary>
    internal static Reason OfDisagreement(PieceDating dating, Disagreement disagreement)
    {
        string first = Name(dating, disagreement.First);
        return disagreement.Second is { } second
            ? new Reason(
                "statement.disagreement",
                "first", first,
                "second", Name(dating, second),
                "mass", WindowWords.Lower(disagreement.Mass),
                "level", disagreement.Level == DisagreementLevel.Face ? "at face value" : "in usage only",
                "apart", WindowWords.Span(disagreement.DaysApart),
                "cause", ReasonText.Of(CauseReason(disagreement.Cause)))
            : new Reason("statement.after-opinion", "first", first, "mass", WindowWords.Lower(disagreement.Mass));
    }

    /// <summary>A sentence's first letter as a capital.</summary>
    internal static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text.Substring(1);

    private static string Name(PieceDating dating, int item) => EvidenceName.Of(dating.Dating.Evidence[item], dating.Reference);

    private static void AddReadings(List<Reason> said, PieceDating piece)
    {
        Dating dating = piece.Dating;
        said.Add(new Reason("statement.qualified", "conflict", WindowWords.Lower(dating.Conflict)));
        string[] orders = ["First", "Second"];
        foreach ((Reading reading, string order) in dating.Readings.Take(orders.Length).Zip(orders, (reading, order) => (reading, order)))
        {
            said.Add(new Reason(
                "statement.reading",
                "order", order,
                "window", WindowWords.YearsUpTo(reading.Window, dating.AsOfDay),
                "weight", reading.Weight is { } weight ? " (weight " + WindowWords.Lower(weight) + ")" : "",
                "keeps", Names(piece, reading.Items),
                "setAside", Names(piece, reading.SetAside)));
        }
    }

    private static void AddPossible(List<Reason> said, Dating dating)
    {
        DateWindow possible = dating.Possible!.Value;
        bool ends = possible.LastDay != dating.AsOfDay;
        if (possible.FirstDay == DayNumber.Open)
        {
            said.Add(ends
                ? new Reason("statement.not-after", "year", DateText.YearOf(possible.LastDay))
                : new Reason("statement.usage-only"));
        }
        else
        {
            said.Add(ends
                ? new Reason("statement.possible", "from", DateText.YearOf(possible.FirstDay), "until", DateText.YearOf(possible.LastDay))
                : new Reason("statement.not-before", "year", DateText.YearOf(possible.FirstDay)));
        }

        if (dating.Evidence.All(e => e.StatedWindows(dating.Assumptions).Count == 0))
        {
            said.Clear();
        }
    }

    private static void AddInterval(List<Reason> said, PieceDating dating)
    {
        if (dating.Interval is not { } interval || dating.Likely is not { } likely)
        {
            return;
        }

        string confidence = WindowWords.Share(dating.Confidence);
        string likelyConfidence = WindowWords.Share(Dating.LikelyLevel);
        string years = WindowWords.Years(interval);
        string narrower = WindowWords.Years(likely);
        string likelyWord = Likelihood.Of(Dating.LikelyLevel);
        string likelihood = Capital(Likelihood.Of(dating.Confidence));
        said.Add((interval.IsAnyDate, likely.IsAnyDate, years == narrower) switch
        {
            (true, true, _) => new Reason("statement.any-date", "confidence", likelyConfidence),
            (true, _, _) => new Reason(
                "statement.any-date-but-likely",
                "confidence", confidence, "likelyWord", likelyWord, "likely", narrower, "likelyConfidence", likelyConfidence),
            (_, _, true) => new Reason("statement.interval", "likelihood", likelihood, "years", years, "confidence", confidence),
            _ => new Reason(
                "statement.interval-and-likely",
                "likelihood", likelihood, "years", years, "confidence", confidence,
                "likelyWord", likelyWord, "likely", narrower, "likelyConfidence", likelyConfidence),
        });
        if (!interval.InsidePossible && dating.Dating.Possible is { } possible)
        {
            said.Add(new Reason("statement.outside-possible", "possible", WindowWords.YearsUpTo(possible, dating.Dating.AsOfDay)));
        }
    }

    private static Reason CauseReason(DisagreementCause cause) => new("cause." + Words.Kebab(cause.ToString()));

    private static string Names(PieceDating dating, IReadOnlyList<int> items)
        => items.Count == 0 ? "nothing" : string.Join(", ", items.Select(item => Name(dating, item)));
}
