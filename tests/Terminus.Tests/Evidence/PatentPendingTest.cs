namespace Terminus.Tests.EvidenceKinds;

public class PatentPendingTest
{
    [Fact]
    public void StatedWindows_FiledAndIssued_RunFromFilingToIssue()
        => Assert.Equal(
            ["1956-03-06/.. (0.98)", "1956-03-06/1963-07-11 (0.95)", "1956-03-06/1961-07-11 (0.93)"],
            Stated.By(new PatentPending(Stated.Date("1956-03-06"), Stated.Date("1961-07-11"))));

    [Fact]
    public void StatedWindows_FilingUnknown_StartSixYearsBeforeTheIssue()
        => Assert.Equal(
            ["1955-07-11/.. (0.98)", "1955-07-11/1963-07-11 (0.95)", "1955-07-11/1961-07-11 (0.93)"],
            Stated.By(new PatentPending(issued: Stated.Date("1961-07-11"))));

    [Fact]
    public void StatedWindows_IssueUnknown_EndEightYearsAfterTheFiling()
        => Assert.Equal(
            ["1956-03-06/.. (0.98)", "1956-03-06/1966-03-06 (0.95)", "1956-03-06/1964-03-06 (0.93)"],
            Stated.By(new PatentPending(Stated.Date("1956-03-06"))));

    [Fact]
    public void StatedWindows_NothingKnown_AreThoseOfTheWordingAlone()
        => Assert.Equal(["1850-01-01/.. (0.85)"], Stated.By(new PatentPending()));

    [Fact]
    public void StatedWindows_KnownYears_RunFromTheFirstDayToTheLast()
        => Assert.Equal(
            ["1956-01-01/.. (0.98)", "1956-01-01/1963-12-31 (0.95)", "1956-01-01/1961-12-31 (0.93)"],
            Stated.By(new PatentPending(Stated.Date("1956"), Stated.Date("1961"))));

    [Fact]
    public void StatedWindows_ApproximateFiling_WidensItsOwnEndAlone()
        => Assert.Equal(
            ["1951-01-01/.. (0.98)", "1951-01-01/1963-07-11 (0.95)", "1951-01-01/1961-07-11 (0.93)"],
            Stated.By(new PatentPending(Stated.Date("1956~"), Stated.Date("1961-07-11"))));

    [Fact]
    public void StatedWindows_UncertainIssue_CapsTheWholeItem()
        => Assert.Equal(
            ["1956-03-06/.. (0.7)", "1956-03-06/1963-07-11 (0.7)", "1956-03-06/1961-07-11 (0.7)"],
            Stated.By(new PatentPending(Stated.Date("1956-03-06"), Stated.Date("1961-07-11?"))));

    [Fact]
    public void StatedWindows_IssuedLongBeforeFiled_KeepTheStartAlone()
        => Assert.Equal(
            ["1961-07-11/.. (0.98)"], Stated.By(new PatentPending(Stated.Date("1961-07-11"), Stated.Date("1956-03-06"))));
}
