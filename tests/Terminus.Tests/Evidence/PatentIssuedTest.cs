namespace Terminus.Tests.EvidenceKinds;

public class PatentIssuedTest
{
    [Fact]
    public void StatedWindows_KnownDay_StartOnTheDayAndRunForTheTermAndTwoYears()
        => Assert.Equal(
            ["1961-07-11/.. (0.98)", "1961-07-11/1980-07-11 (0.7)"],
            Stated.By(new PatentIssued(Stated.Date("1961-07-11"), "US", "utility")));

    [Fact]
    public void StatedWindows_KnownYear_StartOnItsFirstDayAndEndFromItsLast()
        => Assert.Equal(
            ["1961-01-01/.. (0.98)", "1961-01-01/1980-12-31 (0.7)"],
            Stated.By(new PatentIssued(Stated.Date("1961"), "US", "utility")));

    [Fact]
    public void StatedWindows_ApproximateDate_AreWidenedByFiveYearsOnBothSides()
        => Assert.Equal(
            ["1956-01-01/.. (0.98)", "1956-01-01/1985-12-31 (0.7)"],
            Stated.By(new PatentIssued(Stated.Date("1961~"), "US", "utility")));

    [Fact]
    public void StatedWindows_UncertainDate_AreCappedAtSeventy()
        => Assert.Equal(
            ["1961-07-11/.. (0.7)", "1961-07-11/1980-07-11 (0.7)"],
            Stated.By(new PatentIssued(Stated.Date("1961-07-11?"), "US", "utility")));

    [Fact]
    public void StatedWindows_EstimatedDay_StartInsideAtWhatBothStatementsLeave()
        => Assert.Equal(
            ["1961-01-01/.. (0.98)", "1961-07-04/.. (0.88)", "1961-07-11/.. (0.78)", "1961-07-11/1980-12-31 (0.7)"],
            Stated.By(new PatentIssued(Stated.Estimated(0.9, 0.8), "US", "utility")));

    [Fact]
    public void StatedWindows_EstimateTooWeakForTheTerm_IsLeftOut()
        => Assert.Equal(
            ["1961-01-01/.. (0.98)", "1961-07-04/.. (0.88)", "1961-07-04/1980-12-31 (0.7)"],
            Stated.By(new PatentIssued(Stated.Estimated(0.9, 0.6), "US", "utility")));

    [Fact]
    public void StatedWindows_TermGiven_CountsBeforeTheLaw()
        => Assert.Equal(
            ["1961-07-11/.. (0.98)", "1961-07-11/1968-07-11 (0.7)"],
            Stated.By(new PatentIssued(Stated.Date("1961-07-11"), "US", "utility", termYears: 5)));

    [Fact]
    public void StatedWindows_IssuedBeforeADay_SayNothingOfTheStart()
        => Assert.Equal(["../1980-07-11 (0.7)"], Stated.By(new PatentIssued(Stated.Date("../1961-07-11"), termYears: 17)));

    [Fact]
    public void StatedWindows_LeapDay_EndOnTheLastOfFebruary()
        => Assert.Equal(
            ["1944-02-29/.. (0.98)", "1944-02-29/1963-02-28 (0.7)"],
            Stated.By(new PatentIssued(Stated.Date("1944-02-29"), "US", "utility")));

    [Fact]
    public void StatedWindows_EstimateThatLeavesWhatTheTermHas_IsStated()
    {
        Assumptions house = Assumptions.House with { PatentIssuedFrom = 1, PatentInForce = 0.5 };
        Assert.Equal(
            ["1961-01-01/.. (1)", "1961-07-04/.. (0.75)", "1961-07-11/.. (0.5)", "1961-07-11/1980-12-31 (0.5)"],
            Stated.By(new PatentIssued(Stated.Estimated(0.75, 0.5), "US", "utility"), house));
    }

    [Fact]
    public void Floor_FirmIssue_IsItsFirstDay()
    {
        var firm = new PatentIssued(Stated.Date("1961-07-11"), "US", "utility");
        Assert.Equal(DayNumber.Of(1961, 7, 11), firm.Floor(Assumptions.House));
        Assert.Equal(DayNumber.Of(1961, 7, 11), firm.Floor(Assumptions.House with { FirmAt = 0.98 }));
        Assert.Equal(DayNumber.Open, firm.Floor(Assumptions.House with { FirmAt = 0.99 }));
        Assert.Equal(DayNumber.Open, (firm with { Issued = Stated.Date("1961-07-11?") }).Floor(Assumptions.House));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(1001)]
    public void Constructor_TermOutsideItsRange_ThrowsWithTheValue(int years)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => new PatentIssued(Stated.Date("1961"), termYears: years));
        Assert.Equal("termYears", error.ParamName);
        Assert.Equal(years, error.ActualValue);
    }
}
