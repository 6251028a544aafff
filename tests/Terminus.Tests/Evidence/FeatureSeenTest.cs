namespace Terminus.Tests.EvidenceKinds;

public class FeatureSeenTest
{
    private static readonly FeatureSeen Whole = new(
        "invented.toggle", Stated.Date("1949"), Stated.Date("1952"), Stated.Date("1965"), Stated.Date("1970"));

    [Fact]
    public void StatedWindows_AllDates_NarrowFromIntroducedToCommon()
        => Assert.Equal(
            ["1949-01-01/.. (0.85)", "1949-01-01/1970-12-31 (0.8)", "1952-01-01/1965-12-31 (0.7)"], Stated.By(Whole));

    [Theory]
    [InlineData(EvidenceBasis.Patent, EvidenceGrade.High, "0.97")]
    [InlineData(EvidenceBasis.Law, EvidenceGrade.High, "0.97")]
    [InlineData(EvidenceBasis.Event, EvidenceGrade.Medium, "0.92")]
    [InlineData(EvidenceBasis.Patent, EvidenceGrade.Low, "0.75")]
    [InlineData(EvidenceBasis.Trade, EvidenceGrade.High, "0.85")]
    [InlineData(EvidenceBasis.Trade, EvidenceGrade.Medium, "0.85")]
    [InlineData(EvidenceBasis.Trade, EvidenceGrade.Low, "0.75")]
    public void StatedWindows_Introduction_StandsAtTheLowerOfBasisAndGrade(EvidenceBasis basis, EvidenceGrade grade, string confidence)
        => Assert.Equal(
            [$"1949-01-01/.. ({confidence})"],
            Stated.By(new FeatureSeen("invented.toggle", Stated.Date("1949"), basis: basis, grade: grade)));

    [Fact]
    public void StatedWindows_EndedByLaw_EndAtNinetySeven()
        => Assert.Equal(
            ["1949-01-01/.. (0.97)", "1949-01-01/1970-12-31 (0.97)", "1952-01-01/1965-12-31 (0.7)"],
            Stated.By(Whole with { Basis = EvidenceBasis.Law, Grade = EvidenceGrade.High, EndedByLaw = true }));

    [Fact]
    public void StatedWindows_LowGrade_NoInnerWindowRisesAboveIt()
        => Assert.Equal(
            ["1949-01-01/.. (0.75)", "1949-01-01/1970-12-31 (0.75)", "1952-01-01/1965-12-31 (0.7)"],
            Stated.By(Whole with { Grade = EvidenceGrade.Low, EndedByLaw = true }));

    [Fact]
    public void StatedWindows_OnlyGone_AreOpenAtTheStart()
        => Assert.Equal(["../1970-12-31 (0.8)"], Stated.By(new FeatureSeen("invented.toggle", gone: Stated.Date("1970"))));

    [Fact]
    public void StatedWindows_OnlyCommonAndFading_AreTheCommonWindow()
        => Assert.Equal(
            ["1952-01-01/1965-12-31 (0.7)"],
            Stated.By(new FeatureSeen("invented.toggle", common: Stated.Date("1952"), fading: Stated.Date("1965"))));

    [Fact]
    public void StatedWindows_CommonFromAlone_IsOpenAtTheEnd()
        => Assert.Equal(["1952-01-01/.. (0.7)"], Stated.By(new FeatureSeen("invented.toggle", common: Stated.Date("1952"))));

    [Fact]
    public void StatedWindows_NoDates_SayNothing() => Assert.Empty(Stated.By(new FeatureSeen("invented.toggle")));

    [Fact]
    public void StatedWindows_CommonOutsideItsLife_IsCutToIt()
        => Assert.Equal(
            ["1949-01-01/.. (0.85)", "1949-01-01/1970-12-31 (0.8)", "1949-01-01/1965-12-31 (0.7)"],
            Stated.By(Whole with { Common = Stated.Date("1940") }));

    [Fact]
    public void StatedWindows_UncertainFading_CapsTheWholeItem()
        => Assert.Equal(
            ["1949-01-01/.. (0.7)", "1949-01-01/1970-12-31 (0.7)", "1952-01-01/1965-12-31 (0.7)"],
            Stated.By(Whole with { Fading = Stated.Date("1965?") }));

    [Fact]
    public void StatedWindows_ApproximateIntroduction_StartsFiveYearsEarlier()
        => Assert.Equal(
            ["1944-01-01/.. (0.85)", "1944-01-01/1970-12-31 (0.8)", "1952-01-01/1965-12-31 (0.7)"],
            Stated.By(Whole with { Introduced = Stated.Date("1949~") }));

    public static TheoryData<FeatureSeen> OneUncertainDate =>
    [
        Whole with { Introduced = Stated.Date("1949?") },
        Whole with { Common = Stated.Date("1952?") },
        Whole with { Fading = Stated.Date("1965?") },
        Whole with { Gone = Stated.Date("1970?") },
    ];

    [Theory]
    [MemberData(nameof(OneUncertainDate))]
    public void StatedWindows_AnyDateUncertain_CapsTheWholeItem(FeatureSeen feature)
        => Assert.All(feature.StatedWindows(), window => Assert.Equal(0.7, window.Confidence));

    [Fact]
    public void StatesSomething_AnyDateAlone_IsTrue()
    {
        Assert.False(new FeatureSeen("f").StatesSomething);
        Assert.True(new FeatureSeen("f", introduced: Stated.Date("1949")).StatesSomething);
        Assert.True(new FeatureSeen("f", common: Stated.Date("1949")).StatesSomething);
        Assert.True(new FeatureSeen("f", fading: Stated.Date("1949")).StatesSomething);
        Assert.True(new FeatureSeen("f", gone: Stated.Date("1949")).StatesSomething);
    }

    [Fact]
    public void IsUsageOnly_NeitherIntroductionNorEndByLaw_IsTrue()
    {
        Assert.True(new FeatureSeen("f", common: Stated.Date("1949")).IsUsageOnly);
        Assert.True(new FeatureSeen("f", gone: Stated.Date("1970")).IsUsageOnly);
        Assert.True(new FeatureSeen("f", endedByLaw: true).IsUsageOnly);
        Assert.False(new FeatureSeen("f", gone: Stated.Date("1970"), endedByLaw: true).IsUsageOnly);
        Assert.False(new FeatureSeen("f", introduced: Stated.Date("1949")).IsUsageOnly);
        Assert.False(new FeatureSeen("f", Stated.Date("1949"), gone: Stated.Date("1970"), endedByLaw: true).IsUsageOnly);
    }
}
