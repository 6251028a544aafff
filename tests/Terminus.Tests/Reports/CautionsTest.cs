namespace Terminus.Tests.Reports;

public class CautionsTest
{
    [Theory]
    [InlineData("""{ "id": "A", "features": [ { "feature": "mat.ivory" } ] }""", "caution.ivory")]
    [InlineData("""{ "id": "A", "features": [ { "feature": "mat.celluloid" } ] }""", "caution.cellulose-nitrate")]
    [InlineData("""{ "id": "A", "title": "comb, tortoiseshell" }""", "caution.tortoiseshell")]
    [InlineData("""{ "id": "A", "title": "pocket watch, radium dial" }""", "caution.radium")]
    [InlineData("""{ "id": "A", "title": "lead button" }""", "caution.lead")]
    [InlineData("""{ "id": "A", "marks": [ { "text": "STERLING" } ] }""", "caution.precious-metal")]
    [InlineData("""{ "id": "A", "title": "antique brooch" }""", "caution.antique")]
    [InlineData("""{ "id": "A", "marks": [ { "text": "PAT.", "patent": "US utility 2999999" } ] }""", "caution.patent-status")]
    [InlineData("""{ "id": "A", "records": [ { "date": "1850" } ], "title": "antique brooch" }""", "caution.over-hundred")]
    public void Of_WhatThePieceShows_GivesItsCautionAndTheOpinionLast(string piece, string rule)
        => Assert.Equal([rule, "caution.opinion"], Phrasing.Cautions(Samples.Of(piece)).Select(r => r.Rule));

    [Theory]
    [InlineData("""{ "id": "A", "title": "leading brooch, golden, silvery" }""")]
    [InlineData("""{ "id": "A" }""")]
    public void Of_OtherWords_GiveTheOpinionAlone(string piece)
        => Assert.Equal(["caution.opinion"], Phrasing.Cautions(Samples.Of(piece)).Select(r => r.Rule));
}
