namespace Terminus.Tests.EvidenceKinds;

public class DateInscribedTest
{
    [Fact]
    public void StatedWindows_Presentation_EndOnTheDayAndLookBackTwentyYears()
        => Assert.Equal(
            ["../1962-06-14 (0.93)", "1942-06-14/1962-06-14 (0.7)"], Stated.By(new DateInscribed(Stated.Date("1962-06-14"))));

    [Fact]
    public void StatedWindows_PresentationInAYear_EndOnItsLastDay()
        => Assert.Equal(["../1962-12-31 (0.93)", "1942-01-01/1962-12-31 (0.7)"], Stated.By(new DateInscribed(Stated.Date("1962"))));

    [Fact]
    public void StatedWindows_Commemorative_EndOnTheDayAlone()
        => Assert.Equal(["../1962-06-14 (0.75)"], Stated.By(new DateInscribed(Stated.Date("1962-06-14"), InscriptionPurpose.Commemorative)));

    [Fact]
    public void StatedWindows_Since_SayNothing()
        => Assert.Empty(Stated.By(new DateInscribed(Stated.Date("1868"), InscriptionPurpose.Since)));

    [Fact]
    public void StatedWindows_ApproximatePresentation_AreWidenedOnBothSides()
        => Assert.Equal(["../1967-12-31 (0.93)", "1937-01-01/1967-12-31 (0.7)"], Stated.By(new DateInscribed(Stated.Date("1962~"))));
}
