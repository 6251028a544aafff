namespace Terminus.Tests.Registers;

public class DocumentNamesTest
{
    [Theory] // Codes of offices and kinds: WIPO standards ST.3 and ST.16; US kinds changed on 2 January 2001 (USPTO kind codes).
    [InlineData("US", "utility", "2,474,442", "US2474442A")]
    [InlineData("US", "utility", "6285999", "US6285999B2")]
    [InlineData("US", "design", "123456", "USD123456S")]
    [InlineData("US", "design", "500000", "USD500000S1")]
    [InlineData("US", "reissue", "20202", "USRE20202E")]
    [InlineData("US", "plant", "1010", "USPP1010P")]
    [InlineData("GB", "patent", "345678", "GB345678A")]
    [InlineData("GB", "patent", "811/97", "GB189700811A")]
    [InlineData("DE", "patent", "67207", "DE67207C")]
    [InlineData("DE", "utility-model", "1773804", "DE1773804U")]
    public void Ids_NumberOfADocument_IsInTheOpenForm(string office, string right, string number, string expected)
        => Assert.Equal(expected, RegisterSet.BuiltIn.Read(office, right, number).DocumentId);

    [Theory]
    [InlineData("US", "trade-mark", "50000")]
    [InlineData("US", "utility", "2,4?4,1?2")]
    [InlineData("GB", "registered-design", "345678")]
    [InlineData("GB", "patent", "10811")]
    public void Ids_NoDocumentOrNotOneNumber_AreNone(string office, string right, string number)
        => Assert.Null(RegisterSet.BuiltIn.Read(office, right, number).DocumentId);

    [Fact]
    public void Writings_OfADesign_AreThoseOfRecords()
        => Assert.Equal(
            ["US design patent 123,456", "U.S. Design Patent No. 123,456", "US D123,456", "USD123456S"],
            RegisterSet.BuiltIn.Read("US", "design", "123456").Writings);

    [Fact]
    public void Writings_OfABritishNumber_CarryItsYear()
        => Assert.Contains("10811/97", RegisterSet.BuiltIn.Read("GB", "patent", "10811 of 1897").Writings);
}
