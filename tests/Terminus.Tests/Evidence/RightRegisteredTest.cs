namespace Terminus.Tests.EvidenceKinds;

public class RightRegisteredTest
{
    [Fact]
    public void StatedWindows_KnownDay_StartOnTheDayAndRunForTheTermAndTwoYears()
        => Assert.Equal(
            ["1936-05-04/.. (0.98)", "1936-05-04/1953-05-04 (0.7)"],
            Stated.By(new RightRegistered(Stated.Date("1936-05-04"), "GB", "registered-design", termYears: 15)));

    [Fact]
    public void StatedWindows_TradeMark_HaveNoEnd()
        => Assert.Equal(["1936-05-04/.. (0.98)"], Stated.By(new RightRegistered(Stated.Date("1936-05-04"), "US", "trade-mark")));

    [Fact]
    public void StatedWindows_TradeMarkWithATerm_EndWithIt()
        => Assert.Equal(
            ["1936-05-04/.. (0.98)", "1936-05-04/1958-05-04 (0.7)"],
            Stated.By(new RightRegistered(Stated.Date("1936-05-04"), "US", "trade-mark", termYears: 20)));

    [Fact]
    public void StatedWindows_EstimatedDay_StartInsideAtWhatBothStatementsLeave()
        => Assert.Equal(
            ["1961-01-01/.. (0.98)", "1961-07-04/.. (0.93)", "1961-07-11/.. (0.88)", "1961-07-11/1973-12-31 (0.7)"],
            Stated.By(new RightRegistered(Stated.Estimated(0.95, 0.9), termYears: 10)));

    [Fact]
    public void StatedWindows_UncertainAndApproximate_AreCappedAndWidened()
        => Assert.Equal(
            ["1931-01-01/.. (0.7)", "1931-01-01/1958-12-31 (0.7)"],
            Stated.By(new RightRegistered(Stated.Date("1936%"), termYears: 15)));
}
