using System.Reflection;

namespace Terminus.Tests.EvidenceKinds;

public class AssumptionsTest
{
    public static TheoryData<string> Confidences => Named(typeof(double));

    public static TheoryData<string> WholeNumbers => Named(typeof(int));

    [Fact]
    public void House_IsTheDefault_AndHasNameAndVersion()
    {
        Assert.Equal(new Assumptions(), Assumptions.House);
        Assert.Equal("house 1.0.0", Assumptions.House.ToString());
    }

    [Theory]
    [MemberData(nameof(Confidences))]
    public void Init_ConfidenceOutsideItsRange_ThrowsWithTheValue(string name)
    {
        foreach (double value in new[] { -0.01, 1.01, double.NaN, double.PositiveInfinity })
        {
            Assert.Equal(value, Refused(name, value).ActualValue);
        }
    }

    [Theory]
    [MemberData(nameof(WholeNumbers))]
    public void Init_WholeNumberOutsideItsRange_ThrowsWithTheValue(string name)
    {
        foreach (int value in new[] { int.MinValue, -9999, 10_000, int.MaxValue })
        {
            Assert.Equal(value, Refused(name, value).ActualValue);
        }
    }

    [Theory]
    [MemberData(nameof(Confidences))]
    [MemberData(nameof(WholeNumbers))]
    public void Equals_OneNumberDiffers_IsFalse(string name)
    {
        var changed = new Assumptions();
        PropertyInfo property = typeof(Assumptions).GetProperty(name)!;
        property.SetValue(changed, property.PropertyType == typeof(double) ? 0.123 : (object)123);
        Assert.NotEqual(Assumptions.House, changed);
    }

    [Fact]
    public void With_OneNumber_ChangesWhatEvidenceStates()
    {
        Assumptions bold = Assumptions.House with { Name = "invented", PatentIssuedFrom = 1, PatentInForce = 0.8, TermSlackYears = 0 };
        Assert.Equal(
            ["1961-07-11/.. (1)", "1961-07-11/1978-07-11 (0.8)"],
            Stated.By(new PatentIssued(Stated.Date("1961-07-11"), "US", "utility"), bold));
        Assert.Equal("invented 1.0.0", bold.ToString());
    }

    [Fact]
    public void With_CircaAndCap_ChangeHowDatesAreTaken()
    {
        Assumptions wide = Assumptions.House with { CircaYears = 10, UncertainCap = 0.5 };
        Assert.Equal(["../1973-12-31 (0.5)"], Stated.By(new KnownBy(Stated.Date("1963%")), wide));
    }

    [Theory]
    [MemberData(nameof(Confidences))]
    [MemberData(nameof(WholeNumbers))]
    public void With_AnyNumberByItsName_IsTheSameAsSettingTheProperty(string name)
    {
        PropertyInfo property = typeof(Assumptions).GetProperty(name)!;
        var set = new Assumptions();
        property.SetValue(set, property.PropertyType == typeof(double) ? 0.123 : (object)123);
        double value = property.PropertyType == typeof(double) ? 0.123 : 123;
        Assert.Equal(set, Assumptions.House.With(name, value));
        Assert.Equal(set, Assumptions.House.With(char.ToLowerInvariant(name[0]) + name[1..], value));
    }

    [Fact]
    public void With_UnknownName_ThrowsAndListsTheNames()
    {
        string message = Assert.Throws<ArgumentException>(() => Assumptions.House.With("pendingWidnow", 0.9)).Message;
        Assert.Contains("\"pendingWidnow\"", message, StringComparison.Ordinal);
        Assert.Contains("pendingWindow", message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("circaYears", 2.5)]
    [InlineData("circaYears", -1)]
    [InlineData("spreadFrom", 10_000)]
    [InlineData("firmAt", 1.5)]
    [InlineData("firmAt", double.NaN)]
    [InlineData("circaYears", double.NaN)]
    [InlineData("circaYears", double.PositiveInfinity)]
    [InlineData("circaYears", 4294967301d)]
    public void With_ValueThatTheNumberMayNotHave_Throws(string name, double value)
        => Assert.Throws<ArgumentOutOfRangeException>(() => Assumptions.House.With(name, value));

    [Fact]
    public void WithName_NameAndVersion_AreSaid() => Assert.Equal("careful 2.0.0", Assumptions.House.WithName("careful", "2.0.0").ToString());

    [Fact]
    public void With_NoName_Throws() => Assert.Throws<ArgumentNullException>(() => Assumptions.House with { Name = null! });

    private static ArgumentOutOfRangeException Refused(string name, object value)
    {
        var error = Assert.Throws<TargetInvocationException>(
            () => typeof(Assumptions).GetProperty(name)!.SetValue(new Assumptions(), value));
        return Assert.IsType<ArgumentOutOfRangeException>(error.InnerException);
    }

    private static TheoryData<string> Named(Type type)
        => [.. typeof(Assumptions).GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.PropertyType == type).Select(p => p.Name)];

    [Fact]
    public void With_NumberThatIsNot_ListsThoseThereAre()
    {
        var error = Assert.Throws<ArgumentException>(() => Assumptions.House.With("invented", 1));
        Assert.StartsWith("No number is named \"invented\"; there are firmAt, circaYears, ", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void With_YearsThatAreNotWhole_SaysSo()
        => Assert.StartsWith(
            "A number of years, and a year, is whole.",
            Assert.Throws<ArgumentOutOfRangeException>(() => Assumptions.House.With("circaYears", 1.5)).Message,
            StringComparison.Ordinal);
}
