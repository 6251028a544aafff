namespace Terminus.Tests.Reports;

public class WindowWordsTest
{
    [Theory]
    [InlineData(0.8976, "0.897")]
    [InlineData(0.8999999, "0.899")]
    [InlineData(0.8999999999, "0.9")]
    [InlineData(0.9, "0.9")]
    [InlineData(1, "1")]
    [InlineData(0, "0")]
    public void Lower_Belief_IsRoundedDown(double belief, string text) => Assert.Equal(text, WindowWords.Lower(belief));

    [Theory]
    [InlineData(0.0001, "0.001")]
    [InlineData(0.9991, "1")]
    [InlineData(0.08, "0.08")]
    [InlineData(0, "0")]
    public void Upper_Plausibility_IsRoundedUp(double plausibility, string text) => Assert.Equal(text, WindowWords.Upper(plausibility));

    [Theory]
    [InlineData(1, "1 day")]
    [InlineData(59, "59 days")]
    [InlineData(152, "5 months")]
    [InlineData(9497, "26 years")]
    public void Span_Days_ReadsInTheUnitThatFits(int days, string text) => Assert.Equal(text, WindowWords.Span(days));
}
