namespace Terminus.Tests.Sightings;

public class EvennessTest
{
    // By hand: the mean 0.25 of one interior sighting is a quarter of the range from the middle, and sqrt(12) / 4 standard errors.
    [Fact]
    public void FromUniform_OneInteriorSighting_IsByHand()
        => Assert.Equal(-Math.Sqrt(12) / 4, Evenness.FromUniform([0, 1, 4]), 12);

    [Fact]
    public void FromRamp_MeanAtTwoThirds_IsZero()
        => Assert.Equal(0, Evenness.FromRamp([0, 2, 3]), 12);

    [Fact]
    public void FromRamp_OneInteriorSighting_IsByHand()
        => Assert.Equal((0.5 - (2.0 / 3)) * Math.Sqrt(18), Evenness.FromRamp([0, 2, 4]), 12);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void FromUniform_NoInteriorSighting_IsZero(int count)
        => Assert.Equal(0, Evenness.FromUniform([.. Enumerable.Range(0, count).Select(i => (double)i)]));

    // With one interior sighting the check can never fail: at most sqrt(12) / 2 = 1.73 standard errors.
    [Fact]
    public void Passes_ThreeSightings_Always()
        => Assert.True(Evenness.Passes(SightingRecord.Of(Examples.Years(1900, 1901, 1990), SightingEnd.First)));

    [Fact]
    public void Passes_SightingsCrowdedAtOneEnd_Not()
        => Assert.False(Evenness.Passes(SightingRecord.Of(Examples.Years(1900, 1901, 1902, 1903, 1990), SightingEnd.First)));

    [Fact]
    public void ExcludesRamp_ManySightingsCrowdedAtTheStart_OnlyFromThere()
    {
        Sighting[] crowded = Examples.Years([1900, 1901, 1902, 1903, 1904, 1905, 1906, 1907, 1908, 1990]);
        Assert.True(Evenness.ExcludesRamp(SightingRecord.Of(crowded, SightingEnd.First)));
        Assert.False(Evenness.ExcludesRamp(SightingRecord.Of(crowded, SightingEnd.Last)));
    }
}
