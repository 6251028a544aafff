using FsCheck.Xunit;

namespace Terminus.Tests.Combining;

[Properties(Arbitrary = [typeof(Gens)], MaxTest = 300)]
public class CombinationTest
{
    private static readonly Rational[] Levels = [new(1, 2), new(66, 100), new(8, 10), new(9, 10), new(95, 100), new(1, 1)];

    [Property]
    public void Law8_The_engine_agrees_with_enumerating_all_choices_of_level(SmallCase small)
    {
        var exact = new ExactEnumeration(small.Items, small.AsOf);
        var engine = new Combination(small.ToDays(), small.AsOf);
        Assert.Equal(exact.Conflict.ToDouble(), engine.Conflict, 1e-12);
        if (exact.Total.ToDouble() < 1e-9)
        {
            Assert.True(engine.IsContradiction);
            return;
        }

        for (int low = 0; low <= small.AsOf + 1; low++)
        {
            for (int high = low; high <= small.AsOf + 2; high++)
            {
                int from = low == 0 ? int.MinValue : low;
                int to = high == small.AsOf + 2 ? int.MaxValue : high;
                Assert.Equal(exact.Belief(from, to).ToDouble(), engine.Belief(from, to), 1e-12);
                Assert.Equal(exact.Plausibility(from, to).ToDouble(), engine.Plausibility(from, to), 1e-12);
            }
        }
    }

    [Property]
    public void Law8_The_shortest_window_is_that_of_trying_all(SmallCase small)
    {
        var exact = new ExactEnumeration(small.Items, small.AsOf);
        var engine = new Combination(small.ToDays(), small.AsOf);
        if (engine.IsContradiction)
        {
            Assert.False(engine.TryShortest(0.5, int.MinValue, int.MaxValue, out _, out _));
            return;
        }

        foreach (Rational level in Levels)
        {
            foreach ((int lowest, int highest) in new[] { (int.MinValue, int.MaxValue), (3, 9), (int.MinValue, 7), (5, int.MaxValue) })
            {
                // The tolerance of the engine, as an exact fraction.
                (int Low, int High)? expected = exact.Shortest(level - new Rational(1, 1_000_000_000), lowest, highest);
                bool found = engine.TryShortest(level.ToDouble(), lowest, highest, out int low, out int high);
                Assert.Equal(expected is not null, found);
                if (expected is { } window)
                {
                    Assert.Equal(window, (low, high));
                }
            }
        }
    }

    [Property]
    public void Conflict_is_zero_exactly_when_all_windows_that_carry_mass_meet(SmallCase small)
    {
        var engine = new Combination(small.ToDays(), small.AsOf);
        bool meet = small.Items.Where(i => i.Count > 0).Select(i => i[^1].Low).Append(int.MinValue).Max()
            <= small.Items.Where(i => i.Count > 0).Select(i => i[^1].High).Append(small.AsOf).Min();
        Assert.Equal(meet, engine.Conflict == 0);
    }

    [Fact]
    public void Belief_ManyContradictoryItems_StaysAccurate()
    {
        // Ten pairs of items that exclude each other, each at 0.9: 1 - K = (1 - 0.81)^10 within the pairs, by Dempster's rule in closed form
        // for windows of two places: both places fall in turn. Exact: mass left on place one = 0.9^10 * 0.1^10 + ... enumerated below.
        var items = new List<IReadOnlyList<ExactWindow>>();
        for (int i = 0; i < 4; i++)
        {
            items.Add([new ExactWindow(1, 3, 90)]);
            items.Add([new ExactWindow(6, 9, 90)]);
        }

        var small = new SmallCase(items, 12);
        var exact = new ExactEnumeration(items, 12);
        var engine = new Combination(small.ToDays(), 12);
        Assert.Equal(exact.Total.ToDouble(), engine.Total, 1e-15);
        Assert.Equal(exact.Belief(1, 3).ToDouble(), engine.Belief(1, 3), 1e-12);
    }
}
