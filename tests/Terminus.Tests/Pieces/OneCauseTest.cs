namespace Terminus.Tests.Pieces;

public class OneCauseTest
{
    [Fact]
    public void PatentsOnOnePart_AreOneItemGovernedByTheNewest()
    {
        // Design: "Patents carried by one part are one item, governed by the newest; the older ones are kept as reasons."
        PieceDating dated = InventedReference.Date("""
            { "id": "A", "marks": [ { "patent": "US utility 1480977", "part": "back" }, { "patent": "US utility 2999999", "part": "back" } ] }
            """);
        PatentIssued item = Assert.IsType<PatentIssued>(Assert.Single(dated.Dating.Evidence));
        Assert.Equal("2999999", item.Number);
        Assert.Equal(["US utility 2999999", "US utility 1480977"], item.Entries);
        Reason older = Assert.Single(item.Reasons, r => r.Rule == "pieces.older-on-part");
        Assert.Equal("1924-01-15", older["date"]);
    }

    [Fact]
    public void PatentsOnTwoParts_AreTwoItems()
    {
        PieceDating dated = InventedReference.Date("""
            { "id": "A", "marks": [ { "patent": "US utility 1480977", "part": "pin" }, { "patent": "US utility 2999999", "part": "back" } ] }
            """);
        Assert.Equal(2, dated.Dating.Evidence.Count);
        Assert.Equal(1924, dated.Parts.Single(p => p.Part == "pin").Interval!.EarliestYear);
        Assert.Equal(1961, dated.Interval!.EarliestYear);
    }

    [Fact]
    public void AdvertsOfOneModel_AreOneItemFirstToLast()
    {
        PieceDating dated = InventedReference.Date("""
            { "id": "A", "adverts": [ { "date": "1953-10", "model": "Model A" }, { "date": "1952", "model": "Model A" } ] }
            """);
        ModelAdvertised item = Assert.IsType<ModelAdvertised>(Assert.Single(dated.Dating.Evidence));
        Assert.Equal(1951, item.First.Outer.NotBefore!.Value.Year);
        Assert.Equal("1953-10-31", DateText.Iso(item.Last!.Outer.LastDay));
        Assert.Equal(["t.advert"], item.Entries);
    }

    [Fact]
    public void MarkOfThePatentBehindAFeature_IsOneObservationWithIt_AndTheMarkStands()
    {
        PieceDating dated = InventedReference.Date("""
            { "id": "A", "marks": [ { "text": "PAT. PEND.", "patent": "US utility 2040000", "part": "pin" } ], "features": [ { "feature": "t.catch", "part": "pin" } ] }
            """);
        PatentPending item = Assert.IsType<PatentPending>(Assert.Single(dated.Dating.Evidence));
        Assert.Equal(["US utility 2040000", "t.catch"], item.Entries);
        Assert.Equal("1934-02-06", DateText.Iso(item.StatedWindows()[0].Window.FirstDay));
        Assert.Contains(item.Reasons, r => r.Rule == "pieces.feature-of-patent");
    }

    [Fact]
    public void FeatureOnAnotherPartThanItsMark_IsAnItemOfItsOwn()
    {
        PieceDating dated = InventedReference.Date("""
            { "id": "A", "marks": [ { "patent": "US utility 2040000", "part": "face" } ], "features": [ { "feature": "t.catch", "part": "pin" } ] }
            """);
        Assert.Equal(2, dated.Dating.Evidence.Count);
    }

    [Fact]
    public void FeatureOfAPatent_CountsFromTheYearOfItsFiling()
    {
        // Design: "A feature that a patent introduced counts from the filing year where that is known: pending examples exist."
        PieceDating dated = InventedReference.Date("""{ "id": "A", "features": [ { "feature": "t.catch" } ] }""");
        Assert.Equal("1934-01-01", DateText.Iso(dated.Dating.Evidence[0].StatedWindows()[0].Window.FirstDay));
    }

    [Fact]
    public void TwoAnswersToOneQuestionOnOnePart_AreOneItemAsWideAsBoth_AndAreTold()
    {
        PieceDating dated = InventedReference.Date("""
            { "id": "A", "features": [ { "feature": "t.hook", "part": "pin" }, { "feature": "t.catch", "part": "pin" } ] }
            """);
        Assert.Single(dated.Dating.Evidence);
        DocumentProblem problem = Assert.Single(dated.Problems);
        Assert.Contains("two answers", problem.Message, StringComparison.Ordinal);
        Assert.Contains("t.hook", problem.Message, StringComparison.Ordinal);
        Assert.Contains("t.catch", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void SameFeatureTwice_CountsOnce()
    {
        PieceDating once = InventedReference.Date("""{ "id": "A", "features": [ { "feature": "t.snap" } ] }""");
        PieceDating twice = InventedReference.Date("""{ "id": "A", "features": [ { "feature": "t.snap", "part": "pin" }, { "feature": "t.snap", "part": "box" } ] }""");
        Assert.Single(twice.Dating.Evidence);
        Assert.Equal(once.Interval!.Belief, twice.Interval!.Belief, 12);
    }

    [Fact]
    public void OpinionsThatRestOnOneThing_AreOneWitness()
    {
        PieceDating dated = InventedReference.Date("""
            { "id": "A", "opinions": [
              { "by": "one", "restsOn": [ "a letter" ], "windows": [ { "notBefore": "1950", "notAfter": "1960", "confidence": 0.7 } ] },
              { "by": "two", "restsOn": [ "a letter" ], "windows": [ { "notBefore": "1950", "notAfter": "1960", "confidence": 0.8 } ] } ] }
            """);
        Assert.Equal(0.8, dated.Dating.Belief(DateWindow.BetweenYears(1950, 1960)), 12);
    }

    [Fact]
    public void OpinionThatRestsOnAFeatureInEvidence_SaysNothingMore()
    {
        PieceDating alone = InventedReference.Date("""{ "id": "A", "features": [ { "feature": "t.snap" } ] }""");
        PieceDating both = InventedReference.Date("""
            { "id": "A", "features": [ { "feature": "t.snap" } ],
              "opinions": [ { "by": "a dealer", "restsOn": [ "t.snap" ], "windows": [ { "notBefore": "1920", "notAfter": "1930", "confidence": 0.9 } ] } ] }
            """);
        Assert.Equal(alone.Interval!.Window, both.Interval!.Window);
        Assert.Contains(both.Dating.Evidence[1].Reasons, r => r.Rule == "pieces.opinion-same-cause");
    }
}
