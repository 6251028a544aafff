namespace Terminus.Tests.EvidenceKinds;

public class MakerActiveTest
{
    [Fact]
    public void StatedWindows_BothDates_AreThreeYearsWiderOutside()
        => Assert.Equal(
            ["1946-01-01/1971-12-31 (0.95)", "1949-01-01/1968-12-31 (0.85)"],
            Stated.By(new MakerActive("larkfield", Stated.Date("1949"), Stated.Date("1968"))));

    [Fact]
    public void StatedWindows_NoEnd_AreOpenAtTheEnd()
        => Assert.Equal(
            ["1946-01-01/.. (0.95)", "1949-01-01/.. (0.85)"], Stated.By(new MakerActive("larkfield", Stated.Date("1949"))));

    [Fact]
    public void StatedWindows_NoStart_AreOpenAtTheStart()
        => Assert.Equal(
            ["../1971-12-31 (0.95)", "../1968-12-31 (0.85)"], Stated.By(new MakerActive("larkfield", until: Stated.Date("1968"))));

    [Fact]
    public void StatedWindows_NoDates_SayNothing() => Assert.Empty(Stated.By(new MakerActive("larkfield")));

    [Fact]
    public void StatedWindows_EndOfTheCalendar_StayInsideIt()
        => Assert.Equal(
            ["-9998-01-01/9999-12-31 (0.95)", "-9997-01-01/9998-12-31 (0.85)"],
            Stated.By(new MakerActive("larkfield", Stated.Date("-9997"), Stated.Date("9998"))));

    [Theory]
    [InlineData("1949?", "1968")]
    [InlineData("1949", "1968?")]
    public void StatedWindows_EitherEndUncertain_CapsTheWholeItem(string from, string until)
        => Assert.All(
            new MakerActive("larkfield", Stated.Date(from), Stated.Date(until)).StatedWindows(),
            window => Assert.Equal(0.7, window.Confidence));
}
