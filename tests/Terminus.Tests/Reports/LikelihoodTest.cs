namespace Terminus.Tests.Reports;

public class LikelihoodTest
{
    // IPCC guidance note of 2010, table 1; the figures as reprinted by reports that use the scale.
    [Theory]
    [InlineData(0.99, "virtually certain")]
    [InlineData(0.95, "extremely likely")]
    [InlineData(0.90, "very likely")]
    [InlineData(0.8999, "likely")]
    [InlineData(0.66, "likely")]
    [InlineData(0.6599, "more likely than not")]
    [InlineData(0.5001, "more likely than not")]
    [InlineData(0.5, "about as likely as not, or less")]
    public void Of_Share_IsTheWordOfTheScale(double share, string word) => Assert.Equal(word, Likelihood.Of(share));
}
