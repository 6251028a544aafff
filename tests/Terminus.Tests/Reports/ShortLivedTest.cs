namespace Terminus.Tests.Reports;

public class ShortLivedTest
{
    // Fifteen years are the house's choice of a short time, with no source.
    [Theory]
    [InlineData("1930", "1945", true)]
    [InlineData("1930", "1946", false)]
    [InlineData("1930", "1930", true)]
    [InlineData("193X", "1945", true)]
    [InlineData("1940", "193X", false)]
    [InlineData("1930", null, false)]
    [InlineData(null, "1945", false)]
    [InlineData("1930", "1940/..", false)]
    [InlineData("../1935", "1940", false)]
    public void Remarks_FormOfKnownTime_IsToldWhereItWasShort(string? introduced, string? gone, bool told)
    {
        var reference = ReferenceSet.Empty.With(new ReferenceFile(
            "a", "1", [new FeatureEntry("f", "hook", introduced: Date(introduced), gone: Date(gone)), new FeatureEntry("g", "long", introduced: Date("1900"), gone: Date("1999"))]));
        foreach (bool original in new[] { true, false })
        {
            var piece = new Piece("A", parts: [new PiecePart("pin", original)], features: [new PieceFeature("f", "pin"), new PieceFeature("g")]);
            IReadOnlyList<Reason> remarks = Phrasing.Remarks(PieceDating.Of(piece, Samples.AsOf, reference));
            Assert.Equal(told ? ["hook 1930"] : [], remarks.Select(r => r["feature"] + " " + r["introduced"]));
            Assert.Equal(told ? [gone!] : [], remarks.Select(r => r["gone"]));
        }
    }

    private static EdtfDate? Date(string? edtf) => edtf is null ? null : EdtfDate.Parse(edtf);
}
