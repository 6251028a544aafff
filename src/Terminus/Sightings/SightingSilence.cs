using NodaTime;

namespace Terminus;

/// <summary>
/// Whether a silence after the last sighting, or before the first, means that the feature had gone out, or had not come in: how likely so
/// long a silence is while the feature is about and the search goes on as before.
/// </summary>
/// <remarks>
/// A small probability speaks for an end; a large one says that nothing is shown. Every figure is the larger of those with all the
/// sightings as early and as late as their dates allow, so that the silence never looks longer than it was.
/// </remarks>
public sealed record SightingSilence
{
    private SightingSilence(SightingEnd end, LocalDate searchedTo, int sources)
    {
        End = end;
        SearchedTo = searchedTo;
        Sources = sources;
    }

    /// <summary>Whether the silence is before the first sighting or after the last.</summary>
    public SightingEnd End { get; }

    /// <summary>The day up to which, or back to which, sources were searched without a sighting.</summary>
    public LocalDate SearchedTo { get; }

    /// <summary>How many independent sources the sightings come from.</summary>
    public int Sources { get; }

    /// <summary>
    /// The probability where sightings come at a constant rate (Solow 1993, Ecology 74:962-964). Null where refused or where all sightings
    /// may fall on one day.
    /// </summary>
    public double? AtConstantRate { get; private init; }

    /// <summary>
    /// The probability where sightings grow rarer towards the end exponentially (Solow 1993, J. Math. Biol. 32:79-82). Null where
    /// refused or for fewer than three sources.
    /// </summary>
    public double? AtFallingRate { get; private init; }

    /// <summary>
    /// The probability from the gap next to the end alone (Solow and Roberts 2003, Ecology 84:1329-1332), which holds for any rate that
    /// is steady near the end. Null where refused.
    /// </summary>
    public double? ByLastGap { get; private init; }

    /// <summary>Why there is no answer, or null where there is one.</summary>
    public Reason? Refusal { get; private init; }

    /// <summary>Whether the sightings were refused; <see cref="Refusal"/> says why.</summary>
    public bool IsRefused => Refusal is not null;

    /// <summary>Judges the silence beyond one end of a feature's sightings.</summary>
    /// <param name="sightings">Sightings of one feature, in any order. Each needs a date with two closed ends.</param>
    /// <param name="end">Whether the silence is before the first sighting or after the last.</param>
    /// <param name="searchedTo">The day up to which, or back to which, sources were searched as before without a sighting.</param>
    /// <returns>The probabilities, or a refusal that says why.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The end is none of the names of its enum.</exception>
    public static SightingSilence Of(IEnumerable<Sighting> sightings, SightingEnd end, LocalDate searchedTo)
    {
        Sighting[] given = [.. Guard.NotNull(sightings, nameof(sightings))];
        Guard.Named(end is SightingEnd.First or SightingEnd.Last, end, nameof(end));
        if (Estimation.Unusable(given) is { } unusable)
        {
            return new SightingSilence(end, searchedTo, 0) { Refusal = unusable };
        }

        SightingRecord record = SightingRecord.Of(given, end);
        var silence = new SightingSilence(end, searchedTo, record.Sources);
        double searched = record.TimeOf(DayNumber.Of(searchedTo));
        if (record.Sources < 2)
        {
            return silence with { Refusal = new Reason("sightings.few") };
        }

        return searched >= record.EarliestOfFirst
            ? silence with { Refusal = new Reason("sightings.no-silence", "searched", DateText.Iso(searchedTo)) }
            : silence.With(record, searched);
    }

    private SightingSilence With(SightingRecord record, double searched) => this with
    {
        AtConstantRate = Larger(Constant(record.Earliest, searched), Constant(record.Latest, searched)),
        AtFallingRate = Larger(Falling(record.Earliest, searched), Falling(record.Latest, searched)),
        ByLastGap = SilenceFormulas.ByLastGap(-record.WidestGap, record.EarliestOfFirst, -searched),
    };

    /// <summary>The sighting farthest from the end marks the start of the record and is not counted.</summary>
    private static double? Constant(double[] times, double searched)
    {
        double start = times[^1];
        return start > times[0] ? SilenceFormulas.AtConstantRate(times.Length - 1, start - times[0], start - searched) : null;
    }

    private static double? Falling(double[] times, double searched)
    {
        double start = times[^1];
        if (times.Length < 3 || start <= times[0])
        {
            return null;
        }

        long sum = times.Sum(t => (long)(start - t));
        return SilenceFormulas.AtFallingRate(times.Length - 1, sum, (long)(start - times[0]), (long)(start - searched));
    }

    private static double? Larger(double? one, double? other) => one is { } a && other is { } b ? Math.Max(a, b) : null;
}
