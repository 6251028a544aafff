namespace Terminus.Tests.Combining;

/// <summary>
/// Law 10: of simulated pieces whose independent evidence is right as often as it states, at least the stated share lie in the interval. An
/// interval by belief is a lower bound, so only too few hits refuse it (size 0.001).
/// </summary>
public class CoverageTest
{
    public static TheoryData<string> Promised => [.. Situation.All.Where(s => s.IsPromised).Select(s => s.ToString())];

    [Theory]
    [MemberData(nameof(Promised))]
    public void Intervals_OfEvidenceAsGoodAsStated_HoldTheirConfidence(string situation) => Assert.Empty(LevelsNotHeld(Named(situation)));

    // Where wrong windows miss by a little the answer has nothing to spare: it holds over pieces of one to eight items, and not with eight.
    [Fact]
    public void Intervals_OfNearMisses_HoldOverOneToEightItemsAndNotWithEight()
    {
        Assert.Empty(LevelsNotHeld(Named("the same, wrong by three years at most, 1 to 8")));
        Assert.Equal(Coverage.Levels, LevelsNotHeld(Named("the same, wrong by three years at most, 8")));
    }

    // What must fail, so that the test has shown its power: each item states the root of what it delivers.
    [Fact]
    public void Intervals_OfEvidenceThatStatesTheRoot_AreFoundOutAtEveryLevel()
    {
        Erring root = new(stated => stated * stated, MissYears: 3);
        Assert.Equal(Coverage.Levels, LevelsNotHeld(Coverage.Of(Situation.Mixed(new SplitMix64(Situation.Seed), root))));
    }

    // One witness with a window at each level claims exactly that level, so too many hits are refused too.
    [Fact]
    public void Intervals_OfOneWitnessWithAWindowAtEachLevel_HoldExactlyThat()
    {
        IReadOnlyList<int> exact = OneWitness(Erring.AsStated).Hits;
        Assert.All(Coverage.Levels.Zip(exact), pair =>
            Assert.InRange(pair.Second, Acceptance.Between(Coverage.Pieces, pair.First).Least, Acceptance.Between(Coverage.Pieces, pair.First).Most));
        Assert.Equal(Coverage.Levels, LevelsNotHeld(OneWitness(new Erring(stated => stated * stated))));
    }

    [Theory]
    [InlineData("three patents on one die, as so many, 3")]
    [InlineData("eight advertisements of one model, as so many, 8")]
    [InlineData("three features of one fashion, as so many, 3")]
    public void Intervals_OfOneCauseCountedOften_DoNotHold(string situation) => Assert.Contains(0.9, LevelsNotHeld(Named(situation)));

    private static Coverage OneWitness(Erring erring)
    {
        var simulation = new Simulation(new SplitMix64(Situation.Seed), erring);
        return Coverage.Of(() => simulation.Next(1, _ => day => new Opinion(
            Coverage.Levels.Reverse().Select((level, i) => new StatedWindow(DateWindow.OfDays(day - (8_000 >> i), day + (8_000 >> i)), level)))));
    }

    private static Coverage Named(string situation) => Situation.All.Single(s => s.ToString() == situation).Coverage;

    private static IEnumerable<double> LevelsNotHeld(Coverage coverage)
        => Coverage.Levels.Where((level, i) => coverage.Hits[i] < Acceptance.AtLeast(Coverage.Pieces, level));
}
