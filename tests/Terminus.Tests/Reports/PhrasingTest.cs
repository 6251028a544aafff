namespace Terminus.Tests.Reports;

public class PhrasingTest
{
    [Fact]
    public void ListingLine_APendingPatent_GivesTheYearsAndBothDatesOfThePatent()
        => Assert.Equal("1956–61; cuff fastening patent applied for 1956, granted 1961", Phrasing.ListingLine(Samples.Pending));

    [Fact]
    public void ListingLine_AGrantedPatent_IsNeverSaidToBeMadeInItsYear()
        => Assert.Equal("1961 or later, likely 1961–80; cuff fastening patent granted 1961", Phrasing.ListingLine(Samples.Granted));

    [Fact]
    public void ListingLine_NothingKnown_IsUndated() => Assert.Equal("undated", Phrasing.ListingLine(Samples.Undated));

    [Fact]
    public void ListingLine_AContradiction_GivesNoSingleDate()
        => Assert.Equal("date in doubt: 1935 or earlier, or 1961 or later", Phrasing.ListingLine(Samples.Contradicted));

    [Fact]
    public void ListingLine_EvidenceThatDisagrees_SaysSo()
        => Assert.EndsWith("; the evidence does not all fit", Phrasing.ListingLine(Samples.Disputed), StringComparison.Ordinal);

    [Fact]
    public void ListingLine_ALowerLevel_CarriesItsWord()
        => Assert.StartsWith("likely 1961", Phrasing.ListingLine(Samples.Of(Samples.Granted.Piece.ToJson(), 0.66)), StringComparison.Ordinal);

    [Theory]
    [InlineData("1955~", "circa 1955", 1950, 1960)]
    [InlineData("1955", "1955", 1955, 1955)]
    public void MuseumDate_Circa_StandsForAnApproximateDateAndNoOther(string advertised, string display, int earliest, int latest)
    {
        // A maker known from one year, so that its widest window is three years on either side of the date as widened.
        EdtfDate date = EdtfDate.Parse(advertised);
        var reference = Samples.Reference.With(new ReferenceFile("more", "1", makers: [new MakerEntry("one", "One", date, date)]));
        MuseumDate shown = Phrasing.MuseumDate(PieceDating.Of(new Piece("A", makers: [new PieceMaker("one")]), Samples.AsOf, reference, confidence: 0.85));
        Assert.Equal("likely " + display, shown.Display);
        Assert.Equal((earliest, latest), (shown.EarliestYear, shown.LatestYear));
    }

    [Fact]
    public void MuseumDate_ShowsTheDateApartFromTheYearsToSearchBy()
    {
        MuseumDate date = Phrasing.MuseumDate(Samples.Granted);
        Assert.Equal("1961 or later, likely 1961–1980", date.Display);
        Assert.Equal((1961, 2026), (date.EarliestYear, date.LatestYear));
        Assert.Equal("1961-07-11/..", date.Edtf);
        Assert.Equal(["Invented."], date.Sources);
    }

    [Fact]
    public void MuseumDate_AContradiction_HoldsBothReadings()
    {
        MuseumDate date = Phrasing.MuseumDate(Samples.Contradicted);
        Assert.Equal((null, 2026), (date.EarliestYear, date.LatestYear));
        Assert.Null(date.Edtf);
    }

    [Fact]
    public void BuyerParagraph_SaysTheAnswerTheEvidenceAndThatItIsAnOpinion()
    {
        string text = Phrasing.BuyerParagraph(Samples.Pending);
        Assert.StartsWith("Not before 1956. Very likely 1956–1961 (0.9)", text, StringComparison.Ordinal);
        Assert.Contains("Marked as applied for: US utility patent 2999999, filed 6 March 1956, issued 11 July 1961.", text, StringComparison.Ordinal);
        Assert.EndsWith("not an appraisal, an authentication or legal advice.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void AllWords_OfAnyPiece_NeverSayMadeInAYear()
        => Assert.All(Samples.All, dating => Assert.DoesNotContain("made in 1", Phrasing.ListingLine(dating) + Phrasing.BuyerParagraph(dating), StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void Remarks_AShortLivedForm_IsAFactOfItsEntry()
        => Assert.Equal(
            "By its entry in the reference file tumbler back was made for a short time: introduced 1930, gone by 1941.",
            ReasonText.Of(Assert.Single(Phrasing.Remarks(Samples.Disputed))));

    [Fact]
    public void Remarks_AFormWithoutAnEnd_AreNone() => Assert.Empty(Phrasing.Remarks(Samples.Pending));

    // Years of one century are shortened in a line, unless the first ends in 00; a record has both whole.
    [Theory]
    [InlineData(1956, 1961, 0.95, "1956–61", "1956–1961")]
    [InlineData(1898, 1902, 0.95, "1898–1902", "1898–1902")]
    [InlineData(1900, 1905, 0.95, "1900–1905", "1900–1905")]
    [InlineData(1956, 1956, 0.95, "1956", "1956")]
    [InlineData(1956, 1961, 0.7, "no firm date, likely 1956–61", "no firm date, likely 1956–1961")]
    [InlineData(1956, 1961, 0.5, "undated", "undated")]
    public void Dates_OneOpinion_AreItsYears(int from, int until, double confidence, string line, string record)
    {
        PieceDating dating = Samples.Opinions((from, until, confidence));
        Assert.StartsWith(line, Phrasing.ListingLine(dating), StringComparison.Ordinal);
        Assert.Equal(record, Phrasing.MuseumDate(dating).Display);
    }

    [Theory]
    [InlineData("""{ "notAfter": "1950", "confidence": 0.95 }""", "1950 or earlier")]
    [InlineData("""{ "notBefore": "1950", "confidence": 0.95 }""", "1950 or later")]
    [InlineData("""{ "notAfter": "1950", "confidence": 0.95 }, { "notBefore": "1940", "notAfter": "1950", "confidence": 0.7 }""", "1950 or earlier, likely 1940–1950")]
    [InlineData("""{ "notBefore": "1940", "notAfter": "1950", "confidence": 0.95 }, { "notBefore": "1945", "notAfter": "1950", "confidence": 0.7 }""", "1940–1950")]
    [InlineData("""{ "notBefore": "1940", "confidence": 0.95 }, { "notBefore": "1945", "confidence": 0.7 }""", "1940 or later")]
    public void MuseumDate_OpenSides_AreSaidAndClosedWhereTheLikelyAnswerClosesThem(string windows, string display)
        => Assert.Equal(display, Phrasing.MuseumDate(Samples.Of($$"""{ "id": "A", "opinions": [ { "windows": [ {{windows}} ] } ] }""")).Display);

    [Fact]
    public void Null_ThrowsWithTheName()
        => Assert.All(
            new Action[]
            {
                () => Phrasing.ListingLine(null!), () => Phrasing.BuyerParagraph(null!), () => Phrasing.MuseumDate(null!), () => Phrasing.Remarks(null!),
                () => Phrasing.Cautions(null!), () => Statement.Of(null!), () => Statement.Reasons(null!), () => Statement.WhyReasons(null!), () => Explanation.Of(null!),
            },
            act => Assert.Equal("dating", Assert.Throws<ArgumentNullException>(act).ParamName));
}
