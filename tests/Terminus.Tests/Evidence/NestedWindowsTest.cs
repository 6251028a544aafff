namespace Terminus.Tests.EvidenceKinds;

public class NestedWindowsTest
{
    [Fact]
    public void Cut_WindowOutsideTheOneBefore_IsDropped()
        => Assert.Equal([Years(1950, 1960, 0.9)], NestedWindows.Cut([Years(1950, 1960, 0.9), Years(1961, 1970, 0.8)]));

    [Fact]
    public void Cut_ConfidenceThatRises_IsHeldDown()
        => Assert.Equal(
            [Years(1950, 1960, 0.7), Years(1955, 1960, 0.7)], NestedWindows.Cut([Years(1950, 1960, 0.7), Years(1955, 1965, 0.9)]));

    [Fact]
    public void Cut_AnyDate_IsLeftOutUnlessKept()
    {
        StatedWindow[] any = [new StatedWindow(DateWindow.Any, 1)];
        Assert.Empty(NestedWindows.Cut(any));
        Assert.Equal(any, NestedWindows.Cut(any, keepAny: true));
    }

    [Fact]
    public void AreNested_WindowsAsAPersonShouldStateThem_IsTrue()
    {
        Assert.True(NestedWindows.AreNested([]));
        Assert.True(NestedWindows.AreNested([Years(1950, 1960, 0.9), Years(1950, 1955, 0.9)]));
        Assert.False(NestedWindows.AreNested([Years(1950, 1960, 0.9), Years(1955, 1961, 0.8)]));
        Assert.False(NestedWindows.AreNested([Years(1950, 1960, 0.8), Years(1950, 1955, 0.9)]));
    }

    private static StatedWindow Years(int first, int last, double confidence) => new(DateWindow.BetweenYears(first, last), confidence);
}
