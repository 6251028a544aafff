using FsCheck.Xunit;
using NodaTime;

namespace Terminus.Tests.Combining;

[Properties(Arbitrary = [typeof(Gens)], MaxTest = 200)]
public class ReadingTest
{
    private static readonly LocalDate AsOf = new(2026, 11, 25);

    [Fact]
    public void Readings_ItemsThatMeet_AreOneThatKeepsAll()
    {
        var dating = Dating.Of([new Opinion(DateWindow.BetweenYears(1950, 1960), 0.9), new Opinion(DateWindow.BetweenYears(1955, 1970), 0.8)], AsOf);
        Reading only = Assert.Single(dating.Readings);
        Assert.Equal([0, 1], only.Items);
        Assert.Empty(only.SetAside);
        Assert.Equal(DateWindow.BetweenYears(1955, 1960), only.Window);
        Assert.Equal(1, only.Weight!.Value, 1e-12);
    }

    [Fact]
    public void Readings_CertainItemsThatExclude_HaveNoWeight()
    {
        var dating = Dating.Of([new Opinion(DateWindow.InYear(1900), 1), new Opinion(DateWindow.InYear(1950), 1)], AsOf);
        Assert.Equal(2, dating.Readings.Count);
        Assert.All(dating.Readings, r => Assert.Null(r.Weight));
    }

    [Fact]
    public void ToString_SaysWindowWeightAndItems()
    {
        var apart = Dating.Of([new Opinion(DateWindow.InYear(1900), 1), new Opinion(DateWindow.InYear(1950), 1)], AsOf);
        Assert.Equal("1900-01-01/1900-12-31 (no weight) of items [0]", apart.Readings[0].ToString());
        var alone = Dating.Of([new Opinion(DateWindow.InYear(1900), 0.9)], AsOf);
        Assert.Equal("1900-01-01/1900-12-31 (1) of items [0]", alone.Readings[0].ToString());
    }

    [Property]
    public void Every_item_that_speaks_is_kept_or_set_aside(EvidenceSet set)
    {
        Dating dating = set.Date();
        int[] speaking = [.. Enumerable.Range(0, dating.Evidence.Count).Where(i => dating.Evidence[i].StatedWindows().Count > 0)];
        foreach (Reading reading in dating.Readings)
        {
            Assert.Equal(speaking, reading.Items.Concat(reading.SetAside).Order());
        }
    }

    [Property]
    public void The_items_kept_have_the_window_in_common_and_none_could_be_added(EvidenceSet set)
    {
        Dating dating = set.Date();
        DateWindow Widest(int item) => dating.Evidence[item].StatedWindows()[0].Window;
        foreach (Reading reading in dating.Readings)
        {
            Assert.All(reading.Items, item => Assert.True(Widest(item).Contains(reading.Window)));
            Assert.All(reading.SetAside, item => Assert.False(Widest(item).Meets(reading.Window)));
        }
    }

    [Property]
    public void Weights_lie_in_their_range_fall_and_add_up_to_no_more_than_one(EvidenceSet set)
    {
        double[] weights = [.. set.Date().Readings.Select(r => r.Weight ?? 0)];
        Assert.All(weights, w => Assert.InRange(w, 0, 1));
        Assert.Equal(weights.OrderDescending(), weights);
        Assert.True(weights.Sum() <= 1 + 1e-9);
    }

    [Property]
    public void There_is_one_reading_exactly_when_all_widest_windows_that_begin_by_the_opinion_meet(EvidenceSet set)
    {
        Dating dating = set.Date();
        DateWindow today = DateWindow.Until(set.AsOf);
        DateWindow[] widest = [.. dating.Evidence.Select(e => e.StatedWindows()).Where(s => s.Count > 0).Select(s => s[0].Window).Where(today.Meets)];
        Assert.Equal(widest.All(one => widest.All(one.Meets)), dating.Readings.Count == 1);
    }
}
