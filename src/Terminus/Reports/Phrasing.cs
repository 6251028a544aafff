namespace Terminus;

/// <summary>The words that a listing, a buyer and a catalogue record need, each at the strength that the evidence bears.</summary>
/// <remarks>
/// The day of a patent's issue is never given as the date of a piece. "Circa" is written only where a date that somebody wrote as approximate sets the
/// answer. The look of the words is no promise; the reasons behind them are data.
/// </remarks>
public static class Phrasing
{
    private const int MostInLine = 3;

    /// <summary>
    /// One line for a listing: the years and what they rest on, such as <c>1956–61; cuff fastening patent applied for 1956, granted 1961</c>.
    /// </summary>
    /// <param name="dating">The dated piece.</param>
    public static string ListingLine(PieceDating dating)
    {
        Guard.NotNull(dating, nameof(dating));
        IEnumerable<string> restsOn = dating.Dating.Qualified ? [] : Bearing(dating).Select(e => ReasonText.Of(BriefReasons.Of(e, dating)));
        string line = string.Join(
            "; ", new[] { DisplayDate.Of(dating, brief: true) }.Concat(restsOn.Distinct(StringComparer.Ordinal).Take(MostInLine)));
        return IsDisputed(dating) ? line + "; " + ReasonText.Of(new Reason("brief.disputed")) : line;
    }

    /// <summary>A paragraph for a buyer who asks how you know: the answer, the evidence, what would change it, and the cautions that apply.</summary>
    /// <param name="dating">The dated piece.</param>
    public static string BuyerParagraph(PieceDating dating)
    {
        Guard.NotNull(dating, nameof(dating));
        IEnumerable<Reason> evidence = dating.Dating.Evidence.Select(e => EvidenceReasons.Main(e, dating.Reference));
        IEnumerable<Reason> all = Statement.Reasons(dating)
            .Concat(evidence)
            .Concat(Statement.WhyReasons(dating))
            .Concat(Remarks(dating))
            .Concat(Cautions(dating));
        return string.Join(" ", all.Select(ReasonText.Of).Distinct(StringComparer.Ordinal));
    }

    /// <summary>The date for a catalogue record: what is shown apart from the years that are searched.</summary>
    /// <param name="dating">The dated piece.</param>
    public static MuseumDate MuseumDate(PieceDating dating) => Terminus.MuseumDate.Of(Guard.NotNull(dating, nameof(dating)));

    /// <summary>What the reference file says of a form that was made for a few years only: a fact of its dates, never a valuation.</summary>
    /// <param name="dating">The dated piece.</param>
    public static IReadOnlyList<Reason> Remarks(PieceDating dating) => ValueList.Of(ShortLived.Of(Guard.NotNull(dating, nameof(dating))));

    /// <summary>
    /// The cautions that apply to the piece, where the law or somebody's health may hang on it. They are reminders and no advice; rules change. The
    /// last one always applies: the answer is an opinion.
    /// </summary>
    /// <param name="dating">The dated piece.</param>
    public static IReadOnlyList<Reason> Cautions(PieceDating dating) => ValueList.Of(Terminus.Cautions.Of(Guard.NotNull(dating, nameof(dating))));

    // What sets the ends of the answer, and of the likely one where the answer is open on a side.
    private static IEnumerable<Evidence> Bearing(PieceDating dating)
    {
        IEnumerable<int> items = dating.Interval is { } interval ? Grounds.Setting(dating.Dating, interval) : [];
        if (dating is { Interval: { } open, Likely: { IsAnyDate: false } likely } && (open.EndsToday || open.EarliestYear is null))
        {
            items = items.Concat(Grounds.Setting(dating.Dating, likely));
        }

        return items.Distinct().Select(item => dating.Dating.Evidence[item]);
    }

    private static bool IsDisputed(PieceDating dating)
        => !dating.Dating.Qualified && Statement.SaysDisagreement(dating.Dating);
}
