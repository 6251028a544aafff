using System.Collections.Concurrent;

namespace Terminus;

/// <summary>The answer of a dated piece in sentences, as reasons first and as English from them.</summary>
/// <remarks>
/// The statement never says more than the evidence: it gives years, what is firm apart from what is usual, two levels, and begins with the contradiction
/// where the answer is qualified.
/// </remarks>
public static class Statement
{
    private const int MostDisagreements = 3;

    // What each cause is called.
    private static readonly ConcurrentDictionary<DisagreementCause, string> Causes = new();

    /// <summary>The statement as reasons, in order.</summary>
    /// <param name="dating">The dated piece.</param>
    public static IReadOnlyList<Reason> Reasons(PieceDating dating)
    {
        Guard.NotNull(dating, nameof(dating));
        return ValueList.Of(ReasonDraft.List(draft => Draft(draft, dating)));
    }

    /// <summary>The statement in English.</summary>
    /// <param name="dating">The dated piece.</param>
    public static string Of(PieceDating dating)
    {
        Guard.NotNull(dating, nameof(dating));
        var text = new TextBuffer();
        Draft(new ReasonDraft(reason => ReasonText.AddTo(text, reason)), dating);
        return text.ToString();
    }

    /// <summary>
    /// Why the answer is what it is, as reasons: what sets its two ends and how firmly, what firm evidence alone leaves, what is set aside, and
    /// what would change it.
    /// </summary>
    /// <param name="dating">The dated piece.</param>
    public static IReadOnlyList<Reason> WhyReasons(PieceDating dating) => ValueList.Of(Grounds.Of(Guard.NotNull(dating, nameof(dating))));

    /// <summary>Drafts the reasons of the statement.</summary>
    internal static void Draft(ReasonDraft draft, PieceDating dating)
    {
        if (dating.Dating.Qualified)
        {
            DraftReadings(draft, dating);
        }
        else if (dating is { Interval: { InsidePossible: false } outside, Dating.Possible: { } possible })
        {
            DraftOutside(draft, dating, outside, possible);
        }
        else
        {
            DraftPossible(draft, dating.Dating);
            DraftInterval(draft, dating);
        }

        // The weightiest come first.
        IReadOnlyList<Disagreement> disagreements = dating.Dating.Disagreements;
        for (int i = 0; i < Math.Min(disagreements.Count, MostDisagreements) && IsSaid(disagreements[i], dating.Dating); i++)
        {
            Draft(draft, dating, disagreements[i]);
        }

        for (int i = 0; i < dating.Parts.Count; i++)
        {
            if (!dating.Parts[i].Original)
            {
                draft.Begin("statement.left-out").With("parts", dating.Parts[i].Part).End();
            }
        }
    }

    /// <summary>Whether any disagreement is weighty enough to be said.</summary>
    internal static bool SaysDisagreement(Dating dating) => dating.Disagreements.Count > 0 && IsSaid(dating.Disagreements[0], dating);

    /// <summary>What stands behind an answer: the day of the opinion, the reference and the house defaults.</summary>
    internal static string Behind(PieceDating dating)
        => $"As of {DateText.Words(dating.Dating.AsOfDay)}; reference {string.Join(", ", dating.Reference.Layers)}; "
            + $"assumptions {dating.Dating.Assumptions}.";

    /// <summary>Why two items disagree, and what that usually means.</summary>
    internal static Reason OfDisagreement(PieceDating dating, Disagreement disagreement)
        => ReasonDraft.List(draft => Draft(draft, dating, disagreement))[0];

    /// <summary>Drafts why two items disagree, and what that usually means.</summary>
    internal static void Draft(ReasonDraft draft, PieceDating dating, Disagreement disagreement)
    {
        string first = Name(dating, disagreement.First);
        if (disagreement.Second is { } second)
        {
            draft.Begin("statement.disagreement")
                .With("first", first)
                .With("second", Name(dating, second))
                .Lower("mass", disagreement.Mass)
                .With("level", disagreement.Level == DisagreementLevel.Face ? "at face value" : "in usage only")
                .With("apart", WindowWords.Span(disagreement.DaysApart))
                .With("cause", Causes.GetOrAdd(disagreement.Cause, static cause => ReasonText.TemplateOf("cause." + Words.Kebab(cause))))
                .End();
        }
        else
        {
            draft.Begin("statement.after-opinion").With("first", first).Lower("mass", disagreement.Mass).End();
        }
    }

    /// <summary>A sentence's first letter as a capital.</summary>
    internal static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text.Substring(1);

    private static string Name(PieceDating dating, int item) => EvidenceName.Of(dating.Dating.Evidence[item], dating.Reference);

    private static bool IsSaid(Disagreement disagreement, Dating dating)
        => disagreement.Mass >= dating.Assumptions.SaidFrom - Combination.Tolerance;

    private static void DraftReadings(ReasonDraft draft, PieceDating piece)
    {
        Dating dating = piece.Dating;
        draft.Begin("statement.qualified").Lower("conflict", dating.Conflict).End();
        string[] orders = ["First", "Second"];
        foreach ((Reading reading, string order) in dating.Readings.Take(orders.Length).Zip(orders, (reading, order) => (reading, order)))
        {
            draft.Begin("statement.reading")
                .With("order", order)
                .With("window", WindowWords.YearsUpTo(reading.Window, dating.AsOfDay))
                .With("weight", reading.Weight is { } weight ? " (weight " + WindowWords.Lower(weight) + ")" : "")
                .With("keeps", Names(piece, reading.Items))
                .With("setAside", Names(piece, reading.SetAside))
                .End();
        }
    }

    private static void DraftPossible(ReasonDraft draft, Dating dating)
    {
        if (dating.Stated.Windows == 0)
        {
            return;
        }

        DateWindow possible = dating.Possible!.Value;
        bool ends = possible.LastDay != dating.AsOfDay;
        _ = (possible.FirstDay != DayNumber.Open, ends) switch
        {
            (true, true) => draft.Begin("statement.possible").Year("from", possible.FirstDay).Year("until", possible.LastDay),
            (true, false) => draft.Begin("statement.not-before").Year("year", possible.FirstDay),
            (false, true) => draft.Begin("statement.not-after").Year("year", possible.LastDay),
            _ => draft.Begin("statement.usage-only"),
        };
        draft.End();
    }

    private static void DraftInterval(ReasonDraft draft, PieceDating dating)
    {
        if (dating.Interval is not { } interval || dating.Likely is not { } likely)
        {
            return;
        }

        bool isFirm = interval.Window == dating.Dating.Possible;
        _ = (interval.IsAnyDate, likely.IsAnyDate, AreOneToTheYear(interval, likely)) switch
        {
            (true, true, _) => draft.Begin("statement.any-date").Share("confidence", Dating.LikelyLevel),
            (true, _, _) => draft.Begin("statement.any-date-but-likely").Share("confidence", dating.Confidence).Likely(likely),

            // Of a window open on one side that firm evidence gives, the years are said already.
            (_, _, true) when isFirm && OpenSide(interval) is { } side => draft.Begin("statement.open").With("side", side).Share("confidence", dating.Confidence),
            _ when isFirm && OpenSide(interval) is { } side
                => draft.Begin("statement.open-and-likely").With("side", side).Share("confidence", dating.Confidence).Likely(likely),
            (_, _, true) => draft.Begin("statement.interval").Interval(dating, interval),
            _ => draft.Begin("statement.interval-and-likely").Interval(dating, interval).Likely(likely),
        };
        draft.End();
    }

    // An answer that firm evidence contradicts is never given before what firm evidence says.
    private static void DraftOutside(ReasonDraft draft, PieceDating dating, DatedInterval interval, DateWindow possible)
    {
        bool saysLikely = dating.Likely is { IsAnyDate: false } narrower && !AreOneToTheYear(interval, narrower);
        draft.Begin(saysLikely ? "statement.outside-possible-but-likely" : "statement.outside-possible")
            .With("possible", WindowWords.YearsUpTo(possible, dating.Dating.AsOfDay))
            .Years("years", interval)
            .Share("confidence", dating.Confidence);
        (saysLikely ? draft.Likely(dating.Likely!) : draft).End();
    }

    private static ReasonDraft Interval(this ReasonDraft draft, PieceDating dating, DatedInterval interval)
        => draft.Capital("likelihood", Likelihood.Of(dating.Confidence))
            .Years("years", interval)
            .Share("confidence", dating.Confidence);

    private static ReasonDraft Likely(this ReasonDraft draft, DatedInterval likely)
        => draft.With("likelyWord", Likelihood.Of(Dating.LikelyLevel))
            .Years("likely", likely)
            .Share("likelyConfidence", Dating.LikelyLevel);

    private static string? OpenSide(DatedInterval interval)
        => interval.EndsToday ? "latest" : interval.EarliestYear is null ? "earliest" : null;

    private static bool AreOneToTheYear(DatedInterval interval, DatedInterval likely)
        => (interval.EarliestYear, interval.EndsToday) == (likely.EarliestYear, likely.EndsToday)
            && (interval.EndsToday || interval.LatestYear == likely.LatestYear);

    private static string Names(PieceDating dating, IReadOnlyList<int> items)
        => items.Count == 0 ? "nothing" : string.Join(", ", items.Select(item => Name(dating, item)));
}
