namespace Terminus.Tests.Sightings;

public class CensoredLikelihoodTest
{
    [Theory]
    [InlineData(0)]
    [InlineData(10)]
    [InlineData(15)]
    [InlineData(20)]
    public void Of_Row_IsExact(int start)
    {
        WorkedExample row = WorkedExample.Of("CENSORED-likelihood");
        Assert.Equal(row.Expected("L(" + DateText.Digits(start) + ")"), At(start), 15);
    }

    [Fact]
    public void Of_Row_IsGreatestAtTheRowsStart()
    {
        double best = Enumerable.Range(0, 21).MaxBy(start => At(start));
        Assert.Equal(WorkedExample.Of("CENSORED-likelihood").Expected("argmax"), best);
    }

    [Fact]
    public void Of_StartAfterAnExactSighting_IsZero() => Assert.Equal(0, At(21));

    private static double At(double start)
    {
        WorkedExample row = WorkedExample.Of("CENSORED-likelihood");
        double exact = row.Input("exact_sighting");
        double[] window = row.Inputs("interval_sighting");
        return CensoredLikelihood.Of(start, row.Input("known_end"), [(exact, exact), (window[0], window[1])]);
    }
}
