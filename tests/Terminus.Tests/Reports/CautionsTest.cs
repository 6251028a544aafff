namespace Terminus.Tests.Reports;

public class CautionsTest
{
    [Theory]
    [InlineData("""{ "id": "A", "features": [ { "feature": "mat.ivory" } ] }""", "caution.ivory")]
    [InlineData("""{ "id": "A", "features": [ { "feature": "mat.celluloid" } ] }""", "caution.cellulose-nitrate")]
    [InlineData("""{ "id": "A", "title": "comb, tortoiseshell" }""", "caution.tortoiseshell")]
    [InlineData("""{ "id": "A", "title": "pocket watch, radium dial" }""", "caution.radium")]
    [InlineData("""{ "id": "A", "title": "lead button" }""", "caution.lead")]
    [InlineData("""{ "id": "A", "title": "Pewter" }""", "caution.lead")]
    [InlineData("""{ "id": "A", "object": "scrimshaw" }""", "caution.ivory")]
    [InlineData("""{ "id": "A", "title": "cellulose nitrate comb" }""", "caution.cellulose-nitrate")]
    [InlineData("""{ "id": "A", "title": "Xylonite" }""", "caution.cellulose-nitrate")]
    [InlineData("""{ "id": "A", "marks": [ { "text": "XYLONITE" } ] }""", "caution.cellulose-nitrate")]
    [InlineData("""{ "id": "A", "title": "a luminous button" }""", "caution.radium")]
    [InlineData("""{ "id": "A", "title": "a button (gold)" }""", "caution.precious-metal")]
    [InlineData("""{ "id": "A", "title": "silver" }""", "caution.precious-metal")]
    [InlineData("""{ "id": "A", "title": "in platinum" }""", "caution.precious-metal")]
    [InlineData("""{ "id": "A", "features": [ { "feature": "mat.ivory", "part": "pin" } ], "parts": [ { "part": "pin", "original": false } ] }""", "caution.ivory")]
    [InlineData("""{ "id": "A", "marks": [ { "text": "PAT.", "patent": "US utility 2999999", "part": "pin" } ], "parts": [ { "part": "pin", "original": false } ] }""", "caution.patent-status")]
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

    [Fact]
    public void Of_EntriesOfTheReference_ReadsTheirNamesGroupsAndIds()
    {
        ReferenceSet reference = ReferenceSet.Empty.With(new ReferenceFile(
            "a", "1", [new FeatureEntry("x.one", "made of ivory"), new FeatureEntry("x.two", "two", group: "pewter ware"), new FeatureEntry("x.early_cellulose_plastic", "three")]));
        var piece = new Piece("A", features: [new PieceFeature("x.one"), new PieceFeature("x.two"), new PieceFeature("x.early_cellulose_plastic")]);
        Assert.Equal(
            ["caution.ivory", "caution.cellulose-nitrate", "caution.lead", "caution.opinion"], Phrasing.Cautions(PieceDating.Of(piece, Samples.AsOf, reference)).Select(r => r.Rule));
    }
}
