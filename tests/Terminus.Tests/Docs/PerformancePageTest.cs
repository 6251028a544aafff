using Terminus.Benchmarks.Figures;
using Terminus.Tests.Architecture;

namespace Terminus.Tests.Docs;

/// <summary>The tables of the page on performance are those of the measured figures that stand in the repository.</summary>
public sealed class PerformancePageTest
{
    [Fact]
    public void Page_WrittenFromItsFigures_IsThePage()
    {
        string page = File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "performance.md")).ReplaceLineEndings("\n");
        Assert.Equal(PerformancePage.Text(Path.Combine(SourceTree.Root, "benchmarks", "results", "raw"), page.TrimEnd('\n').Split('\n')), page);
    }

    [Theory]
    [InlineData(2.0, "met")]
    [InlineData(2.01, "**missed**")]
    [InlineData(double.NaN, "not measured")]
    public void Verdict_OfALimitAbove_IsMetUpToIt(double ratio, string verdict)
        => Assert.Equal(verdict, new Target("a", "b", "c", ratio).NoMoreThan(2).Verdict);

    [Theory]
    [InlineData(1.4, "met")]
    [InlineData(1.39, "**missed**")]
    public void Verdict_OfALimitBelow_IsMetFromIt(double ratio, string verdict)
        => Assert.Equal(verdict, new Target("a", "b", "c", ratio).NoLessThan(1.4).Verdict);

    [Theory]
    [InlineData(0.5, "0.50 ns")]
    [InlineData(1_234, "1.23 µs")]
    [InlineData(45_600_000, "45.6 ms")]
    [InlineData(789e9, "789 s")]
    [InlineData(double.NaN, "–")]
    public void Time_InWords_HasThreeDigits(double nanoseconds, string words) => Assert.Equal(words, FigureText.Time(nanoseconds));
}
