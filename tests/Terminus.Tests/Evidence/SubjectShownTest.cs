namespace Terminus.Tests.EvidenceKinds;

public class SubjectShownTest
{
    [Fact]
    public void StatedWindows_PlainFact_StartWhenItFirstExisted()
        => Assert.Equal(["1952-05-02/.. (0.98)"], Stated.By(new SubjectShown("invented.jet", Stated.Date("1952-05-02"))));

    [Theory]
    [InlineData(EvidenceGrade.High, "0.97")]
    [InlineData(EvidenceGrade.Medium, "0.92")]
    [InlineData(EvidenceGrade.Low, "0.75")]
    public void StatedWindows_Graded_StandAtTheGrade(EvidenceGrade grade, string confidence)
        => Assert.Equal([$"1952-01-01/.. ({confidence})"], Stated.By(new SubjectShown("invented.jet", Stated.Date("1952"), grade)));

    [Fact]
    public void StatedWindows_Decade_StartOnItsFirstDay()
        => Assert.Equal(["1950-01-01/.. (0.98)"], Stated.By(new SubjectShown("invented.jet", Stated.Date("195X"))));
}
