using System.Globalization;
using System.Text.Json;
using NodaTime;

namespace Terminus.Tests.Combining;

/// <summary>Published and derived examples of Dempster's rule on windows; each row of the table names its source.</summary>
/// <remarks>
/// Not here: DS-peter-paul-mary and DS-painting-century, whose masses lie on sets that are not nested windows of one item; MUS-unions, as
/// a stated window is never a union; ALLEN-counts, as the library has no relations of intervals; the columns of other rules (contour product,
/// mixture, shortest window of a density), which the library does not state.
/// </remarks>
public class WorkedExamplesTest
{
    private const double Exact = 1e-12;

    private static readonly LocalDate AsOf = new(2000, 12, 31);

    public static TheoryData<string> Ids => [.. WorkedExamples.WithWindows];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Conflict_Example_IsItsK(string id)
    {
        WorkedExamples example = WorkedExamples.Of(id);
        Assert.Equal(WorkedExamples.Fraction(example.Expected.GetProperty("K")), example.Combine().Conflict, Exact);
    }

    // The masses of all focal windows add up to 1, so beliefs of all of them settle each mass.
    [Theory]
    [MemberData(nameof(Ids))]
    public void Belief_FocalWindows_AreTheMassesInsideThem(string id)
    {
        WorkedExamples example = WorkedExamples.Of(id);
        Combination combination = example.Combine();
        List<(int From, int To, double Mass)> focal = [.. example.Expected.GetProperty("focal_masses").EnumerateObject().Select(Focal)];
        Assert.Equal(1, focal.Sum(f => f.Mass), Exact);
        foreach ((int from, int to, _) in focal)
        {
            (int low, int high) = example.Frame(from, to);
            Assert.Equal(focal.Where(f => f.From >= from && f.To <= to).Sum(f => f.Mass), combination.Belief(low, high), Exact);
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void TryShortest_Levels_GiveTheBeliefIntervals(string id)
    {
        WorkedExamples example = WorkedExamples.Of(id);
        Combination combination = example.Combine();
        foreach (JsonProperty row in example.Expected.GetProperty("belief_interval").EnumerateObject())
        {
            int[] ends = [.. row.Value.EnumerateArray().Take(2).Select(e => (int)WorkedExamples.Fraction(e))];
            double level = Rational.Parse(row.Name).ToDouble();
            Assert.True(combination.TryShortest(level, int.MinValue, int.MaxValue, out int low, out int high));
            Assert.Equal(example.Frame(ends[0], ends[1]), (low, high));
            Assert.Equal(WorkedExamples.Fraction(row.Value[2]), combination.Belief(low, high), Exact);
            Assert.Equal(WorkedExamples.Fraction(row.Value[3]), combination.Plausibility(low, high), Exact);
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Spread_Cells_AreThePignisticProbabilities(string id)
    {
        WorkedExamples example = WorkedExamples.Of(id);
        var spread = new Spread(example.Combine(), example.SpreadFrom, example.AsOf);
        Assert.Equal(0, spread.Before);
        foreach (JsonElement cell in example.Expected.GetProperty("pignistic").GetProperty("cell_probabilities").EnumerateArray())
        {
            (int low, int high) = WorkedExamples.Days((int)WorkedExamples.Fraction(cell[0]), (int)WorkedExamples.Fraction(cell[1]));
            Assert.Equal(WorkedExamples.Fraction(cell[2]), spread.MassIn(DateWindow.OfBounds(low, high)), Exact);
        }
    }

    // COMB-single-window-formula: a single window of a share f of the domain, at r, has pignistic probability r + (1 - r) f.
    [Theory]
    [InlineData(10, 0.9)]
    [InlineData(250, 0.5)]
    [InlineData(999, 0.66)]
    [InlineData(1000, 1)]
    public void Spread_SingleWindow_FollowsTheFormula(int days, double r)
    {
        (int low, int high) = WorkedExamples.Days(0, days);
        (_, int asOf) = WorkedExamples.Days(0, 1000);
        var spread = new Spread(new Combination(WorkedExamples.ToDays([(low, high, r)]), asOf), low, asOf);
        Assert.Equal(r + ((1 - r) * days / 1000), spread.MassIn(DateWindow.OfBounds(low, high)), Exact);
    }

    [Fact]
    public void DS_shafer_agree()
    {
        DateWindow a = DateWindow.BetweenYears(1900, 1909);
        var dating = Dating.Of([new Opinion(a, 0.9, "Betty"), new Opinion(a, 0.9, "Sally")], AsOf);
        Assert.Equal(Expected("DS-shafer-agree", "Bel(A)"), dating.Belief(a), Exact);
    }

    [Fact]
    public void DS_shafer_conflict()
    {
        (DateWindow a, DateWindow notA) = (DateWindow.Until(new LocalDate(1899, 12, 31)), DateWindow.From(new LocalDate(1900, 1, 1)));
        var dating = Dating.Of([new Opinion(a, 0.9, "Betty"), new Opinion(notA, 0.9, "Sally")], AsOf);
        Assert.Equal(Expected("DS-shafer-conflict", "K"), dating.Conflict, Exact);
        Assert.Equal(Expected("DS-shafer-conflict", "Bel(A)"), dating.Belief(a), Exact);
        Assert.Equal(Expected("DS-shafer-conflict", "Bel(notA)"), dating.Belief(notA), Exact);
        Assert.Equal(Expected("DS-shafer-conflict", "m(frame)"), 1 - dating.Belief(a) - dating.Belief(notA), Exact);
    }

    // The published masses, 0.99 on one answer and 0.01 on another, are not nested. With the answers in the order M, T, C the same products
    // come from the nested form: 0.99 on M inside M or T, and 0.99 on C inside T or C.
    [Fact]
    public void DS_zadeh()
    {
        Opinion one = new([new StatedWindow(DateWindow.BetweenYears(1900, 1919), 1), new StatedWindow(DateWindow.BetweenYears(1900, 1909), 0.99)]);
        Opinion two = new([new StatedWindow(DateWindow.BetweenYears(1910, 1929), 1), new StatedWindow(DateWindow.BetweenYears(1920, 1929), 0.99)]);
        var dating = Dating.Of([one, two], AsOf);
        Assert.Equal(Expected("DS-zadeh", "K"), dating.Conflict, Exact);
        Assert.Equal(Expected("DS-zadeh", "m(T)"), dating.Belief(DateWindow.BetweenYears(1910, 1919)), Exact);
        Assert.True(dating.Qualified);
    }

    // "Left-handed" and "insider" are two windows that overlap; what lies in both is both.
    [Fact]
    public void DS_laxton()
    {
        (DateWindow left, DateWindow insider) = (DateWindow.BetweenYears(1900, 1920), DateWindow.BetweenYears(1910, 1930));
        DateWindow both = left.Intersect(insider)!.Value;
        var dating = Dating.Of([new Opinion(left, 0.9), new Opinion(insider, 0.8)], AsOf);
        Assert.Equal(Expected("DS-laxton", "both"), dating.Belief(both), Exact);
        Assert.Equal(Expected("DS-laxton", "left only"), dating.Belief(left) - dating.Belief(both), Exact);
        Assert.Equal(Expected("DS-laxton", "insider only"), dating.Belief(insider) - dating.Belief(both), Exact);
        Assert.Equal(Expected("DS-laxton", "frame"), 1 - dating.Belief(left) - dating.Belief(insider) + dating.Belief(both), Exact);
    }

    // The library combines independent items only; the cautious value, 9/10, is what one item for one cause gives.
    [Fact]
    public void COMB_cautious()
    {
        DateWindow window = DateWindow.InYear(1950);
        Evidence strong = new Opinion(window, 0.9);
        Assert.Equal(Expected("COMB-cautious", "independent"), Dating.Of([strong, new Opinion(window, 0.8)], AsOf).Belief(window), Exact);
        Assert.Equal(Expected("COMB-cautious", "cautious"), Dating.Of([strong, strong with { }], AsOf).Belief(window), Exact);
    }

    [Fact]
    public void COMB_pattern_weights()
    {
        var dating = Dating.Of([new Opinion(DateWindow.BetweenYears(1811, 1820), 0.9), new Opinion(DateWindow.BetweenYears(1841, 1860), 0.75)], AsOf);
        JsonElement expected = WorkedExamples.Example("COMB-pattern-weights").GetProperty("expected").GetProperty("dempster_or_mixture");
        Assert.Equal([[0], [1]], dating.Readings.Select(r => r.Items));
        Assert.Equal(WorkedExamples.Fraction(expected.GetProperty("only1")), dating.Readings[0].Weight!.Value, Exact);
        Assert.Equal(WorkedExamples.Fraction(expected.GetProperty("only2")), dating.Readings[1].Weight!.Value, Exact);
        Assert.Equal(WorkedExamples.Fraction(expected.GetProperty("none")), 1 - dating.Readings.Sum(r => r.Weight!.Value), Exact);
    }

    // The contour is highest where the weightiest consistent set lies, and each item is worth -ln(1 - r) there.
    [Fact]
    public void MODE_equals_maxweight()
    {
        JsonElement expected = WorkedExamples.Example("MODE-equals-maxweight").GetProperty("expected");
        (DateWindow first, DateWindow second) = (DateWindow.BetweenYears(1811, 1820), DateWindow.BetweenYears(1841, 1860));
        var dating = Dating.Of([new Opinion(first, 0.9), new Opinion(second, 0.75)], AsOf);
        double Log(int year) => Math.Log(dating.Plausibility(DateWindow.On(new LocalDate(year, 6, 1))));
        Assert.Equal(first, dating.Readings[0].Window);
        Assert.Equal("[10,20]", expected.GetProperty("argmax").GetString());
        Assert.Equal(expected.GetProperty("weights_-ln(1-r)")[0].GetDouble(), Log(1815) - Log(1830), 1e-6);
        Assert.Equal(expected.GetProperty("weights_-ln(1-r)")[1].GetDouble(), Log(1850) - Log(1830), 1e-6);
    }

    [Fact]
    public void HELLY_1()
    {
        JsonElement example = WorkedExamples.Example("HELLY-1");
        var dating = Dating.Of(
            example.GetProperty("inputs").GetProperty("intervals").EnumerateArray()
                .Select(i => new Opinion(DateWindow.BetweenYears(1900 + i[0].GetInt32(), 1900 + i[1].GetInt32()), 1)),
            AsOf);
        Assert.True(example.GetProperty("expected").GetProperty("common_point").GetBoolean());
        Assert.Equal(DateWindow.BetweenYears(1905, 1905), dating.Possible);
        Assert.Empty(dating.Disagreements);
        Assert.Equal(0, dating.Conflict);
    }

    [Fact]
    public void MUS_intervals()
    {
        JsonElement example = WorkedExamples.Example("MUS-intervals");
        List<JsonProperty> items = [.. example.GetProperty("inputs").GetProperty("intervals_weights").EnumerateObject()];
        var dating = Dating.Of(
            items.Select(i => new Opinion(
                DateWindow.BetweenYears(i.Value[0].GetInt32(), i.Value[1].GetInt32()), 1 - Math.Exp(-i.Value[2].GetDouble()), i.Name)),
            AsOf);
        string[] Names(IEnumerable<int> indices) => [.. indices.Select(i => items[i].Name)];
        JsonElement expected = example.GetProperty("expected");
        Assert.Equal(
            expected.GetProperty("minimal_conflicts").EnumerateArray().Select(Texts),
            dating.Disagreements.Select(d => Names([d.First, d.Second!.Value])));
        foreach ((string name, int index) in new[] { ("max_weight_consistent", 0), ("runner_up", 1) })
        {
            JsonElement set = expected.GetProperty(name);
            Assert.Equal(Texts(set.GetProperty("members")), Names(dating.Readings[index].Items));
            Assert.Equal(
                DateWindow.BetweenYears(set.GetProperty("where")[0].GetInt32(), set.GetProperty("where")[1].GetInt32()), dating.Readings[index].Window);
        }

        Assert.Equal(Texts(expected.GetProperty("min_hitting_set")), Names(dating.Readings[0].SetAside));
    }

    // A shape is the limit of many nested windows; with so many cuts the figures hold to the mass of one cut.
    [Fact]
    public void COMB_trapezoid()
    {
        var dating = Dating.Of([Trapezoid(1880, 1884, 1890, 1894, 0.9)], AsOf);
        Assert.Equal(Expected("COMB-trapezoid", "contour(1882)"), dating.Plausibility(OnYear(1882)), 0.002);
        Assert.Equal(Expected("COMB-trapezoid", "contour(1887)"), dating.Plausibility(OnYear(1887)), 0.002);
        Assert.Equal(Expected("COMB-trapezoid", "contour(1900)"), dating.Plausibility(OnYear(1900)), 0.002);
        Assert.Equal(Expected("COMB-trapezoid", "Bel([1882,1892])"), dating.Belief(Continuous(1882, 1892)), 0.002);
        Assert.Equal(Expected("COMB-trapezoid", "Bel([1880,1894])"), dating.Belief(Continuous(1880, 1894)), 0.002);
        Assert.Equal(Expected("COMB-trapezoid", "Pl([1900,1910])"), dating.Plausibility(Continuous(1900, 1910)), 0.002);
    }

    [Fact]
    public void COMB_2trap()
    {
        var dating = Dating.Of([Trapezoid(1880, 1884, 1890, 1894, 0.9), Trapezoid(1878, 1886, 1888, 1896, 0.5)], AsOf);
        Assert.Equal(Expected("COMB-2trap", "K"), dating.Conflict);
        Assert.Equal(Expected("COMB-2trap", "Bel([1882,1892])"), dating.Belief(Continuous(1882, 1892)), 0.002);
        Assert.Equal(Expected("COMB-2trap", "Bel([1884,1890])"), dating.Belief(Continuous(1884, 1890)), 0.002);
    }

    // A thousand cuts, and a thousand days for each year of the example, so that neither cuts nor days show.
    private static Opinion Trapezoid(double from, double full, double fading, double gone, double r)
    {
        const int cuts = 1000;
        return new Opinion(Enumerable.Range(0, cuts).Select(cut =>
        {
            double height = (cut + 0.5) / cuts;
            return new StatedWindow(
                Continuous(from + (height * (full - from)), gone - (height * (gone - fading))), r * (1 - ((double)cut / cuts)));
        }));
    }

    private static DateWindow Continuous(double from, double to) => DateWindow.OfBounds(Day(from) + 1, Day(to));

    private static DateWindow OnYear(double year) => DateWindow.OfBounds(Day(year), Day(year));

    private static int Day(double year) => DayNumber.Of(1900, 1, 1) - 10_000 + (int)Math.Round((year - 1900) * 1000);

    private static double Expected(string id, string member)
        => WorkedExamples.Fraction(WorkedExamples.Example(id).GetProperty("expected").GetProperty(member));

    private static string[] Texts(JsonElement list) => [.. list.EnumerateArray().Select(e => e.GetString()!)];

    private static (int From, int To, double Mass) Focal(JsonProperty focal)
    {
        string[] ends = focal.Name.Trim('[', ']').Split(',');
        return (int.Parse(ends[0], CultureInfo.InvariantCulture), int.Parse(ends[1], CultureInfo.InvariantCulture), WorkedExamples.Fraction(focal.Value));
    }
}
