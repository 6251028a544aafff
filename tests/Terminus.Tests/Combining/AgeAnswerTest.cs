using NodaTime;

namespace Terminus.Tests.Combining;

public class AgeAnswerTest
{
    private static readonly LocalDate AsOf = new(2026, 11, 25);

    [Theory]
    [InlineData(1926, 11, 24, AgeVerdict.Yes)]
    [InlineData(1926, 11, 25, AgeVerdict.No)]
    public void Of_ACertainDay_CountsOnlyWhatIsOlder(int year, int month, int day, AgeVerdict expected)
        => Assert.Equal(expected, Answer(new Opinion(DateWindow.On(new LocalDate(year, month, day)), 1)).Verdict);

    [Theory]
    [InlineData(1900, 0.9, AgeVerdict.Yes)]
    [InlineData(1900, 0.89, AgeVerdict.CannotTell)]
    [InlineData(1950, 0.9, AgeVerdict.No)]
    [InlineData(1950, 0.89, AgeVerdict.CannotTell)]
    public void Of_BeliefAtTheLevel_IsEnough(int year, double confidence, AgeVerdict expected)
        => Assert.Equal(expected, Answer(new Opinion(DateWindow.InYear(year), confidence)).Verdict);

    // Both are older than a hundred years, but what is believed of either is not to be given unqualified.
    [Fact]
    public void Of_QualifiedAnswer_CannotTell()
    {
        AgeAnswer answer = Answer(new Opinion(DateWindow.InYear(1850), 0.99), new Opinion(DateWindow.InYear(1900), 0.99));
        Assert.True(answer.Belief > 0.9);
        Assert.Equal(AgeVerdict.CannotTell, answer.Verdict);
    }

    private static AgeAnswer Answer(params Evidence[] evidence) => AgeAnswer.Of(Dating.Of(evidence, AsOf), 100, 0.9);
}
