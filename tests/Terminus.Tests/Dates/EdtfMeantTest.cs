namespace Terminus.Tests.Dates;

public class EdtfMeantTest
{
    // Common ways to write a date, no source; what EDTF has for each is ISO 8601-2:2019, annex A.
    [Theory]
    [InlineData("1930s", "193X")]
    [InlineData("c. 1950", "1950~")]
    [InlineData("c1950", "1950~")]
    [InlineData("ca 1950", "1950~")]
    [InlineData("Circa 1950", "1950~")]
    [InlineData("about 1890s", "189X~")]
    [InlineData("abt. 1950", "1950~")]
    [InlineData("1890-1900", "1890/1900")]
    [InlineData("1890 – 1900", "1890/1900")]
    [InlineData("1950-60", "1950/1960")]
    public void Of_AUsualWayToWriteADate_IsItsEdtf(string text, string edtf)
    {
        Assert.Equal(edtf, EdtfMeant.Of(text));
        Assert.True(EdtfDate.TryParse(edtf, out _));
        Assert.False(EdtfDate.TryParse(text, out _, out EdtfError? error));
        Assert.EndsWith(" Did you mean \"" + edtf + "\"?", error.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("1900s")] // the decade or the century
    [InlineData("1905s")]
    [InlineData("1950S")] // the count of significant digits is missing
    [InlineData("2001-99")]
    [InlineData("12/05/1906")] // a day first or a month first
    [InlineData("1900-1890")]
    [InlineData("1960-50")]
    [InlineData("c. 1890-1900")]
    [InlineData("Victorian")]
    [InlineData("circa")]
    public void Of_WhatIsNotPlain_IsNothing(string text) => Assert.Null(EdtfMeant.Of(text));
}
