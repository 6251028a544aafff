namespace Terminus.Tests;

public class GuardTest
{
    [Theory]
    [InlineData(0, true, false)]
    [InlineData(0.5, true, true)]
    [InlineData(1, true, true)]
    [InlineData(-0.001, false, false)]
    [InlineData(1.001, false, false)]
    [InlineData(double.NaN, false, false)]
    public void Confidence_AndLevel_LieInTheirRanges(double value, bool isConfidence, bool isLevel)
    {
        Check(value, isConfidence, () => Guard.Confidence(value, "it"), "A confidence lies from 0 (says nothing) to 1 (certain).");
        Check(value, isLevel, () => Guard.Level(value, "it"), "A level lies above 0 and at most at 1.");
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(1000, true)]
    [InlineData(-1, false)]
    [InlineData(1001, false)]
    public void Years_AndSpan_AreFromNoneToAThousand(int value, bool allowed)
    {
        Check(value, allowed, () => Guard.Years(value, "it")!.Value, "A number of years lies from 0 to 1000.");
        Check(value, allowed, () => Guard.Span(value, "it"), "A number of years lies from 0 to 1000.");
        Assert.Null(Guard.Years(null, "it"));
    }

    [Theory]
    [InlineData(-9998, true)]
    [InlineData(9999, true)]
    [InlineData(-9999, false)]
    [InlineData(10000, false)]
    public void Year_IsOfTheIsoCalendar(int value, bool allowed) => Check(value, allowed, () => Guard.Year(value, "it"), "A year lies from -9998 to 9999.");

    [Fact]
    public void Named_AValueWithoutAName_ThrowsWithTheValue()
    {
        Guard.Named(true, EvidenceGrade.Low, "it");
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Guard.Named(false, (EvidenceGrade)7, "it"));
        Assert.Equal(("it", (EvidenceGrade)7), (error.ParamName, error.ActualValue));
        Assert.StartsWith("The value is none of the names of its enum.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void NoNulls_GivesTheListOrNamesTheFirstNull()
    {
        ValueList<string> sound = ValueList.Of(["a", "b"]);
        Assert.Same(sound, Guard.NoNulls(sound, "it"));
        Assert.Empty(Guard.NoNulls(ValueList<string>.Empty, "it"));
        var error = Assert.Throws<ArgumentException>(() => Guard.NoNulls(ValueList.Of(["a", null!, null!]), "it"));
        Assert.Equal("it", error.ParamName);
        Assert.StartsWith("The item at index 1 is null.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void NotNull_GivesTheValueOrThrowsWithTheName()
    {
        Assert.Equal("a", Guard.NotNull("a", "it"));
        Assert.Equal("it", Assert.Throws<ArgumentNullException>(() => Guard.NotNull<string>(null, "it")).ParamName);
    }

    private static void Check<T>(T value, bool allowed, Func<T> guarded, string message)
        where T : struct
    {
        if (allowed)
        {
            Assert.Equal(value, guarded());
            return;
        }

        var error = Assert.Throws<ArgumentOutOfRangeException>(() => { guarded(); });
        Assert.Equal(("it", (object)value), (error.ParamName, error.ActualValue));
        Assert.StartsWith(message, error.Message, StringComparison.Ordinal);
    }
}
