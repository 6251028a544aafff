using FsCheck.Xunit;
using NodaTime;

namespace Terminus.Tests.Combining;

[Properties(Arbitrary = [typeof(Gens)], MaxTest = 200)]
public class DisagreementTest
{
    private static readonly LocalDate AsOf = new(2026, 11, 25);

    private static readonly Evidence Issued = new PatentIssued(EvidenceDate.On(new LocalDate(1961, 7, 11)), "US", "utility");
    private static readonly Evidence Pending = new PatentPending(EvidenceDate.InYear(1950), EvidenceDate.InYear(1952));

    [Fact]
    public void Level_OnlyTheUsualWindowsAreApart_IsUsage()
    {
        Disagreement only = Assert.Single(Dating.Of([Issued, new FeatureSeen("invented", EvidenceDate.InYear(2000))], AsOf).Disagreements);
        Assert.Equal(DisagreementLevel.Usage, only.Level);
        Assert.Equal(0.7 * 0.85, only.Mass, 1e-12);
        Assert.Equal(Period.DaysBetween(new LocalDate(1980, 7, 11), new LocalDate(2000, 1, 1)), only.DaysApart);
        Assert.Empty(only.Parts);
    }

    [Fact]
    public void Parts_TwoNamed_AreBothOnce()
    {
        var dating = Dating.Of([Pending with { Part = "pin" }, Issued with { Part = "back" }, Gone(1940) with { Part = "pin" }], AsOf);
        Assert.All(dating.Disagreements, d => Assert.Equal(d.Parts.Distinct(), d.Parts));
        Assert.Contains(dating.Disagreements, d => d.Parts.SequenceEqual(["pin", "back"]));
        Assert.Contains(dating.Disagreements, d => d.Parts.SequenceEqual(["pin"]));
    }

    [Property]
    public void Two_items_disagree_exactly_when_two_of_their_windows_do_not_meet(EvidenceSet set)
    {
        Dating dating = set.Date();
        IReadOnlyList<StatedWindow>[] stated = [.. dating.Evidence.Select(e => e.StatedWindows())];
        for (int i = 0; i < stated.Length; i++)
        {
            for (int j = i + 1; j < stated.Length; j++)
            {
                bool apart = stated[i].Any(a => stated[j].Any(b => !a.Window.Meets(b.Window)));
                Assert.Equal(apart, dating.Disagreements.Any(d => d.First == i && d.Second == j));
            }

            Assert.Equal(stated[i].Any(a => !a.Window.Meets(DateWindow.Until(set.AsOf))), dating.Disagreements.Any(d => d.First == i && d.Second is null));
        }
    }

    [Property]
    public void The_mass_of_a_pair_is_the_conflict_of_the_two_alone(EvidenceSet set)
    {
        Dating dating = set.Date();
        foreach (Disagreement found in dating.Disagreements.Where(d => d.Second is not null))
        {
            // Nothing of the pair lies after the last day of the calendar, so no third witness speaks.
            var pair = Dating.Of([dating.Evidence[found.First], dating.Evidence[found.Second!.Value]], new LocalDate(9999, 12, 31));
            Assert.Equal(pair.Conflict, found.Mass, 1e-9);
            Assert.True(found.DaysApart >= 1);
        }
    }

    private static Evidence Gone(int year) => new FeatureSeen("invented", gone: EvidenceDate.InYear(year));

    // The wider windows share one day and so meet; only what is usual is apart.
    [Fact]
    public void Level_WiderWindowsThatMeetOnADay_IsUsage()
    {
        LocalDate day = new(1910, 12, 31);
        var early = new Opinion([new StatedWindow(DateWindow.Until(day), 0.9), new StatedWindow(DateWindow.Until(new LocalDate(1900, 12, 31)), 0.7)]);
        var late = new Opinion([new StatedWindow(DateWindow.From(day), 0.9), new StatedWindow(DateWindow.From(new LocalDate(1940, 1, 1)), 0.7)]);
        Disagreement only = Assert.Single(Dating.Of([early, late], AsOf).Disagreements);
        Assert.Equal(DisagreementLevel.Usage, only.Level);
        Assert.Equal(Period.DaysBetween(new LocalDate(1900, 12, 31), new LocalDate(1940, 1, 1)), only.DaysApart);
        Assert.Equal((0.7 * 0.9) + (0.2 * 0.7), only.Mass, 1e-12);
    }
}
