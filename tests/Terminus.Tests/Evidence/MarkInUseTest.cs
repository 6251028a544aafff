namespace Terminus.Tests.EvidenceKinds;

public class MarkInUseTest
{
    [Theory]
    [InlineData(true, MarkEnd.ForbiddenOrReplaced, "0.97", "0.93")]
    [InlineData(true, MarkEnd.Lapsed, "0.97", "0.75")]
    [InlineData(true, MarkEnd.Custom, "0.97", "0.7")]
    [InlineData(false, MarkEnd.Custom, "0.85", "0.7")]
    [InlineData(false, MarkEnd.Lapsed, "0.85", "0.75")]
    [InlineData(false, MarkEnd.ForbiddenOrReplaced, "0.85", "0.85")]
    public void StatedWindows_StartAndEnd_StandAtWhatBeganAndEndedThem(bool byLaw, MarkEnd end, string from, string until)
        => Assert.Equal(
            [$"1891-03-03/.. ({from})", $"1891-03-03/1921-12-31 ({until})"],
            Stated.By(new MarkInUse("invented wording", Stated.Date("1891-03-03"), Stated.Date("1921"), byLaw, end)));

    [Fact]
    public void StatedWindows_NoEnd_StayOpen()
        => Assert.Equal(["1891-01-01/.. (0.97)"], Stated.By(new MarkInUse("invented wording", Stated.Date("1891"), byLaw: true)));

    [Fact]
    public void StatedWindows_NoStart_AreOpenAtTheStart()
        => Assert.Equal(
            ["../1921-12-31 (0.93)"],
            Stated.By(new MarkInUse("invented wording", until: Stated.Date("1921"), end: MarkEnd.ForbiddenOrReplaced)));

    [Fact]
    public void StatedWindows_NoDates_SayNothing() => Assert.Empty(Stated.By(new MarkInUse("invented wording")));

    [Fact]
    public void StatedWindows_UncertainEnd_CapsTheWholeItem()
        => Assert.Equal(
            ["1891-01-01/.. (0.7)", "1891-01-01/1921-12-31 (0.7)"],
            Stated.By(new MarkInUse("invented wording", Stated.Date("1891"), Stated.Date("1921?"), byLaw: true, MarkEnd.Lapsed)));
}
