namespace Terminus.Tests.Reports;

public class ClaimReasonsTest
{
    // The interval of the pending piece is 6 March 1956 to 11 July 1961.
    [Theory]
    [InlineData("1950/1965", "The evidence leaves 1950–1965 open: it gives 1956–1961.")]
    [InlineData("1958", "1958 says more than the evidence does: it gives 1956–1961.")]
    public void Of_AClaimThatIsNotContradicted_GivesBothYears(string stated, string text) => Assert.Equal(text, Said(stated));

    [Fact]
    public void Of_AClaimThatOneItemRulesOut_NamesTheItemAndItsReason()
    {
        // Before 1956 only what is not stated speaks for it: 1 - 0.98.
        Assert.Equal(
            "1940 is ruled out (plausibility 0.02), above all by: the pending mark 2999999 on the back. "
            + "Marked as applied for: US utility patent 2999999, filed 6 March 1956, issued 11 July 1961. The words fit the time between the two.",
            Said("1940"));
    }

    private static string Said(string stated)
    {
        PieceDating dating = PieceDating.Of(Samples.Pending.Piece with { Stated = EdtfDate.Parse(stated) }, Samples.AsOf, Samples.Reference);
        return ReasonText.Of(ClaimReasons.Of(dating, dating.Stated!));
    }
}
