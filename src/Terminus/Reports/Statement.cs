namespace Terminus;

/// <summary>The answer of a dated piece in sentences, as reasons first and as English from them.</summary>
/// <remarks>
/// The statement never says more than the evidence: it gives years, what is firm apart from what is usual, two levels, and begins with the contradiction
/// where the answer is qualified.
/// </remarks>
public static class Statement
{
    /// <summary>The statement as reasons, in order.</summary>
    /// <param name="dating">The dated piece.</param>
    public static IReadOnlyList<Reason> Reasons(PieceDating dating)
    {
        Guard.NotNull(dating, nameof(dating));
        var said = new List<Reason>();
        if (dating.Dating.Qualified)
        {
            AddReadings(said, dating.Dating);
        }
        else
        {
            AddPossible(said, dating.Dating);
        }

        AddInterval(said, dating);
        foreach (Disagreement disagreement in dating.Dating.Disagreements.Where(d => d.Mass >= dating.Dating.Assumptions.SaidFrom - Combination.Tolerance).Take(3))
        {
            said.Add(OfDisagreement(dating.Dating, disagreement));
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

    /// <summary>Why two items disagree, and what that usually means.</summary>
    internal static Reason OfDisagreement(Dating dating, Disagreement disagreement)
        => disagreement.Second is { } second
            ? new Reason(
                "statement.disagreement",
                "first", Capital(NameOf(dating.Evidence[disagreement.First])),
                "second", NameOf(dating.Evidence[second]),
                "mass", WindowWords.Share(disagreement.Mass),
                "level", disagreement.Level == DisagreementLevel.Face ? "at face value" : "in usage only",
                "apart", WindowWords.Span(disagreement.DaysApart),
                "cause", ReasonText.Of(CauseReason(disagreement.Cause)))
            : new Reason(
                "statement.after-opinion", "first", Capital(NameOf(dating.Evidence[disagreement.First])), "mass", WindowWords.Share(disagreement.Mass));

    /// <summary>A short name for an item, with its part: <c>the pin (cuff.snap_apart)</c>.</summary>
    internal static string NameOf(Evidence evidence)
    {
        string name = evidence switch
        {
            PatentIssued e => "the patent mark" + Bracket(e.Number),
            PatentPending e => "the pending mark" + Bracket(e.Number),
            RightRegistered e => "the registration mark" + Bracket(e.Number),
            FeatureSeen e => "the feature " + e.Feature,
            MarkInUse e => "the wording " + e.Wording,
            SubjectShown e => "the subject " + e.Subject,
            DateInscribed => "the inscribed date",
            KnownBy e => e.What ?? "the record",
            MakerActive e => "the maker " + e.Maker,
            ModelAdvertised => "the advertisements",
            Opinion e => "the opinion" + (e.By is null ? "" : " of " + e.By),
            _ => evidence.Kind,
        };
        return evidence.Part is null ? name : name + " on the " + evidence.Part;
    }

    private static void AddReadings(List<Reason> said, Dating dating)
    {
        said.Add(new Reason("statement.qualified", "conflict", WindowWords.Share(dating.Conflict)));
        string[] orders = ["First", "Second"];
        foreach ((Reading reading, string order) in dating.Readings.Take(orders.Length).Zip(orders, (reading, order) => (reading, order)))
        {
            said.Add(new Reason(
                "statement.reading",
                "order", order,
                "window", YearsUpTo(reading.Window, dating.AsOfDay),
                "weight", reading.Weight is { } weight ? " (weight " + WindowWords.Share(weight) + ")" : "",
                "keeps", Names(dating, reading.Items),
                "setAside", Names(dating, reading.SetAside)));
        }
    }

    private static void AddPossible(List<Reason> said, Dating dating)
    {
        DateWindow possible = dating.Possible!.Value;
        bool ends = possible.LastDay != dating.AsOfDay;
        if (possible.FirstDay == DayNumber.Open)
        {
            said.Add(ends
                ? new Reason("statement.not-after", "year", WindowWords.YearOf(possible.LastDay))
                : new Reason("statement.usage-only"));
        }
        else
        {
            said.Add(ends
                ? new Reason("statement.possible", "from", WindowWords.YearOf(possible.FirstDay), "until", WindowWords.YearOf(possible.LastDay))
                : new Reason("statement.not-before", "year", WindowWords.YearOf(possible.FirstDay)));
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
                "statement.any-date-but-likely", "confidence", confidence, "likelyWord", likelyWord, "likely", narrower, "likelyConfidence", likelyConfidence),
            (_, _, true) => new Reason("statement.interval", "likelihood", likelihood, "years", years, "confidence", confidence),
            _ => new Reason(
                "statement.interval-and-likely",
                "likelihood", likelihood, "years", years, "confidence", confidence,
                "likelyWord", likelyWord, "likely", narrower, "likelyConfidence", likelyConfidence),
        });
        if (!interval.InsidePossible && !dating.Dating.Qualified && dating.Dating.Possible is { } possible)
        {
            said.Add(new Reason("statement.outside-possible", "possible", YearsUpTo(possible, dating.Dating.AsOfDay)));
        }
    }

    private static string YearsUpTo(DateWindow window, int asOf)
        => WindowWords.Years(window.LastDay == asOf ? DateWindow.OfDays(window.FirstDay, DayNumber.Open) : window);

    private static Reason CauseReason(DisagreementCause cause) => new("cause." + Words.Kebab(cause.ToString()));

    private static string Names(Dating dating, IReadOnlyList<int> items)
        => items.Count == 0 ? "nothing" : string.Join(", ", items.Select(i => NameOf(dating.Evidence[i])));

    private static string Bracket(string? number) => number is null ? "" : " " + number;

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text.Substring(1);
}
