namespace Terminus.Tests.Marks;

public class MarkKindTest
{
    [Theory] // The kinds as documents name them.
    [InlineData(MarkKind.PatentDate, "patent-date")]
    [InlineData(MarkKind.PatentNumber, "patent-number")]
    [InlineData(MarkKind.Pending, "pending")]
    [InlineData(MarkKind.DesignNumber, "design-number")]
    [InlineData(MarkKind.DesignPending, "design-pending")]
    [InlineData(MarkKind.RegisteredDesign, "registered-design")]
    [InlineData(MarkKind.RegistryDiamond, "registry-diamond")]
    [InlineData(MarkKind.UtilityModel, "utility-model")]
    [InlineData(MarkKind.TradeMark, "trade-mark")]
    [InlineData(MarkKind.Copyright, "copyright")]
    [InlineData(MarkKind.Origin, "origin")]
    [InlineData(MarkKind.Metal, "metal")]
    [InlineData(MarkKind.Protected, "protected")]
    [InlineData(MarkKind.PatentWord, "patent-word")]
    [InlineData(MarkKind.Other, "other")]
    public void KindName_Kind_IsThatOfDocuments(MarkKind kind, string name)
    {
        Assert.Equal(name, MarkKindName.Of(kind));
        Assert.True(MarkKindName.TryParse(name, out MarkKind parsed));
        Assert.Equal(kind, parsed);
        Assert.False(MarkKindName.TryParse(name + "s", out _));
    }
}
