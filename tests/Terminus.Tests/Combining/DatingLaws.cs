using FsCheck.Xunit;
using NodaTime;

namespace Terminus.Tests.Combining;

/// <summary>The laws of a dating, each named by what it says. Law 8 on the engine itself is in <see cref="CombinationTest"/>.</summary>
[Properties(Arbitrary = [typeof(Gens)], MaxTest = 300)]
public partial class DatingLaws
{
    private static readonly double[] Levels = [0.5, 0.66, 0.8, 0.9, 0.95, 0.99, 1];

    [Property]
    public void The_steps_come_narrowest_first(EvidenceSet set)
    {
        long[] lengths = [.. set.Date().Steps.Select(step => step.Window.Days ?? int.MaxValue)];
        Assert.Equal(lengths.Order(), lengths);
    }

    /// <summary>
    /// A date that is only probably that of the patent (<c>?</c>) is not firm and outside the law, and so is one with no earliest day.
    /// </summary>
    [Property]
    public void Law1_An_issue_date_is_never_later_than_the_earliest_possible_manufacture(EvidenceSet set, PatentIssued patent)
    {
        Dating dating = set.With(patent).Date();
        foreach (PatentIssued issued in dating.Evidence.OfType<PatentIssued>().Where(p => !p.Issued.IsUncertain))
        {
            if (issued.StatedWindows() is not [{ Window.NotBefore: { } issue }, ..])
            {
                continue;
            }

            Assert.True(dating.Possible is not { } possible || possible.NotBefore >= issue);
            foreach (double level in Levels)
            {
                bool canStartThere = dating.Conflict < 1 && dating.Belief(DateWindow.From(issue)) >= level - Combination.Tolerance;
                Assert.True(!canStartThere || dating.Interval(level)!.Window.NotBefore >= issue, $"{level}: {dating.Interval(level)}");
            }
        }
    }

    [Property]
    public void Law2_The_order_of_evidence_changes_nothing(EvidenceSet set, int seed)
    {
        Dating dating = set.Date();
        Evidence[] shuffled = [.. set.Items];
        new Random(seed).Shuffle(shuffled);
        AssertSame(dating, Dating.Of(shuffled, set.AsOf));
    }

    [Property]
    public void Law3_Adding_an_item_never_widens_what_is_possible(EvidenceSet set, Evidence item)
    {
        DateWindow? without = set.Date().Possible;
        DateWindow? with = set.With(item).Date().Possible;
        Assert.True(with is not { } window || without!.Value.Contains(window));
    }

    [Property]
    public void Law3_An_item_whose_confidence_falls_to_nothing_changes_no_belief(EvidenceSet set, Evidence item)
    {
        const double nearly = 1e-12;
        Dating without = set.Date();
        Opinion faint = new(item.StatedWindows().Select(w => w.WithConfidence(w.Confidence * nearly)), by: "nobody");
        Dating with = set.With(faint).Date();
        double tolerance = 1e-12 + (4 * nearly / Math.Max(1e-9, 1 - without.Conflict));
        foreach (DateWindow window in Windows(without).Concat(Windows(with)))
        {
            Assert.Equal(without.Belief(window), with.Belief(window), tolerance);
            Assert.Equal(without.Plausibility(window), with.Plausibility(window), tolerance);
        }
    }

    [Property]
    public void Law4_Where_every_firm_window_holds_the_true_day_so_does_what_is_possible(EvidenceSet set, LocalDate trueDay)
    {
        bool IsTrue(Evidence item)
            => item.StatedWindows() is not [{ } widest, ..] || widest.Confidence < Assumptions.House.FirmAt || widest.Window.Contains(trueDay);
        trueDay = LocalDate.Min(set.AsOf, trueDay);
        Dating dating = Dating.Of(set.Items.Where(IsTrue), set.AsOf);
        Assert.True(dating.Possible!.Value.Contains(trueDay));
    }

    [Property]
    public void Law5_Belief_is_at_most_plausibility_and_both_rise_with_the_window(EvidenceSet set, DateWindow one, DateWindow two)
    {
        Dating dating = set.Date();
        Assert.InRange(dating.Belief(one), 0, dating.Plausibility(one) + 1e-12);
        Assert.InRange(dating.Plausibility(one), 0, 1);
        DateWindow hull = one.Hull(two);
        Assert.True(dating.Belief(one) <= dating.Belief(hull) + 1e-12);
        Assert.True(dating.Plausibility(one) <= dating.Plausibility(hull) + 1e-12);
    }

    [Property]
    public void Law5_Belief_is_what_the_plausibility_of_the_complement_leaves(EvidenceSet set, LocalDate day)
    {
        Dating dating = set.Date();
        if (day == new LocalDate(-9998, 1, 1))
        {
            return;
        }

        (DateWindow before, DateWindow after) = (DateWindow.Until(day.PlusDays(-1)), DateWindow.From(day));
        Assert.Equal(1 - dating.Plausibility(after), dating.Belief(before), 1e-9);
        Assert.Equal(1 - dating.Plausibility(before), dating.Belief(after), 1e-9);
        Assert.Equal(1, dating.Belief(DateWindow.Any), 1e-12);
    }

    [Property]
    public void Law5_An_interval_reaches_its_level_and_no_shorter_window_of_the_same_bounds_does(EvidenceSet set)
    {
        Dating dating = set.Date();
        foreach (double level in Levels)
        {
            DatedInterval? interval = dating.Interval(level);
            Assert.Equal(dating.Conflict == 1, interval is null);
            if (interval is null)
            {
                continue;
            }

            Assert.True(interval.Belief >= level - Combination.Tolerance);
            Assert.Equal(dating.Belief(interval.Window), interval.Belief);
            bool possibleReaches = dating.Possible is { } possible && dating.Belief(possible) >= level - Combination.Tolerance;
            Assert.Equal(possibleReaches, interval.InsidePossible);
            int low = possibleReaches ? dating.Possible!.Value.Low : dating.FloorBelow(interval.Window.Low + 1);
            foreach (DateWindow shorter in Windows(dating).Where(w => w.Low >= low && Length(w) < Length(interval.Window)))
            {
                bool within = !possibleReaches || shorter.High <= dating.Possible!.Value.High;
                Assert.True(!within || dating.Belief(shorter) < level - Combination.Tolerance, $"{level}: {shorter} is shorter than {interval}");
            }
        }
    }

    [Property]
    public void Law6_Moving_every_window_and_the_day_of_the_opinion_moves_every_answer(SmallCase small, short shift)
    {
        var still = Dating.Of(small.ToOpinions(), SmallCase.Day(small.AsOf));
        var moved = Dating.Of(small.ToOpinions(shift), SmallCase.Day(small.AsOf + shift));
        Assert.Equal(Move(still.Possible, shift), moved.Possible);
        Assert.Equal(still.Conflict, moved.Conflict);
        Assert.Equal(still.Steps.Select(s => (Move(s.Window, shift), s.Belief, s.Plausibility)), moved.Steps.Select(s => ((DateWindow?)s.Window, s.Belief, s.Plausibility)));
        Assert.Equal(still.Readings.Select(r => (Move(r.Window, shift), r.Weight)), moved.Readings.Select(r => ((DateWindow?)r.Window, r.Weight)));
        Assert.Equal(still.Disagreements, moved.Disagreements);
        foreach (double level in Levels)
        {
            Assert.Equal(Move(still.Interval(level)?.Window, shift), moved.Interval(level)?.Window);
        }
    }

    [Property]
    public void Law6_Adding_an_identical_item_changes_nothing(EvidenceSet set, int which)
    {
        if (set.Items.Count > 0)
        {
            Evidence again = set.Items[(which & int.MaxValue) % set.Items.Count] with { };
            AssertSame(set.Date(), set.With(again).Date());
        }
    }

    [Property]
    public void Law7_An_item_that_meets_all_the_others_lowers_no_belief(EvidenceSet set, Evidence item)
    {
        IReadOnlyList<StatedWindow> stated = item.StatedWindows();
        bool Meets(DateWindow other) => stated.All(w => w.Window.Meets(other));
        if (!Meets(DateWindow.Until(set.AsOf)))
        {
            return;
        }

        // Only the others that it meets: most sets would be of no use otherwise.
        var others = new EvidenceSet([.. set.Items.Where(o => o.StatedWindows().All(w => Meets(w.Window)))], set.AsOf);
        (Dating without, Dating with) = (others.Date(), others.With(item).Date());
        foreach (DateWindow window in Windows(without).Concat(Windows(with)))
        {
            Assert.True(with.Belief(window) >= without.Belief(window) - 1e-9, window.ToString());
        }
    }

    private static void AssertSame(Dating one, Dating other)
    {
        Assert.Equal(one.Possible, other.Possible);
        Assert.Equal(one.Conflict, other.Conflict, 1e-12);
        Assert.Equal(one.Qualified, other.Qualified);
        Assert.Equal(one.Steps.Select(s => s.Window), other.Steps.Select(s => s.Window));
        Assert.Equal(one.Spread.Median, other.Spread.Median);
        Assert.Equal(Sets(one), Sets(other));
        Assert.Equal(one.Disagreements.Count, other.Disagreements.Count);
        Assert.Equal(one.Disagreements.Sum(d => d.Mass), other.Disagreements.Sum(d => d.Mass), 1e-9);
        foreach (double level in Levels)
        {
            Assert.Equal(one.Interval(level)?.Window, other.Interval(level)?.Window);
        }

        foreach (DateWindow window in Windows(one))
        {
            Assert.Equal(one.Belief(window), other.Belief(window), 1e-12);
            Assert.Equal(one.Plausibility(window), other.Plausibility(window), 1e-12);
        }
    }

    // The windows of the readings, with how many items each keeps: the same in any order of the items.
    private static IEnumerable<(DateWindow, int)> Sets(Dating dating)
        => dating.Readings.Select(r => (r.Window, r.Items.Count)).OrderBy(r => r.Window.Low);

    /// <summary>All windows between two ends that are stated, or between one and today, open starts included.</summary>
    private static IEnumerable<DateWindow> Windows(Dating dating)
    {
        List<StatedWindow> stated = [.. dating.Evidence.SelectMany(e => e.StatedWindows(dating.Assumptions))];
        List<int> lows = [.. stated.Select(s => s.Window.Low).Append(int.MinValue).Distinct()];
        List<int> highs = [.. stated.Select(s => Math.Min(s.Window.High, dating.AsOfDay)).Append(dating.AsOfDay).Distinct()];
        return from low in lows from high in highs where low <= high select DateWindow.OfBounds(low, high);
    }

    private static long Length(DateWindow window) => (long)window.High - window.Low;

    private static DateWindow? Move(DateWindow? window, int days) => window is not { } w
        ? null
        : DateWindow.OfBounds(w.Low == int.MinValue ? w.Low : w.Low + days, w.High == int.MaxValue ? w.High : w.High + days);
}
