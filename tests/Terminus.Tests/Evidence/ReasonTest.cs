namespace Terminus.Tests.EvidenceKinds;

public class ReasonTest
{
    [Fact]
    public void Indexer_KnownAndUnknownName_GivesValueOrNull()
    {
        var reason = new Reason("registers.year-span", "year", "1880", "office", "US");
        Assert.Equal("1880", reason["year"]);
        Assert.Null(reason["Year"]);
        Assert.Equal("registers.year-span(year=1880, office=US)", reason.ToString());
    }

    [Fact]
    public void Constructor_NameWithoutValue_Throws()
    {
        var error = Assert.Throws<ArgumentException>(() => new Reason("r", "year"));
        Assert.Equal("parameters", error.ParamName);
        Assert.StartsWith("The parameters of a reason are names and values in turn.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Constructor_Null_ThrowsWithTheName()
    {
        Assert.Equal("rule", Assert.Throws<ArgumentNullException>(() => new Reason(null!)).ParamName);
        Assert.Equal("parameters", Assert.Throws<ArgumentNullException>(() => new Reason("r", null!)).ParamName);
    }

    [Fact]
    public void Equals_ParametersDiffer_IsFalse()
    {
        Assert.Equal(new Reason("r", "a", "1"), new Reason("r", "a", "1"));
        Assert.NotEqual(new Reason("r", "a", "1"), new Reason("r", "a", "2"));
        Assert.NotEqual(new Reason("r", "a", "1"), new Reason("r", "b", "1"));
        Assert.NotEqual(new Reason("r", "a", "1"), new Reason("q", "a", "1"));
        Assert.NotEqual(new Reason("r"), new Reason("r", "a", "1"));
        Assert.NotEqual(new Reason("r", "a", "1"), new Reason("r"));
        Assert.False(new Reason("r").Equals(null));
    }

    [Fact]
    public void Equals_Itself_IsTrue()
    {
        var reason = new Reason("r", "a", "1");
        Assert.True(reason.Equals(reason));
    }

    [Fact]
    public void GetHashCode_ReasonsOfOneRule_DifferByTheirValues()
    {
        Assert.Equal(new Reason("r", "a", "1").GetHashCode(), new Reason("r", "a", "1").GetHashCode());
        Assert.Equal(1000, Enumerable.Range(0, 1000).Select(i => new Reason("r", "a", "x", "b", "part " + i).GetHashCode()).Distinct().Count());
    }
}
