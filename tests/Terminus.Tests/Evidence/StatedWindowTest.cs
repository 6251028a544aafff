using NodaTime;

namespace Terminus.Tests.EvidenceKinds;

public class StatedWindowTest
{
    private static readonly StatedWindow Stated = new(DateWindow.From(new LocalDate(1961, 7, 11)), 0.98);

    [Fact]
    public void Equality_IsThatOfWindowAndConfidence()
    {
        Assert.True(Stated == new StatedWindow(DateWindow.From(new LocalDate(1961, 7, 11)), 0.98));
        Assert.True(Stated != new StatedWindow(DateWindow.From(new LocalDate(1961, 7, 12)), 0.98));
        Assert.True(Stated != Stated.WithConfidence(0.97));
        Assert.False(Stated != Stated.WithConfidence(0.98));
        Assert.False(Stated.Equals((object)"1961"));
    }

    [Fact]
    public void ToString_IsTheWindowAndItsConfidence() => Assert.Equal("1961-07-11/.. (0.98)", Stated.ToString());
}
