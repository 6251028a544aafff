using NodaTime;

namespace Terminus;

/// <summary>
/// When a feature came in or went out, as far as its dated sightings tell, or the reason why they do not.
/// </summary>
/// <remarks>
/// A refusal is an answer, not an error: few sightings are normal. A refused estimate has no estimator, point, bound or windows.
/// The sightings are first brought down to independent sources: of each source only the one nearest to the end counts. They are taken as
/// true. Every confidence is that of the estimator where its assumption holds.
/// </remarks>
public sealed record SightingEstimate
{
    internal SightingEstimate(SightingEnd end, SightingMethod method, double confidence)
    {
        End = end;
        Method = method;
        Confidence = confidence;
    }

    /// <summary>The end that was asked for.</summary>
    public SightingEnd End { get; }

    /// <summary>The method that was asked for.</summary>
    public SightingMethod Method { get; }

    /// <summary>The confidence that was asked for, above 0 and at most 1.</summary>
    public double Confidence { get; }

    /// <summary>How many sightings were given.</summary>
    public int Given { get; internal init; }

    /// <summary>How many independent sources they come from: the number that the estimators count.</summary>
    public int Sources { get; internal init; }

    /// <summary>
    /// The window in which the extreme sighting lies, the earliest or the latest: the end of the feature's time is not inside what
    /// was seen. Null where the sightings cannot be ordered.
    /// </summary>
    public DateWindow? Extreme { get; internal init; }

    /// <summary>Why there is no estimate, or null where there is one.</summary>
    public Reason? Refusal { get; internal init; }

    /// <summary>Whether the sightings were refused; <see cref="Refusal"/> says why.</summary>
    public bool IsRefused => Refusal is not null;

    /// <summary>The estimator that was used, or null where the sightings were refused.</summary>
    public SightingEstimator? Estimator { get; internal init; }

    /// <summary>Whether the bound only comes near its confidence: true of the optimal linear estimator.</summary>
    public bool IsApproximate => Estimator == SightingEstimator.OptimalLinear;

    /// <summary>
    /// The single best guess of the day: one day where all sightings are dated to the day, else from the guess with all of them at their
    /// earliest to the guess with all at their latest. Null where refused, or outside the calendar.
    /// </summary>
    public DateWindow? Point { get; internal init; }

    /// <summary>
    /// The day on or after which the feature came in, or on or before which it went out, with the confidence asked for. Rounded
    /// outwards to a whole day. Null where refused, or outside the calendar.
    /// </summary>
    public LocalDate? Bound { get; internal init; }

    /// <summary>
    /// When a piece that shows the feature was made, widest first, at 0.98, 0.95, 0.9, 0.8, 0.66 and 0.5: not before the day on which the
    /// feature came in, or not after the day on which it went out. Empty where refused and for the optimal linear estimator.
    /// </summary>
    public IReadOnlyList<StatedWindow> Windows { get; internal init => field = ValueList.Of(value); } = ValueList<StatedWindow>.Empty;

    /// <summary>
    /// When the feature itself came in or went out, at the same confidences: from the bound to the extreme sighting, or the reverse. What a
    /// reference file can state as introduced or gone.
    /// </summary>
    public IReadOnlyList<StatedWindow> EndWindows { get; internal init => field = ValueList.Of(value); } = ValueList<StatedWindow>.Empty;

    /// <summary>How the answer was reached and what it rests on, the refusal included.</summary>
    public IReadOnlyList<Reason> Reasons { get; internal init => field = ValueList.Of(value); } = ValueList<Reason>.Empty;

    /// <summary>Estimates one end of a feature's time from its sightings.</summary>
    /// <param name="sightings">Sightings of one feature, in any order. Each needs a date with two closed ends.</param>
    /// <param name="end">Whether to estimate when the feature came in or when it went out.</param>
    /// <param name="method">What is known of how it did.</param>
    /// <param name="confidence">The confidence of the bound, above 0 and at most 1; 1 is refused, because no sightings give it.</param>
    /// <returns>The estimate, or a refusal that says why.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The confidence is outside its range, or an enum value is none of its names.
    /// </exception>
    public static SightingEstimate Of(
        IEnumerable<Sighting> sightings,
        SightingEnd end,
        SightingMethod method = SightingMethod.Auto,
        double confidence = 0.9)
    {
        Sighting[] given = [.. Guard.NotNull(sightings, nameof(sightings))];
        Guard.Level(confidence, nameof(confidence));
        Guard.Named(end is SightingEnd.First or SightingEnd.Last, end, nameof(end));
        Guard.Named(method is >= SightingMethod.Auto and <= SightingMethod.Linear, method, nameof(method));
        return Estimation.Estimate(given, end, method, confidence);
    }
}
