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
        => Assert.Equal("parameters", Assert.Throws<ArgumentException>(() => new Reason("r", "year")).ParamName);

    [Fact]
    public void Equals_ParametersDiffer_IsFalse()
    {
        Assert.Equal(new Reason("r", "a", "1"), new Reason("r", "a", "1"));
        Assert.NotEqual(new Reason("r", "a", "1"), new Reason("r", "a", "2"));
    }

    [Fact]
    public void GetHashCode_ReasonsOfOneRule_DifferByTheirValues()
    {
        Assert.Equal(new Reason("r", "a", "1").GetHashCode(), new Reason("r", "a", "1").GetHashCode());
        Assert.Equal(1000, Enumerable.Range(0, 1000).Select(i => new Reason("r", "a", "x", "b", "part " + i).GetHashCode()).Distinct().Count());
    }
}
