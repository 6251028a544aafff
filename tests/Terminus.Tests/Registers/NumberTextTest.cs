namespace Terminus.Tests.Registers;

/// <summary>The ways in which people write a number, and their neighbours that are none.</summary>
public class NumberTextTest
{
    [Theory]
    [InlineData("2474442", "2474442")]
    [InlineData("2,474,442", "2474442")]
    [InlineData("2.474.442", "2474442")]
    [InlineData("2 474 442", "2474442")]
    [InlineData("2\u00A0474\u00A0442", "2474442")]
    [InlineData("2'474'442", "2474442")]
    [InlineData("2’474’442", "2474442")]
    [InlineData("D 123,4?6", "1234?6")]
    [InlineData("D-123456", "123456")]
    [InlineData("No. 0012", "12")]
    [InlineData("No: 12", "12")]
    [InlineData("N° 12", "12")]
    [InlineData("Nº12", "12")]
    [InlineData("№ 12", "12")]
    [InlineData("#12", "12")]
    [InlineData("..12", "12")]
    [InlineData("0", "0")]
    [InlineData("000", "0")]
    [InlineData("?", "?")]
    [InlineData("0?", "?")]
    [InlineData("123456789", "123456789")]
    [InlineData("000123456789", "123456789")]
    public void TryRead_DigitsWithSignsBetween_AreOneNumber(string text, string expected) => AssertRead(text, expected);

    [Theory] // Kinds of documents: WIPO standard ST.16.
    [InlineData("US2474442A", "2474442")]
    [InlineData("US6285999B1", "6285999")]
    [InlineData("6285999 B2", "6285999")]
    [InlineData("6285999.B9", "6285999")]
    [InlineData("6285999C0", "6285999")]
    [InlineData("10811/97 A", "10811/1897")]
    public void TryRead_KindOfDocumentBehind_IsPassedOver(string text, string expected) => AssertRead(text, expected);

    [Theory] // The British numbers that began anew each year are those of 1852 to 1915 (econterms.net), so 52 is the first of 18xx.
    [InlineData("10811/97", "10811/1897")]
    [InlineData("10811/1897", "10811/1897")]
    [InlineData("10811 / 97", "10811/1897")]
    [InlineData("10811 of 1897", "10811/1897")]
    [InlineData("10811 Of 97", "10811/1897")]
    [InlineData("No. 10811 of. 1897", "10811/1897")]
    [InlineData("12/52", "12/1852")]
    [InlineData("12/99", "12/1899")]
    [InlineData("12/00", "12/1900")]
    [InlineData("4711/03", "4711/1903")]
    [InlineData("12/51", "12/1951")]
    [InlineData("12/2001", "12/2001")]
    [InlineData("1?811/97", "1?811/1897")]
    [InlineData("12/9", null)]
    [InlineData("12/189", null)]
    [InlineData("12/18970", null)]
    [InlineData("12/9?", null)]
    [InlineData("12/", null)]
    [InlineData("12 of", null)]
    [InlineData("12 off 97", null)]
    [InlineData("12/3/1894", null)]
    public void TryRead_YearBehindTheNumber_HasTwoDigitsOrFour(string text, string? expected) => AssertRead(text, expected);

    [Theory]
    [InlineData("*898", "*898")]
    [InlineData("* 898", "*898")]
    [InlineData("*,898", "*898")]
    [InlineData("**898", "*898")]
    [InlineData("…898", "*898")]
    [InlineData("… 4,898", "*4898")]
    [InlineData("...898", "*898")]
    [InlineData("... , 898", "*898")]
    [InlineData("......898", "*898")]
    [InlineData("No. ...898", "*898")]
    [InlineData("*?98", "*?98")]
    [InlineData("*098", "*098")]
    [InlineData("*123456789", "*123456789")]
    [InlineData("*1234567890", null)]
    [InlineData("*", null)]
    [InlineData("…", null)]
    [InlineData("...", null)]
    [InlineData("12*", null)]
    [InlineData("1*2", null)]
    public void TryRead_LeadingDigitsLost_AreAStar(string text, string? expected) => AssertRead(text, expected);

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("patent")]
    [InlineData("1234567890")]
    [InlineData("12 and 13")]
    [InlineData("12,,345")]
    [InlineData("12,")]
    [InlineData("12,A")]
    [InlineData("12-13")]
    [InlineData("$12")]
    [InlineData("(12)")]
    [InlineData("/12")]
    [InlineData(",12")]
    [InlineData("12 AB")]
    [InlineData("12 A12")]
    [InlineData("12 A/")]
    [InlineData("12 A:")]
    [InlineData("12 A?")]
    [InlineData("12 :1")]
    [InlineData("12/97/98")]
    public void TryRead_NotOneNumber_IsRefused(string text) => AssertRead(text, null);

    private static void AssertRead(string text, string? expected)
    {
        Assert.Equal(expected is not null, NumberText.TryRead(text, out NumberPattern pattern));
        Assert.Equal(expected ?? "0", pattern.ToString());
    }
}
