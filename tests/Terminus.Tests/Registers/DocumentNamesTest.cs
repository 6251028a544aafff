namespace Terminus.Tests.Registers;

public class DocumentNamesTest
{
    private static readonly DateWindow Old = DateWindow.InYear(1950);

    [Theory] // Codes of offices and kinds: WIPO standards ST.3 and ST.16; US kinds changed on 2 January 2001 (USPTO kind codes).
    [InlineData("US", "utility", "2,474,442", "US2474442A")]
    [InlineData("US", "utility", "6285999", "US6285999B2 US6285999B1")]
    [InlineData("US", "design", "123456", "USD123456S")]
    [InlineData("US", "design", "500000", "USD500000S1")]
    [InlineData("US", "reissue", "20202", "USRE20202E")]
    [InlineData("US", "plant", "1010", "USPP1010P")]
    [InlineData("US", "plant", "26075", "USPP26075P2 USPP26075P3")]
    [InlineData("US", "trade-mark", "50000", "")]
    [InlineData("US", "x-patent", "9901", "")]
    [InlineData("US", "utility", "2,4?4,1?2", "")]
    [InlineData("GB", "patent", "345678", "GB345678A")]
    [InlineData("GB", "patent", "811/97", "GB189700811A")]
    [InlineData("GB", "patent", "10811", "")]
    [InlineData("GB", "registered-design", "345678", "")]
    [InlineData("DE", "patent", "67207", "DE67207C")]
    [InlineData("DE", "utility-model", "1773804", "DE1773804U")]
    public void Ids_NumberOfARegister_AreInTheOpenForm(string office, string right, string number, string expected)
    {
        NumberReading reading = RegisterSet.BuiltIn.Read(office, right, number);
        Assert.Equal(expected, string.Join(" ", reading.DocumentIds));
        Assert.Equal(expected.Length == 0 ? null : expected.Split(' ')[0], reading.DocumentId);
    }

    [Theory] // Kinds of offices other than US and GB: common practice, no source.
    [InlineData("DE", "patent", 999_999, "DE999999C")]
    [InlineData("DE", "patent", 1_000_000, "DE1000000B")]
    [InlineData("DE", "patent", 1_400_000, "DE1400000B")]
    [InlineData("DE", "patent", 1_400_001, "DE1400001A1 DE1400001B2 DE1400001C2")]
    [InlineData("GB", "patent", 2_000_000, "GB2000000A")]
    [InlineData("GB", "patent", 2_000_001, "GB2000001A GB2000001B")]
    [InlineData("FR", "patent", 2_000_000, "FR2000000A")]
    [InlineData("FR", "patent", 2_000_001, "FR2000001A1 FR2000001B1")]
    [InlineData("CA", "patent", 1_999_999, "CA1999999A")]
    [InlineData("CA", "patent", 2_000_000, "CA2000000A1 CA2000000C")]
    [InlineData("AT", "patent", 60332, "AT60332B")]
    [InlineData("CH", "patent", 3_000_000, "CH3000000A")]
    [InlineData("FR", "utility-model", 12, "FR12U")]
    public void Ids_NumberAtTheEdgeOfASeries_HasTheKindsOfItsSide(string office, string right, int number, string expected)
        => Assert.Equal(expected, string.Join(" ", DocumentNames.Ids(office, right, number, "", Old)));

    [Theory]
    [InlineData("utility", 2000, 2000, "US7A")]
    [InlineData("utility", 2000, 2001, "US7A US7B2 US7B1")]
    [InlineData("utility", 2001, 2001, "US7B2 US7B1")]
    [InlineData("design", 2000, 2001, "USD7S USD7S1")]
    [InlineData("reissue", 2000, 2001, "USRE7E USRE7E1")]
    [InlineData("reissue", 2001, 2001, "USRE7E1")]
    [InlineData("plant", 2000, 2001, "USPP7P USPP7P2 USPP7P3")]
    public void Ids_WindowAround2001_HaveTheKindsOfBothSides(string right, int from, int to, string expected)
        => Assert.Equal(expected, string.Join(" ", DocumentNames.Ids("US", right, 7, "", DateWindow.BetweenYears(from, to))));

    [Theory]
    [InlineData("US", "utility", 2474442, "", "US patent 2,474,442|U.S. Patent No. 2,474,442|US 2,474,442|US2474442A")]
    [InlineData("US", "design", 123456, "", "US design patent 123,456|U.S. Design Patent No. 123,456|US D123,456|USD123456S")]
    [InlineData("US", "reissue", 20202, "", "US reissue 20,202|U.S. Reissue Patent No. 20,202|US RE20,202|USRE20202E")]
    [InlineData("US", "plant", 1010, "", "US plant patent 1,010|U.S. Plant Patent No. 1,010|US PP1,010|USPP1010P")]
    [InlineData("US", "trade-mark", 50000, "", "US trade mark 50,000|U.S. Trade-Mark Registration No. 50,000|US 50,000")]
    [InlineData("US", "x-patent", 9901, "", "US X-patent 9,901|U.S. Patent X No. 9,901|US X9,901")]
    [InlineData("GB", "patent", 345678, "single", "GB patent 345,678|GB 345678|GB345678A")]
    [InlineData("GB", "patent", 811, "1897", "GB patent 811 of 1897|No. 811 of 1897|811/97|GB189700811A")]
    [InlineData("GB", "registered-design", 345678, "", "GB registered design 345,678|Rd No 345678")]
    [InlineData("DE", "utility-model", 1773804, "", "DE utility model 1,773,804|DE 1773804|DE1773804U")]
    [InlineData("DE", "patent", 811, "post", "DE patent 811|DE 811|DE811C")]
    [InlineData("DE", "patent", 811, "post4", "DE patent 811|DE 811|DE811C")]
    [InlineData("DE", "patent", 811, "po18", "DE patent 811|DE 811|DE811C")]
    [InlineData("DE", "patent", 811, "18971", "DE patent 811|DE 811|DE811C")]
    public void Writings_Number_AreThoseOfRecords(string office, string right, int number, string series, string expected)
        => Assert.Equal(expected, string.Join("|", DocumentNames.Writings(office, right, number, series, Old)));
}
