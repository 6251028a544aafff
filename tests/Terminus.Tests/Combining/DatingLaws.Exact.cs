using FsCheck.Xunit;
using NodaTime;

namespace Terminus.Tests.Combining;

/// <summary>Law 8 on whole datings: everything that follows from the focal sets, against all choices of level in exact fractions.</summary>
public partial class DatingLaws
{
    // The tolerance of the engine, as an exact fraction.
    private static readonly Rational Tolerance = new(1, 1_000_000_000);

    [Property]
    public void Law8_A_dating_agrees_with_enumerating_all_choices_of_level(SmallCase small)
    {
        (ExactEnumeration exact, Dating dating) = Both(small, []);
        Assert.Equal(exact.Conflict.ToDouble(), dating.Conflict, 1e-12);
        foreach (DateWindow window in dating.Conflict == 1 ? [] : Windows(dating))
        {
            Assert.Equal(exact.Belief(window.Low, window.High).ToDouble(), dating.Belief(window), 1e-12);
            Assert.Equal(exact.Plausibility(window.Low, window.High).ToDouble(), dating.Plausibility(window), 1e-12);
        }
    }

    [Property]
    public void Law8_Belief_of_a_window_is_what_the_plausibility_outside_it_leaves(SmallCase small)
    {
        (ExactEnumeration exact, Dating dating) = Both(small, []);
        foreach (DateWindow window in dating.Conflict == 1 ? [] : Windows(dating))
        {
            Assert.Equal((Rational.One - exact.PlausibilityOutside(window.Low, window.High)).ToDouble(), dating.Belief(window), 1e-12);
        }
    }

    [Property]
    public void Law8_An_interval_is_the_shortest_inside_the_possible_then_after_a_patent_then_anywhere(SmallCase small, byte first, byte second)
    {
        (ExactEnumeration exact, Dating dating) = Both(small, [1 + (first % 10), 1 + (second % 10)]);
        if (dating.Conflict == 1)
        {
            Assert.Null(dating.Interval(0.9));
            return;
        }

        (int low, int high) = Firm(small, [1 + (first % 10), 1 + (second % 10)]);
        (int Low, int High)?[] bounds =
        [
            (SmallCase.Number(low), SmallCase.Number(high)),
            (SmallCase.Number(1 + (Math.Max(first % 10, second % 10))), int.MaxValue),
            (SmallCase.Number(1 + (Math.Min(first % 10, second % 10))), int.MaxValue),
            (int.MinValue, int.MaxValue),
        ];
        foreach (int hundredths in new[] { 50, 66, 80, 90, 95, 99, 100 })
        {
            Rational level = new Rational(hundredths, 100) - Tolerance;
            (int, int)? expected = bounds.Where(b => b!.Value.Low <= b.Value.High)
                .Select(b => exact.Shortest(level, b!.Value.Low, b.Value.High)).FirstOrDefault(w => w is not null);
            DatedInterval interval = dating.Interval(hundredths / 100.0)!;
            Assert.Equal(expected, (interval.Window.Low, interval.Window.High));

            (int, int)? inner = exact.Shortest(new Rational(66, 100) - Tolerance, interval.Window.Low, interval.Window.High);
            DatedInterval likely = dating.Interval(Dating.LikelyLevel, interval)!;
            Assert.Equal(inner ?? (dating.Interval(0.66)!.Window.Low, dating.Interval(0.66)!.Window.High), (likely.Window.Low, likely.Window.High));
        }
    }

    // The small case as opinions, with patents that issue on its days; all days as the dating numbers them.
    private static (ExactEnumeration Exact, Dating Dating) Both(SmallCase small, int[] issues)
    {
        IEnumerable<Evidence> patents = issues.Select((day, index)
            => new PatentIssued(EvidenceDate.On(SmallCase.Day(day)), termYears: 1000, source: "witness " + index));
        IEnumerable<IReadOnlyList<ExactWindow>> exact = issues.Select(day => (IReadOnlyList<ExactWindow>)
            [new ExactWindow(SmallCase.Number(day), int.MaxValue, 98), new ExactWindow(SmallCase.Number(day), int.MaxValue - 1, 70)]);
        IEnumerable<IReadOnlyList<ExactWindow>> opinions = small.Items.Select(item => (IReadOnlyList<ExactWindow>)
            [.. item.Select(w => new ExactWindow(SmallCase.Number(w.Low), SmallCase.Number(w.High), w.Hundredths))]);
        LocalDate asOf = SmallCase.Day(small.AsOf);
        return (new ExactEnumeration([.. opinions, .. exact], SmallCase.Number(small.AsOf)), Dating.Of(small.ToOpinions().Concat(patents), asOf));
    }

    // What the widest windows at 0.90 or more leave, asOf and the patents included.
    private static (int Low, int High) Firm(SmallCase small, int[] issues)
    {
        List<ExactWindow> firm = [.. small.Items.Where(i => i.Count > 0 && i[0].Hundredths >= 90).Select(i => i[0])];
        return (firm.Select(w => w.Low).Concat(issues).Max(), firm.Select(w => w.High).Append(small.AsOf).Min());
    }
}
