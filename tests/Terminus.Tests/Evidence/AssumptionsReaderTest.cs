using System.Globalization;
using System.Text;

namespace Terminus.Tests.EvidenceKinds;

public class AssumptionsReaderTest
{
    public static TheoryData<string> Numbers => [.. AssumedNumber.All.Select(number => number.Name)];

    [Fact]
    public void Numbers_AreEveryPropertyOfTheHouse_InItsOrder()
        => Assert.Equal(
            typeof(Assumptions).GetProperties().Where(p => p.PropertyType != typeof(string) && p.GetMethod is { IsStatic: false }).Select(p => char.ToLowerInvariant(p.Name[0]) + p.Name[1..]),
            AssumedNumber.All.Select(number => number.Name));

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Read_OneNumber_ReplacesThatOfItsNameAndNoOther(string name)
    {
        var property = typeof(Assumptions).GetProperty(char.ToUpperInvariant(name[0]) + name[1..])!;
        object value = property.PropertyType == typeof(double) ? 0.125 : (object)77;
        var expected = new Assumptions();
        property.SetValue(expected, value);
        Assert.Equal(expected, ReadWith(name, Convert.ToString(value, CultureInfo.InvariantCulture)!).OrThrow());
    }

    [Theory]
    [InlineData("firmAt", "1.01")]
    [InlineData("firmAt", "-0.01")]
    [InlineData("circaYears", "-1")]
    [InlineData("circaYears", "1001")]
    [InlineData("circaYears", "1.5")]
    [InlineData("spreadFrom", "-9999")]
    [InlineData("spreadFrom", "10000")]
    public void Read_NumberOutsideItsRange_IsAProblemAtItsPlaceAndChangesNothing(string name, string value)
    {
        DocumentResult<Assumptions> result = ReadWith(name, value);
        Assert.Equal("$." + name, Assert.Single(result.Problems).Path);
        Assert.Equal(Assumptions.House, result.Value);
    }

    [Theory]
    [InlineData("spreadFrom", "-10000", "a year from -9998 to 9999")]
    [InlineData("makerYears", "-1", "a number of years from 0 to 1000")]
    public void Read_NumberOutsideItsRange_SaysWhatIsAllowed(string name, string value, string allowed)
        => Assert.Contains(allowed, Assert.Single(ReadWith(name, value).Problems).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("circaYears", "0")]
    [InlineData("circaYears", "1000")]
    [InlineData("spreadFrom", "-9998")]
    [InlineData("spreadFrom", "9999")]
    public void Read_NumberAtItsLimit_IsTaken(string name, string value) => Assert.True(ReadWith(name, value).IsSound);

    [Fact]
    public void Read_NameAndVersion_AreThoseOfTheFile()
        => Assert.Equal("invented 2.1.0", Read("""{ "format": 1, "name": "invented", "version": "2.1.0" }""").OrThrow().ToString());

    [Fact]
    public void Read_NameThatIsNone_IsAProblemAndTheHouseIsKept()
    {
        DocumentResult<Assumptions> result = Read("""{ "format": 1, "name": 3, "version": "" }""");
        Assert.Equal(["$.name", "$.version"], result.Problems.Select(p => p.Path));
        Assert.Equal("house 1.0.0", result.Value!.ToString());
    }

    [Fact]
    public void Read_NameThatIsNone_SaysWhatIsWanted()
        => Assert.Equal(
            ["Found the number 3 where a name", "Found the number 4 where a version"],
            Read("""{ "format": 1, "name": 3, "version": 4 }""").Problems.Select(p => p.Message[..p.Message.IndexOf(',', StringComparison.Ordinal)]));

    [Fact]
    public void Read_HigherFormat_IsRefused()
        => Assert.Equal("$.format", Assert.Single(Read("""{ "format": 99, "name": "invented", "version": "1.0.0" }""").Problems).Path);

    [Fact]
    public void Read_NoObject_HasNoValue()
    {
        DocumentResult<Assumptions> result = Read("[]");
        Assert.Null(result.Value);
        Assert.Single(result.Problems);
    }

    [Fact]
    public void Read_UnknownMember_NamesWhatIsAllowed()
    {
        DocumentProblem problem = Assert.Single(Read("""{ "format": 1, "name": "invented", "version": "1", "firmAtt": 0.9 }""").Problems);
        Assert.Contains("firmAt", problem.Message, StringComparison.Ordinal);
        Assert.Contains("a set of house defaults", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_NoNameAndNoVersion_NamesBoth()
        => Assert.Equal(
            ["The member \"name\" is missing; a set of house defaults must have it.", "The member \"version\" is missing; a set of house defaults must have it."],
            Read("{}").Problems.Select(problem => problem.Message));

    private static DocumentResult<Assumptions> ReadWith(string name, string value)
        => Read($$"""{ "format": 1, "name": "house", "version": "1.0.0", "{{name}}": {{value}} }""");

    private static DocumentResult<Assumptions> Read(string json) => AssumptionsReader.Read(Encoding.UTF8.GetBytes(json), null);
}
