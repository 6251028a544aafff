namespace Terminus.Tests.Reports;

public class StatementTest
{
    // A feature of the trade from 1930, which states 0.85, and an engraved gift, which states 0.93: both hold at 0.79, neither start at 0.9.
    private static readonly PieceDating Given = Samples.Of("""
        { "id": "QH-030", "features": [ { "feature": "cuff.tumbler" } ], "inscriptions": [ { "date": "1936-06-05", "of": "presentation" } ] }
        """);

    [Fact]
    public void Of_AGrantedPatent_IsNotBeforeItsIssueAndOpen()
        => Assert.Equal("Not before 1961. No latest date at 0.9; likely 1961–1980 (0.66).", Statement.Of(Samples.Granted));

    [Fact]
    public void Of_AGiftDateAndAFeatureOfTheTrade_SaysTheFirmEndOnce()
        => Assert.Equal("Not after 1936. No earliest date at 0.9; likely 1930–1936 (0.66).", Statement.Of(Given));

    [Fact]
    public void Of_AnOpenWindowThatNothingNarrows_SaysItOnce()
        => Assert.Equal(
            "Not before 1870. No latest date at 0.9.",
            Statement.Of(Samples.Of("""{ "id": "QH-031", "features": [ { "feature": "mat.celluloid" } ] }""")));

    [Fact]
    public void WhyReasons_AFeatureTooWeakForAnEarliestDate_SayWhatItSpeaksFor()
    {
        string[] why = [.. Statement.WhyReasons(Given).Select(ReasonText.Of)];
        Assert.Equal("Nothing sets an earliest date at 0.9.", why[0]);
        Assert.Equal(
            "Too weak to set an earliest date at 0.9: the feature tumbler back (from 1 January 1930, 0.85) and the inscribed date (from 5 June 1916, 0.7).",
            why[1]);
    }

    [Fact]
    public void WhyReasons_NothingAtTheLevelAskedFor_SayWhatIsTooWeak()
        => Assert.Equal(
            ["grounds.weak-start", "grounds.weak-end"],
            Statement.WhyReasons(Samples.Of("""{ "id": "QH-032", "features": [ { "feature": "cuff.tumbler" } ] }""")).Select(r => r.Rule));

    [Fact]
    public void WhyReasons_AWordingThatIsNotThere_IsCalledByItsName()
    {
        PieceDating dating = Samples.Of("""{ "id": "QH-033", "features": [ { "feature": "mk.us_origin", "absent": true } ] }""");
        Assert.Equal(
            "Kept, though it says nothing of the date: the wording (a country's name).",
            ReasonText.Of(Assert.Single(Statement.WhyReasons(dating))));
        Assert.StartsWith(
            "Looked for and not there: the wording (a country's name).",
            ReasonText.Of(EvidenceReasons.Main(dating.Dating.Evidence[0], dating.Reference)),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Of_FirmEvidenceThatExcludesItself_BeginsWithTheContradiction()
    {
        string said = Statement.Of(Samples.Contradicted);
        Assert.StartsWith("The evidence contradicts itself (conflict 0.9", said, StringComparison.Ordinal);
        Assert.Contains("First reading, 1935 or earlier", said, StringComparison.Ordinal);
        Assert.Contains("Second reading, 1961 or later", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_UnsignedOpinionsThatDisagree_NamesThemByTheirYears()
    {
        string said = Statement.Of(Samples.Opinions((1900, 1910, 0.8), (1950, 1960, 0.8)));
        Assert.Contains("The unsigned opinion for 1900–1910 and the unsigned opinion for 1950–1960 do not fit (0.64 of", said, StringComparison.Ordinal);
        Assert.DoesNotContain("an opinion", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_AnAnswerThatFirmEvidenceContradicts_SaysSoBeforeTheAnswer()
    {
        // The firm opinion is at odds with two others.
        string said = Statement.Of(Samples.Opinions((1950, 1960, 0.9), (1900, 1910, 0.85), (1900, 1910, 0.8)));
        Assert.StartsWith("Firm evidence leaves 1950–1960, but the rest speaks against that, and at 0.9 the answer is ", said, StringComparison.Ordinal);
        Assert.DoesNotContain("Not before", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_APartThatIsNotOriginal_SaysThatItIsDatedApart()
        => Assert.Contains("The box is not original and is dated apart.", Statement.Of(Samples.Disputed), StringComparison.Ordinal);

    [Fact]
    public void Of_Features_UsesTheirNamesAndNotTheirIds()
    {
        string said = Statement.Of(Samples.Disputed);
        Assert.Contains("The feature tumbler back on the left and the feature rocker back on the right do not fit", said, StringComparison.Ordinal);
        Assert.DoesNotContain("cuff.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void WhyReasons_APendingPatent_SayWhatSetsBothEndsAndHowFirmly()
    {
        string[] why = [.. Statement.WhyReasons(Samples.Pending).Select(ReasonText.Of)];
        Assert.Equal("The earliest date, 6 March 1956, is set by the pending mark 2999999 on the back (firm, stated at 0.98).", why[0]);
        Assert.Equal("The latest date, 11 July 1961, is set by the pending mark 2999999 on the back (usage, stated at 0.93).", why[1]);
        Assert.Contains("Firm evidence alone leaves 6 March 1956 or later; the rest is usage.", why);
        Assert.Contains("Without the pending mark 2999999 on the back the answer would be: any date.", why);
    }

    [Fact]
    public void WhyReasons_NoLatestDate_SayWhatWouldGiveOne()
        => Assert.Contains("grounds.would-close", Statement.WhyReasons(Samples.Granted).Select(r => r.Rule));

    [Fact]
    public void WhyReasons_NothingKnown_AreNone() => Assert.Empty(Statement.WhyReasons(Samples.Undated));

    [Fact]
    public void WhyReasons_AnItemThatDoesNotMeetTheAnswer_IsSetAside()
    {
        Reason aside = Statement.WhyReasons(Samples.Opinions((1900, 1910, 0.3), (1950, 1960, 0.97))).Single(r => r.Rule == "grounds.set-aside");
        Assert.Equal("the unsigned opinion for 1900–1910", aside["items"]);
    }

    [Theory]
    [InlineData("""{ "notBefore": "1940", "notAfter": "1950", "confidence": 0.95 }""", "Not before 1940 and not after 1950. Very likely 1940–1950 (0.9).")]
    [InlineData("""{ "notAfter": "1950", "confidence": 0.95 }""", "Not after 1950. No earliest date at 0.9.")]
    [InlineData(
        """{ "notBefore": "1940", "notAfter": "1950", "confidence": 0.7 }""",
        "Nothing firm bounds the date: what follows rests on usage alone. Nothing dates the piece at 0.9; likely 1940–1950 (0.66).")]
    [InlineData(
        """{ "notBefore": "1940", "notAfter": "1950", "confidence": 0.5 }""",
        "Nothing firm bounds the date: what follows rests on usage alone. Nothing here dates the piece at 0.66.")]
    [InlineData(
        """{ "notBefore": "1940", "notAfter": "1950", "confidence": 0.95 }, { "notBefore": "1945", "notAfter": "1950", "confidence": 0.7 }""",
        "Not before 1940 and not after 1950. Very likely 1940–1950 (0.9); likely 1945–1950 (0.66).")]
    public void Of_OneOpinion_SaysWhatIsFirmAndWhatIsLikely(string windows, string said)
        => Assert.Equal(said, Statement.Of(Samples.Of($$"""{ "id": "A", "opinions": [ { "windows": [ {{windows}} ] } ] }""")));

    [Fact]
    public void Of_EvidenceAfterTheDayOfTheOpinion_SaysSo()
    {
        // The windows of a patent of 2027 all lie after the opinion of 2026: 0.98.
        PieceDating dating = PieceDating.Of(
            new Piece("A", marks: [new PieceMark(patent: "US utility 1")]),
            Samples.AsOf,
            ReferenceSet.Empty.With(new ReferenceFile("a", "1", patents: [new PatentEntry("US utility 1", issued: EdtfDate.Parse("2027-01-05"))])));
        Assert.Contains("The patent mark 1 lies after the day of the opinion (0.98).", Statement.Of(dating), StringComparison.Ordinal);
    }

    // Design: a disagreement is "said in the statement from mass 0.4", here 0.8 times the other's confidence.
    [Theory]
    [InlineData(0.5, true)]
    [InlineData(0.49, false)]
    public void Of_ADisagreement_IsSaidFromItsMass(double confidence, bool said)
    {
        PieceDating dating = Samples.Opinions((1900, 1910, 0.8), (1950, 1960, confidence));
        Assert.Equal(said, Statement.Of(dating).Contains("do not fit", StringComparison.Ordinal));
        Assert.Equal(said, Phrasing.ListingLine(dating).EndsWith("the evidence does not all fit", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_ManyDisagreements_SaysTheThreeWeightiest()
    {
        string said = Statement.Of(Samples.Opinions((1900, 1901, 0.85), (1910, 1911, 0.8), (1920, 1921, 0.7)));
        Assert.Equal(3, said.Split("do not fit").Length - 1);
        said = Statement.Of(Samples.Opinions((1900, 1901, 0.85), (1910, 1911, 0.8), (1920, 1921, 0.75), (1930, 1931, 0.7)));
        Assert.Equal(3, said.Split("do not fit").Length - 1);
        Assert.Contains("1900–1901 and the unsigned opinion for 1910–1911", said, StringComparison.Ordinal);
        Assert.DoesNotContain("1930–1931 do not fit (0.5", said, StringComparison.Ordinal);
    }
}
