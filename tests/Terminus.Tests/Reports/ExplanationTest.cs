namespace Terminus.Tests.Reports;

public class ExplanationTest
{
    [Fact]
    public void Of_EveryPiece_StaysWithinItsWidth()
        => Assert.All(Samples.All, dating => Assert.All(Explanation.Of(dating, steps: true).Split('\n'), line => Assert.True(line.Length <= 100, line)));

    [Fact]
    public void Of_AnUnsignedOpinion_ReadsAsOne()
    {
        string text = Explanation.Of(Samples.Opinions((1950, 1970, 0.7)));
        Assert.Contains("The unsigned opinion for 1950–1970: 1 January 1950 to 31 December 1970.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Opinion of an opinion", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ABeliefBelowALevel_IsNotRoundedUpToIt()
    {
        // 1 - 0.32 x 0.32 = 0.8976 that one or both speak.
        string text = Explanation.Of(Samples.Opinions((1950, 1970, 0.68), (1951, 1970, 0.68)), steps: true);
        Assert.Contains("up to 0.897", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_Evidence_NamesItsEntriesAndSource()
    {
        string text = Explanation.Of(Samples.Pending);
        Assert.Contains("source: Invented.", text, StringComparison.Ordinal);
        Assert.Contains("reference: US utility 2999999, cuff.locking_bar", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_EveryPiece_EndsAsAnOpinion()
        => Assert.All(Samples.All, d => Assert.Contains("not an appraisal, an authentication or legal advice", Explanation.Of(d).ReplaceLineEndings(" "), StringComparison.Ordinal));
}
