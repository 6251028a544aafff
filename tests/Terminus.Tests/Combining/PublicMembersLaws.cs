using FsCheck.Xunit;
using NodaTime;

namespace Terminus.Tests.Combining;

[Properties(Arbitrary = [typeof(Gens)], MaxTest = 60)]
public class PublicMembersLaws
{
    [Property]
    public void Law9_No_public_member_of_a_dating_throws(EvidenceSet set, DateWindow window, LocalDate day)
    {
        Dating dating = set.Date();
        var walk = new PublicWalk([window, day, dating.Interval(0.9), DateWindow.Any, true, 0.66, Assumptions.House, new StatedWindow(window, 0.5)]);
        walk.Visit(dating);
        Assert.Equal(dating.Conflict < 1, walk.Seen.Contains(typeof(DatedInterval)));
        Assert.Contains(typeof(Spread), walk.Seen);
        for (int item = 0; item < dating.Evidence.Count; item++)
        {
            walk.Visit(dating.InfluenceOf(item, 0.9));
        }
    }

    [Property]
    public void Law9_No_public_member_of_evidence_throws(Evidence item, EvidenceDate date, DateWindow window, LocalDate day)
    {
        var walk = new PublicWalk([item, date, window, day, 0.66, Assumptions.House, EdtfDate.Parse("1961~")]);
        walk.Visit(item);
        walk.Visit(date);
        walk.VisitStatic(typeof(EvidenceDate));
    }

    [Property]
    public void Law9_The_default_of_every_struct_is_a_value(DateWindow window, LocalDate day)
    {
        var walk = new PublicWalk([window, day, 0.66]);
        walk.Visit(default(DateWindow));
        walk.Visit(default(StatedWindow));
        walk.Visit(default(SpreadCell));
        Assert.Equal(3, walk.Seen.Count);
    }

    [Property]
    public void Law9_The_words_of_a_value_are_never_those_of_a_culture(EvidenceSet set)
    {
        Dating dating = set.Date();
        string Words() => string.Join("\n", dating.Evidence.Cast<object>().Concat(dating.Disagreements).Concat(dating.Readings).Concat(dating.Steps)
            .Append(dating.Assumptions).Append(dating.Evidence.Count > 0 ? dating.InfluenceOf(0, 0.9) : "none"));
        string invariant = Words();
        foreach (string culture in CultureScope.Hard)
        {
            using var scope = new CultureScope(culture);
            Assert.Equal(invariant, Words());
        }
    }
}
