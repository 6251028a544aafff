using FsCheck.Xunit;

namespace Terminus.Tests.Pieces;

[Properties(Arbitrary = [typeof(Gens)], MaxTest = 100)]
public class PieceDatingTest
{
    [Property]
    public void Dating_any_described_piece_answers_and_never_throws(Piece piece)
    {
        PieceDating dated = PieceDating.Of(piece, InventedReference.Today, InventedReference.Set);
        Assert.NotEmpty(ResultDocument.ToJson(dated, steps: true));
        Assert.NotEmpty(Explanation.Of(dated, steps: true));
        Assert.Equal(dated.Dating.Conflict >= 1 - 1e-9, dated.Interval is null);
    }

    [Fact]
    public void PendingMark_DatesBetweenFilingAndIssue()
    {
        // Common practice, no source: "patent pending" whose patent was filed in 1956 and issued in 1961 dates to 1956–1961.
        PieceDating dated = InventedReference.Date("""{ "id": "A", "marks": [ { "text": "PAT. PEND.", "patent": "US utility 2999999" } ] }""");
        Assert.Equal("1956-03-06/1961-07-11", dated.Interval!.Window.ToString());
    }

    [Fact]
    public void NumberOfAPatent_DatesToItsIssueOrLater()
    {
        // Common practice, no source: a piece that bears the number of that patent dates to 1961 or later.
        PieceDating dated = InventedReference.Date("""{ "id": "A", "marks": [ { "text": "PAT. 2,999,999", "patent": "US utility 2999999" } ] }""");
        Assert.Equal("1961-07-11/..", dated.Interval!.ToEdtf());
        Assert.Equal(1961, dated.Likely!.EarliestYear);
        Assert.Equal(1980, dated.Likely.LatestYear);
    }

    [Fact]
    public void MarkOfTooManyCharacters_IsAProblemAndTheRestIsDated()
    {
        string text = "PAT. PEND.".PadRight(Inscription.LongestText + 1);
        PieceDating dated = InventedReference.Date($$"""{ "id": "A", "marks": [ { "text": "{{text}}" } ], "records": [ { "date": "1958" } ] }""");

        DocumentProblem problem = Assert.Single(dated.Problems);
        Assert.Equal(("$.marks[0].text", "The mark has 4097 characters, and at most 4096 are read."), (problem.Path, problem.Message));
        Assert.Equal("known-by", Assert.Single(dated.Dating.Evidence).Kind);
    }

    [Fact]
    public void AdvertisedForms_TellTwoOtherwiseEqualPiecesApart()
    {
        // Common practice, no source: a feature that adverts show up to 1954 and another that they show from 1955.
        PieceDating tulip = InventedReference.Date("""{ "id": "A", "features": [ { "feature": "t.until1954" } ], "records": [ { "date": "1958" } ] }""");
        PieceDating daisy = InventedReference.Date("""{ "id": "B", "features": [ { "feature": "t.from1955" } ], "records": [ { "date": "1958" } ] }""");
        Assert.Equal(1954, tulip.Likely!.LatestYear);
        Assert.Equal(1955, daisy.Likely!.EarliestYear);
    }

    [Fact]
    public void PartThatIsNotOriginal_IsDatedButLeftOutOfTheWhole()
    {
        PieceDating dated = InventedReference.Date("""
            { "id": "A", "parts": [ { "part": "box", "original": false, "why": "later" } ],
              "features": [ { "feature": "t.catch", "part": "pin" } ], "records": [ { "date": "1999", "part": "box" } ],
              "inscriptions": [ { "date": "1940", "part": "pin" } ] }
            """);
        PartDating box = dated.Parts.Single(p => p.Part == "box");
        Assert.False(box.Original);
        Assert.Equal("later", box.Why);
        Assert.Equal(1999, box.Interval!.LatestYear);
        Assert.Equal(1940, dated.Interval!.LatestYear);
        Assert.Equal("known-by", Assert.Single(dated.LeftOut).Kind);
    }

    [Fact]
    public void Whole_IsNotOlderThanItsNewestOriginalPart()
    {
        PieceDating dated = InventedReference.Date("""
            { "id": "A", "features": [ { "feature": "t.hook", "part": "pin" }, { "feature": "t.catch", "part": "catch" } ] }
            """);
        Assert.Equal(1934, dated.Dating.Possible!.Value.NotBefore!.Value.Year);
        Disagreement usage = Assert.Single(dated.Dating.Disagreements);
        Assert.Equal(DisagreementLevel.Usage, usage.Level);
        Assert.Equal(DisagreementCause.ReplacedPart, usage.Cause);
        Assert.Equal(["pin", "catch"], usage.Parts);
        Assert.Equal(0.7 * 0.97, usage.Mass, 12);
    }

    [Theory]
    [InlineData("1955~", ClaimVerdict.Agrees)]
    [InlineData("1958", ClaimVerdict.TooNarrow)]
    [InlineData("1930", ClaimVerdict.Contradicted)]
    public void StatedDate_IsTested(string stated, ClaimVerdict verdict)
    {
        PieceDating dated = InventedReference.Date($$"""
            { "id": "A", "stated": "{{stated}}", "marks": [ { "text": "PAT. PEND.", "patent": "US utility 2999999" } ] }
            """);
        Assert.Equal(verdict, dated.Stated!.Verdict);
        Assert.Equal(verdict == ClaimVerdict.Contradicted ? 0 : null, dated.Stated.By);
    }

    [Theory]
    [InlineData("""{ "id": "A", "inscriptions": [ { "date": "1911" } ], "records": [ { "date": "1912" } ] }""", AgeVerdict.Yes)]
    [InlineData("""{ "id": "A", "marks": [ { "patent": "US utility 2999999" } ] }""", AgeVerdict.No)]
    [InlineData("""{ "id": "A", "features": [ { "feature": "t.undated" } ] }""", AgeVerdict.CannotTell)]
    public void OverHundredYears_IsAnswered(string json, AgeVerdict verdict)
        => Assert.Equal(verdict, InventedReference.Date(json).OverHundredYears.Verdict);

    [Fact]
    public void AbsentFeature_IsKeptAndSaysNothing()
    {
        PieceDating dated = InventedReference.Date("""{ "id": "A", "features": [ { "feature": "t.snap", "absent": true } ] }""");
        Assert.Empty(Assert.Single(dated.Dating.Evidence).StatedWindows());
        Assert.True(dated.Interval!.IsAnyDate);
        Assert.Null(dated.Interval.ToEdtf());
    }

    [Fact]
    public void WhatTheReferenceFileDoesNotKnow_IsAProblemAndTheRestIsDated()
    {
        PieceDating dated = InventedReference.Date("""
            { "id": "A", "features": [ { "feature": "t.catch" }, { "feature": "t.cathc" } ], "marks": [ { "patent": "US utility 1" } ],
              "makers": [ { "maker": "nobody" } ], "opinions": [ { "windows": [ { "notBefore": "1950", "confidence": 0.5 }, { "notBefore": "1940", "confidence": 0.9 } ] } ] }
            """);
        Assert.Equal(
            ["$.marks[0].patent", "$.features[1].feature", "$.makers[0].maker", "$.opinions[0].windows"], dated.Problems.Select(p => p.Path));
        Assert.Contains("t.catch", dated.Problems[1].Message, StringComparison.Ordinal);
        Assert.Equal(2, dated.Dating.Evidence.Count);
    }

    [Fact]
    public void NoEvidence_GivesAnyDateWithoutConflict()
    {
        PieceDating dated = InventedReference.Date("""{ "id": "A" }""");
        Assert.Equal(0, dated.Dating.Conflict);
        Assert.True(dated.Interval!.IsAnyDate);
        Assert.Equal("Nothing here dates the piece at 0.66.", Statement.Of(dated));
    }

    [Fact]
    public void PartThatShowsEverything_HasTheDatingOfTheWhole()
    {
        PieceDating dated = InventedReference.Date("""{ "id": "A", "features": [ { "feature": "t.catch", "part": "pin" } ], "records": [ { "date": "1950" } ] }""");
        Assert.Same(dated.Dating, Assert.Single(dated.Parts).Dating);
        dated = InventedReference.Date("""
            { "id": "A", "parts": [ { "part": "pin", "original": false } ], "features": [ { "feature": "t.catch", "part": "pin" } ] }
            """);
        Assert.NotSame(dated.Dating, Assert.Single(dated.Parts).Dating);
        Assert.Empty(dated.Dating.Evidence);
    }

    // The limits of docs/limits.md: 1,024 observations are looked at, 256 items combined.
    [Theory]
    [InlineData(256)]
    [InlineData(257, "The piece has 257 items of evidence; the first 256 were combined.")]
    [InlineData(1024, "The piece has 1024 items of evidence; the first 256 were combined.")]
    [InlineData(
        1025, "The piece has 1025 items of evidence; the first 1024 were looked at.", "The piece has 1024 items of evidence; the first 256 were combined.")]
    public void MoreItemsThanAreTaken_AreToldAndTheFirstAreDated(int count, params string[] problems)
    {
        var piece = new Piece("A", opinions: Enumerable.Range(0, count).Select(i => new PieceOpinion([new PieceWindow(EdtfDate.Parse("1950"), null, 0.01)], "witness " + i)));
        PieceDating dated = PieceDating.Of(piece, InventedReference.Today, InventedReference.Set);
        Assert.Equal(problems, dated.Problems.Select(p => p.Message));
        Assert.Equal(Enumerable.Range(0, 256).Select(i => "witness " + i), dated.Dating.Evidence.Select(e => ((Opinion)e).By));
    }

    [Theory]
    [InlineData(256)]
    [InlineData(257, "The piece has 257 parts with evidence; the first 256 were dated.", "The piece has 257 items of evidence; the first 256 were combined.")]
    public void MorePartsThanAreDated_AreTold(int count, params string[] problems)
    {
        var piece = new Piece("A", records: Enumerable.Range(0, count).Select(i => new PieceRecord(EdtfDate.Parse("1950"), part: "part " + i)));
        PieceDating dated = PieceDating.Of(piece, InventedReference.Today, InventedReference.Set);
        Assert.Equal(problems, dated.Problems.Select(p => p.Message));
        Assert.Equal(Enumerable.Range(0, 256).Select(i => "part " + i), dated.Parts.Select(p => p.Part));
    }

    [Theory]
    [InlineData("", "\"Which catch?\" has two answers: \"t.hook\" and \"t.catch\". They exclude each other, so the item is as wide as both.")]
    [InlineData(", \"part\": \"pin\"", "\"Which catch?\" has two answers for the pin: \"t.hook\" and \"t.catch\". They exclude each other, so the item is as wide as both.")]
    public void TwoAnswersToOneQuestion_AreToldWithTheQuestion(string part, string message)
    {
        PieceDating dated = InventedReference.Date($$"""{ "id": "A", "features": [ { "feature": "t.hook"{{part}} }, { "feature": "t.catch"{{part}} } ] }""");
        DocumentProblem problem = Assert.Single(dated.Problems);
        Assert.Equal(("$.features", message), (problem.Path, problem.Message));
    }

    [Fact]
    public void Answers_AskedForAgain_AreTheSame()
    {
        PieceDating dated = InventedReference.Date("""{ "id": "A", "stated": "1955", "features": [ { "feature": "t.catch" } ] }""");
        Assert.NotNull(dated.Stated);
        Assert.Same(dated.Stated, dated.Stated);
        Assert.Same(dated.OverHundredYears, dated.OverHundredYears);
    }

    [Fact]
    public void Of_NothingRead_IsNothingAndNullThrows()
    {
        Assert.Null(PieceDating.Of(Piece.Read("7"), InventedReference.Today));
        Assert.Equal("piece", Assert.Throws<ArgumentNullException>(() => PieceDating.Of((Piece)null!, InventedReference.Today)).ParamName);
        Assert.Equal("read", Assert.Throws<ArgumentNullException>(() => PieceDating.Of((DocumentResult<Piece>)null!, InventedReference.Today)).ParamName);
        Assert.Equal(0d, Assert.Throws<ArgumentOutOfRangeException>(() => PieceDating.Of(new Piece("A"), InventedReference.Today, confidence: 0)).ActualValue);
    }
}
