namespace Terminus.Tests.Reports;

/// <summary>The formula by which contrast is judged, against known values.</summary>
public class PaletteTest
{
    // WCAG 2.2: black on white is 21:1; #767676 is widely given as the lightest grey that reaches 4.5:1 on white (common practice).
    [Fact]
    public void Luminance_WhiteAndBlack_AreOneAndZero()
    {
        Assert.Equal(1, Palette.Luminance("#ffffff"), 12);
        Assert.Equal(0, Palette.Luminance("#000000"), 12);
    }

    [Theory]
    [InlineData("#767676", true)]
    [InlineData("#777777", false)]
    public void Luminance_GreyOnWhite_ReachesTheRatioUpTo767676(string grey, bool reaches)
        => Assert.Equal(reaches, 1.05 / (Palette.Luminance(grey) + 0.05) >= 4.5);
}
