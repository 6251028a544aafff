namespace Terminus.Tests.Reference;

public class PatentIdTest
{
    [Theory]
    [InlineData("US utility 2999999", "US", "utility", "2999999")]
    [InlineData("GB registered-design 12345", "GB", "registered-design", "12345")]
    [InlineData("AZ az 09AZ/1", "AZ", "az", "09AZ/1")]
    public void TryParse_AnId_IsItsThreeWords(string id, string office, string right, string number)
    {
        Assert.True(PatentId.TryParse(id, out PatentId parsed));
        Assert.Equal((office, right, number), (parsed.Office, parsed.Right, parsed.Number));
        Assert.Equal(id, parsed.ToString());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("US utility")]
    [InlineData("US utility 1 2")]
    [InlineData("US  utility 1")]
    [InlineData("US utility ")]
    [InlineData(" utility 1")]
    [InlineData("US  1")]
    [InlineData("U utility 1")]
    [InlineData("USA utility 1")]
    [InlineData("Us utility 1")]
    [InlineData("@S utility 1")]
    [InlineData("U[ utility 1")]
    [InlineData("US Utility 1")]
    [InlineData("US utility_ 1")]
    [InlineData("US `utility 1")]
    [InlineData("US utility{ 1")]
    [InlineData("US utility 2,999,999")]
    [InlineData("US utility 1a")]
    [InlineData("US utility 1:")]
    [InlineData("US utility 1@")]
    [InlineData("US utility 1[")]
    [InlineData("US utility .1")]
    public void TryParse_AnythingElse_IsNone(string? id)
    {
        Assert.False(PatentId.TryParse(id, out PatentId parsed));
        Assert.Equal(default, parsed);
        Assert.Equal(id is null ? "value" : "id", Assert.ThrowsAny<ArgumentException>(() => new PatentEntry(id!)).ParamName);
    }
}
