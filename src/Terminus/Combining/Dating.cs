using NodaTime;

namespace Terminus;

/// <summary>
/// The answer that a set of evidence gives on a day: what is possible, how sure each window is, and what disagrees.
/// </summary>
/// <remarks>
/// <para>Independent items combine by Dempster's rule, exactly. Items that share a cause are not independent and must be one item before they
/// come here; identical items count once. The day of the opinion is a certain witness: nothing is made after it. Nothing here
/// depends on a clock, a culture or a setting outside, the same input gives the same answer, and a dating is safe on any thread.</para>
/// <para>Contradictory evidence is an outcome, not an error: see <see cref="Conflict"/>, <see cref="Qualified"/> and
/// <see cref="Disagreements"/>.</para>
/// </remarks>
public sealed class Dating
{
    /// <summary>The level of the second answer that always goes with the first.</summary>
    public const double LikelyLevel = 0.66;

    private const double FirstStep = 0.5;
    private const int MostSteps = 8;

    private readonly ValueList<Evidence> items;
    private readonly Combination combination;
    private readonly int asOf;
    private readonly int low;
    private readonly int high;

    private Dating(ValueList<Evidence> evidence, int asOf, Assumptions assumptions)
    {
        this.asOf = asOf;
        items = evidence;
        Assumptions = assumptions;
        Stated = new StatedDays(evidence.Count);
        (low, high) = (int.MinValue, asOf);
        for (int item = 0; item < evidence.Count; item++)
        {
            evidence[item].StateInto(Stated, assumptions);
            ReadOnlySpan<StatedDay> windows = Stated[item];
            if (windows.Length > 0 && windows[0].Confidence >= assumptions.FirmAt)
            {
                (low, high) = (Math.Max(low, windows[0].Low), Math.Min(high, windows[0].High));
            }
        }

        combination = new Combination(Stated, asOf);
    }

    /// <summary>The items combined, in the order given, each once.</summary>
    public IReadOnlyList<Evidence> Evidence => items;

    /// <summary>The day of the opinion.</summary>
    public LocalDate AsOf => DayNumber.ToDate(asOf);

    /// <summary>The house defaults under which the evidence states its windows.</summary>
    public Assumptions Assumptions { get; }

    /// <summary>
    /// What firm evidence leaves: the days that all widest windows stated at <see cref="Assumptions.FirmAt"/> or more have in common, up to the
    /// day of the opinion; null where firm evidence excludes itself. Only its start can be open.
    /// </summary>
    public DateWindow? Possible => low > high ? null : DateWindow.OfBounds(low, high);

    /// <summary>K, the mass that the combination put on no date at all: 0 exactly when all windows meet, 1 when nothing is left to believe.</summary>
    public double Conflict => combination.Conflict;

    /// <summary>
    /// Whether the answer must not be given unqualified: <see cref="Possible"/> is null, or <see cref="Conflict"/> is above
    /// <see cref="Assumptions.QualifiedAbove"/>.
    /// </summary>
    public bool Qualified => Possible is null || Conflict > Assumptions.QualifiedAbove;

    /// <summary>Every pair of items with stated windows that do not meet, the weightiest first. The day of the opinion may be one of a pair.</summary>
    public IReadOnlyList<Disagreement> Disagreements => field ??= combination.AllMeet ? ValueList<Disagreement>.Empty : ValueList.Of(Disagreement.Among(this));

    /// <summary>The largest-weight consistent sets of items, the weightiest first.</summary>
    public IReadOnlyList<Reading> Readings => field ??= ValueList.Of(Reading.Of(this));

    /// <summary>The pignistic density, for pictures, medians and advice; never a confidence.</summary>
    public Spread Spread => field ??= new Spread(combination, DayNumber.Of(Assumptions.SpreadFrom, 1, 1), asOf);

    /// <summary>The answers of <see cref="Interval(double)"/> over all levels from 0.5, at most eight, narrowest first, each at the belief it reaches.</summary>
    public IReadOnlyList<DatedInterval> Steps => field ??= ValueList.Of(FindSteps());

    internal StatedDays Stated { get; }

    internal int AsOfDay => asOf;

    /// <summary>The mass that is not empty, 1 - K; 0 where the conflict is total.</summary>
    internal double NonEmptyMass => combination.IsContradiction ? 0 : combination.Total;

    /// <summary>Dates a piece from its evidence.</summary>
    /// <param name="evidence">The items, in any order; identical ones count once. At most 256.</param>
    /// <param name="asOf">The day of the opinion.</param>
    /// <param name="assumptions">The house defaults, or null for <see cref="Assumptions.House"/>.</param>
    /// <exception cref="ArgumentException">There are more than 256 different items, or one of them is null.</exception>
    public static Dating Of(IEnumerable<Evidence> evidence, LocalDate asOf, Assumptions? assumptions = null)
    {
        ValueList<Evidence> items = Guard.NoNulls(ValueList.Of(Guard.NotNull(evidence, nameof(evidence))), nameof(evidence));
        items = DistinctItems.Of(items);
        if (items.Count > WindowEnds.MostItems)
        {
            throw new ArgumentException(
                $"A piece has at most {WindowEnds.MostItems} items of evidence, and this one has {items.Count}.", nameof(evidence));
        }

        return new Dating(items, DayNumber.Of(asOf), assumptions ?? Assumptions.House);
    }

    /// <summary>Dates a piece from items of which no two are identical, at most as many as are combined.</summary>
    internal static Dating OfDistinct(ValueList<Evidence> items, int asOf, Assumptions assumptions) => new(items, asOf, assumptions);

    /// <summary>The lower probability of a window: the mass of evidence that puts the date inside it.</summary>
    public double Belief(DateWindow window) => combination.Belief(window.Low, window.High);

    /// <summary>The upper probability of a window: the mass of evidence that does not exclude it.</summary>
    public double Plausibility(DateWindow window) => combination.Plausibility(window.Low, window.High);

    /// <summary>
    /// The shortest window inside <see cref="Possible"/> whose belief reaches a level. Where there is none, the shortest that does not start
    /// before the issue of the newest firmly dated patent for which there is one; where there is none of those, the shortest anywhere. Null
    /// where the conflict is total.
    /// </summary>
    /// <remarks>
    /// Ties go to the earlier start. A window open at the start is taken only where no bounded one reaches, and then the earliest end
    /// wins. Ends are ends of stated windows, or the day of the opinion.
    /// </remarks>
    /// <param name="confidence">The level, above 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level lies outside (0, 1].</exception>
    public DatedInterval? Interval(double confidence)
    {
        Guard.Level(confidence, nameof(confidence));
        DatedInterval? answer = Shortest(confidence, low, high);
        for (int floor = int.MaxValue; answer is null && floor != int.MinValue;)
        {
            floor = FloorBelow(floor);
            answer = Shortest(confidence, floor, int.MaxValue);
        }

        return answer;
    }

    /// <summary>The shortest window that reaches a level inside another answer, by the same rule; the plain answer where none does.</summary>
    /// <param name="confidence">The level, above 0 and at most 1.</param>
    /// <param name="within">The answer to stay inside.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level lies outside (0, 1].</exception>
    public DatedInterval? Interval(double confidence, DatedInterval? within)
    {
        Guard.Level(confidence, nameof(confidence));
        return within is null ? Interval(confidence) : Shortest(confidence, within.Window.Low, within.Window.High) ?? Interval(confidence);
    }

    /// <summary>How the answer changes without one item.</summary>
    /// <param name="item">The index in <see cref="Evidence"/>.</param>
    /// <param name="confidence">The level of the interval compared.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such item, or the level lies outside (0, 1].</exception>
    public Influence InfluenceOf(int item, double confidence)
    {
        if (item < 0 || item >= Evidence.Count)
        {
            throw new ArgumentOutOfRangeException(nameof(item), item, $"The items are numbered from 0 to {Evidence.Count - 1}.");
        }

        return new Influence(this, item, confidence);
    }

    /// <summary>This evidence without one item.</summary>
    internal Dating Without(int item) => new(ValueList.Of(Evidence.Where((_, index) => index != item)), asOf, Assumptions);

    /// <summary>The latest day, before another, from which a firmly dated patent allows pieces; the least integer where there is none.</summary>
    internal int FloorBelow(int day)
    {
        int below = int.MinValue;
        foreach (Evidence item in items.Span)
        {
            int floor = item.Floor(Assumptions);
            below = floor != DayNumber.Open && floor < day ? Math.Max(below, floor) : below;
        }

        return below;
    }

    private DatedInterval? Shortest(double confidence, int lowest, int highest)
    {
        if (lowest > highest || !combination.TryShortest(confidence, lowest, highest, out int from, out int to))
        {
            return null;
        }

        bool inside = low <= high && from >= low && to <= high;
        return new DatedInterval(
            confidence, DateWindow.OfBounds(from, to), asOf, combination.Belief(from, to), combination.Plausibility(from, to), inside);
    }

    // Each answer holds up to the belief it reaches; the next one is that of a level just above.
    private List<DatedInterval> FindSteps()
    {
        var steps = new List<DatedInterval>();
        double level = FirstStep;
        while (Interval(level) is { } answer)
        {
            steps.Add(new DatedInterval(
                Math.Max(level, answer.Belief), answer.Window, asOf, answer.Belief, answer.Plausibility, answer.InsidePossible));
            level = Math.Max(level, answer.Belief) + (2 * Combination.Tolerance);
            if (level > 1 || answer.IsAnyDate)
            {
                break;
            }
        }

        return Thin(steps);
    }

    // Of too many steps, those that gain least belief over the step before them go; the first and the last stay.
    private static List<DatedInterval> Thin(List<DatedInterval> steps)
    {
        while (steps.Count > MostSteps)
        {
            int least = 1;
            for (int i = 2; i < steps.Count - 1; i++)
            {
                // Gains that differ by less than the tolerance are equal, so that the order of the evidence cannot choose between them.
                if (steps[i].Belief - steps[i - 1].Belief < steps[least].Belief - steps[least - 1].Belief - Combination.Tolerance)
                {
                    least = i;
                }
            }

            steps.RemoveAt(least);
        }

        return [.. steps.OrderBy(s => s.Window.Days ?? int.MaxValue)];
    }
}
