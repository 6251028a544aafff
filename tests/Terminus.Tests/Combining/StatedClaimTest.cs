using NodaTime;

namespace Terminus.Tests.Combining;

public class StatedClaimTest
{
    private static readonly LocalDate AsOf = new(2026, 11, 25);
    private static readonly Evidence Early = new Opinion(DateWindow.BetweenYears(1900, 1910), 0.95);
    private static readonly Evidence Surer = new Opinion(DateWindow.BetweenYears(1900, 1920), 0.99);

    [Fact]
    public void Test_ClaimThatItemsRuleOut_IsContradictedByTheSurest()
    {
        Assert.Equal((ClaimVerdict.Contradicted, 1), Verdict("1950", Early, Surer));
        Assert.Equal((ClaimVerdict.Contradicted, 0), Verdict("1950", Surer, Early));
    }

    [Fact]
    public void Test_ItemsThatRuleOutEqually_NameTheFirst()
        => Assert.Equal((ClaimVerdict.Contradicted, 0), Verdict("1950", Early, new Opinion(DateWindow.BetweenYears(1901, 1910), 0.95)));

    [Fact]
    public void Test_ItemThatOnlyDoubtsIt_NamesNone()
        => Assert.Equal((ClaimVerdict.Agrees, null), Verdict("1940/..", new Opinion(DateWindow.BetweenYears(1900, 1910), 0.5)));

    [Fact]
    public void Test_ClaimNarrowerThanTheAnswer_IsTooNarrow()
    {
        Assert.Equal((ClaimVerdict.TooNarrow, null), Verdict("1905", Early));
        Assert.Equal((ClaimVerdict.Agrees, null), Verdict("1900/1910", Early));
        Assert.Equal((ClaimVerdict.Agrees, null), Verdict("1900/1915", Early));
    }

    [Fact]
    public void Test_NarrowerClaimThatReachesTheLevel_Agrees()
    {
        // The answer at 0.9 is 1900 to 1920; 1900 to 1910 has no less belief at the level of 0.6.
        var dating = Dating.Of([new Opinion([new StatedWindow(DateWindow.BetweenYears(1900, 1920), 0.9), new StatedWindow(DateWindow.BetweenYears(1900, 1910), 0.6)])], AsOf);
        DatedInterval wide = dating.Interval(0.9)!;
        DatedInterval asked = dating.Interval(0.6)!;
        Assert.Equal(ClaimVerdict.TooNarrow, StatedClaim.Test(dating, EdtfDate.Parse("1900/1910"), wide).Verdict);
        Assert.Equal(ClaimVerdict.Agrees, StatedClaim.Test(dating, EdtfDate.Parse("1900/1910"), asked).Verdict);
    }

    private static (ClaimVerdict, int?) Verdict(string claim, params Evidence[] evidence)
    {
        var dating = Dating.Of(evidence, AsOf);
        StatedClaim tested = StatedClaim.Test(dating, EdtfDate.Parse(claim), dating.Interval(0.9));
        return (tested.Verdict, tested.By);
    }

    // Where the conflict is total nothing is believed, nothing is ruled out, and there is no answer to be narrower than.
    [Fact]
    public void Test_TotalConflict_RulesNothingOut()
        => Assert.Equal((ClaimVerdict.Agrees, null), Verdict("1930", new Opinion(DateWindow.InYear(1900), 1), new Opinion(DateWindow.InYear(1950), 1)));
}
