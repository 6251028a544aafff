namespace Terminus.Tests.EvidenceKinds;

public class OpinionTest
{
    [Fact]
    public void StatedWindows_Nested_AreAsGiven()
        => Assert.Equal(
            ["1940-01-01/.. (0.9)", "1950-01-01/1970-12-31 (0.65)"],
            Stated.By(new Opinion([new StatedWindow(DateWindow.From(new NodaTime.LocalDate(1940, 1, 1)), 0.9), Window(1950, 1970, 0.65)])));

    [Fact]
    public void StatedWindows_NotNested_AreCutAndNeverRise()
        => Assert.Equal(
            ["1940-01-01/1960-12-31 (0.7)", "1950-01-01/1960-12-31 (0.7)"],
            Stated.By(new Opinion([Window(1940, 1960, 0.7), Window(1950, 1970, 0.9), Window(1961, 1970, 0.5)])));

    [Fact]
    public void StatedWindows_AnyDateOrNoConfidence_SayNothing()
        => Assert.Empty(Stated.By(new Opinion([new StatedWindow(DateWindow.Any, 1), Window(1950, 1970, 0)])));

    [Fact]
    public void StatedWindows_NoWindow_SaysNothing() => Assert.Empty(Stated.By(new Opinion([])));

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void Constructor_ConfidenceOutsideItsRange_ThrowsWithTheValue(double confidence)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => new Opinion(DateWindow.InYear(1950), confidence));
        Assert.Equal("confidence", error.ParamName);
        Assert.Equal(confidence, error.ActualValue);
    }

    private static StatedWindow Window(int first, int last, double confidence)
        => new(DateWindow.BetweenYears(first, last), confidence);
}
