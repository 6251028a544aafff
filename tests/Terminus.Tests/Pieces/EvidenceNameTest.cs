namespace Terminus.Tests.Pieces;

public class EvidenceNameTest
{
    [Theory]
    [InlineData(null, null, "a patent")]
    [InlineData("US", null, "a US patent")]
    [InlineData("US", "utility", "a US utility patent")]
    [InlineData(null, "design", "a design patent")]
    [InlineData("FR", "patent", "an FR patent")]
    [InlineData("DE", "utility-model", "a DE utility model")]
    public void Thing_ARightWithoutANumber_IsSpeltOut(string? office, string? right, string name)
        => Assert.Equal(name, EvidenceName.Thing(new PatentIssued(EvidenceDate.InYear(1961), office, right), ReferenceSet.BuiltIn));

    [Theory]
    [InlineData("US", "utility", "US utility patent 2999999")]
    [InlineData("GB", "patent", "GB patent 2999999")]
    [InlineData("GB", "registered-design", "GB registered design 2999999")]
    [InlineData("US", null, "US 2999999")]
    public void Thing_ANumberedRight_IsItsOfficeRightAndNumber(string office, string? right, string name)
        => Assert.Equal(name, EvidenceName.Thing(new PatentIssued(EvidenceDate.InYear(1961), office, right, "2999999"), ReferenceSet.BuiltIn));

    [Theory]
    [InlineData("mk.made_in_usa", "MADE IN U.S.A.")]
    [InlineData("mk.us_origin", "(a country's name)")]
    [InlineData("own.wording", "own.wording")]
    public void Thing_AWording_IsCalledByItsWords(string id, string name)
        => Assert.Equal(name, EvidenceName.Thing(new MarkInUse(id), ReferenceSet.Empty));

    [Fact]
    public void Wordings_EachHasAName()
        => Assert.All(Lexicon.BuiltIn.Wordings, w => Assert.NotEqual("", w.Name));
}
