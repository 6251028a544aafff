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

    /// <summary>What governs of two rights on one part: the later of their days, whatever the order, and a right without a day never.</summary>
    public static TheoryData<Evidence, Evidence, string> Governing => new()
    {
        { Issued("1924"), Issued("1936"), "1924-01-01" },
        { new PatentPending(Day("1922-05-02"), Day("1931")), new PatentPending(Day("1930"), Day("1931")), "1922-05-02" },
        { new PatentPending(issued: Day("1924-01-15")), new PatentPending(filed: Day("1930")), "1924-01-15" },
        { new PatentPending(number: "1"), new PatentPending(issued: Day("1924")), "" },
        { new RightRegistered(Day("1884-02-03"), number: "1"), new RightRegistered(Day("1901"), number: "2"), "1884-02-03" },
    };

    [Theory]
    [MemberData(nameof(Governing))]
    public void RightsOnOnePart_TheNewestGoverns_InEitherOrder(Evidence older, Evidence newer, string olderDay)
    {
        foreach (Evidence[] items in new[] { new[] { older, newer }, [newer, older] })
        {
            Evidence item = Assert.Single(Merge(items));
            Assert.Equal(newer, item with { Reasons = [] });
            Reason reason = Assert.Single(item.Reasons);
            Assert.Equal(
                ("pieces.older-on-part", older.Kind, EvidenceName.Thing(older, InventedReference.Set), olderDay),
                (reason.Rule, reason["kind"], reason["what"], reason["date"]));
        }
    }

    [Fact]
    public void Merge_ItemsThatShareNothing_AreTheSameList()
    {
        ValueList<Evidence> items = ValueList.Of<Evidence>([Issued("1924"), new KnownBy(Day("1930"))]);
        Assert.Same(items, OneCause.Merge(items, InventedReference.Set, Assumptions.House));
    }

    [Fact]
    public void MarkAndTwoFeaturesOfItsPatent_AreOneItem_AndTheOthersStayInTheirOrder()
    {
        ReferenceSet reference = InventedReference.Set.With(new ReferenceFile(
            "own", "1.0.0", [new FeatureEntry("t.second", "second", patents: ["US utility 1", "US utility 2040000"])]));
        var record = new KnownBy(Day("1950"));
        Evidence[] items =
        [
            Feature("t.catch"), record, Issued("1936", "pin", "US utility 2040000"), Feature("t.second", "pin"), Feature("t.second", "box"), Issued("1924", "box"), Feature("t.snap"),
        ];
        IReadOnlyList<Evidence> merged = OneCause.Merge(ValueList.Of(items), reference, Assumptions.House);
        Assert.Equal(["known-by", "patent-issued", "feature-seen", "patent-issued", "feature-seen"], merged.Select(i => i.Kind));
        Assert.Equal(["US utility 2040000", "t.catch", "t.second"], merged[1].Entries);
        Assert.Equal(["rolling catch", "second"], merged[1].Reasons.Select(r => r["what"]));
        Assert.Equal(["box", "box", null], merged.Skip(2).Select(i => i.Part));
    }

    [Fact]
    public void TwoMarks_EachTakesTheFeatureOfItsOwnPatent()
    {
        ReferenceSet reference = InventedReference.Set.With(new ReferenceFile(
            "own", "1.0.0", [new FeatureEntry("t.second", "second", patents: ["US utility 2999999"])]));
        IReadOnlyList<Evidence> merged = OneCause.Merge(
            ValueList.Of<Evidence>([Feature("t.catch", "pin"), Feature("t.second", "box"), Issued("1936", "pin", "US utility 2040000"), Issued("1961", "box", "US utility 2999999")]),
            reference,
            Assumptions.House);
        Assert.Equal([("pin", "US utility 2040000 t.catch"), ("box", "US utility 2999999 t.second")], merged.Select(i => (i.Part!, string.Join(" ", i.Entries))));
    }

    [Fact]
    public void OneEntry_OnOnePartKeepsThePart_AndOnTwoSpeaksForThePiece()
    {
        Evidence on = Assert.Single(Merge(Feature("t.snap", "pin", "1950"), Feature("t.snap", "pin")));
        Assert.Equal("pin", on.Part);
        Evidence both = Assert.Single(Merge(Feature("t.snap", "pin"), Feature("t.snap", "box")));
        Assert.Null(both.Part);
        Reason reason = Assert.Single(both.Reasons);
        Assert.Equal(("pieces.same-entry", "snap", "box"), (reason.Rule, reason["what"], reason["part"]));
        Assert.Equal("", Assert.Single(Assert.Single(Merge(Feature("t.snap", "pin"), Feature("t.snap"))).Reasons)["part"]);
    }

    [Fact]
    public void OneEntry_SubjectsMarksAndMakers_CountOnce()
    {
        Assert.Single(Merge(new SubjectShown("sub.kite", Day("1936"), part: "face"), new SubjectShown("sub.kite", Day("1936"))));
        Assert.Single(Merge(new MarkInUse("w", part: "face", entries: ["t.mark"]), new MarkInUse("w", part: "back", entries: ["t.mark"])));
        Assert.Equal(2, Merge(new MarkInUse("w", part: "face"), new MarkInUse("w", part: "back")).Count);
        Assert.Single(Merge(new MakerActive("t.maker", Day("1900"), Day("1950"), "face"), new MakerActive("t.maker", Day("1900"), Day("1950"), "back")));
        Assert.Equal(2, Merge(new MakerActive("t.maker", Day("1900"), Day("1950")), new MakerActive("t.maker", Day("1900"), Day("1960"))).Count);
        Assert.Equal(2, Merge(new FeatureSeen("t.undated", part: "face"), new FeatureSeen("t.undated", part: "back")).Count);
    }

    [Fact]
    public void OneEntryOnTwoParts_ThenAnswersTheQuestionOfThePiece()
    {
        Evidence item = Assert.Single(Merge(Feature("t.hook", "pin"), Feature("t.hook", "box"), Feature("t.catch")));
        Assert.Equal(["t.hook", "t.catch"], item.Entries);
        Assert.Contains(item.Reasons, r => r.Rule == "pieces.two-answers");
    }

    [Fact]
    public void TwoAnswers_AreAsWideAsBothAndAsSureAsTheWeaker()
    {
        var one = new FeatureSeen(
            "t.hook", Day("1900"), Day("1910"), Day("1930"), Day("1940"), EvidenceBasis.Law, EvidenceGrade.High, true, "pin", "a book", ["t.hook"]);
        var other = new FeatureSeen(
            "t.catch", Day("1905"), Day("1908"), Day("1925"), Day("1945"), EvidenceBasis.Law, EvidenceGrade.Medium, true, "pin", "a book", ["t.catch"]);
        var both = (FeatureSeen)Assert.Single(Merge(one, other));
        Assert.Equal("t.hook / t.catch", both.Feature);
        Assert.Equal((Day("1900"), Day("1908"), Day("1930"), Day("1945")), (both.Introduced, both.Common, both.Fading, both.Gone));
        Assert.Equal((EvidenceBasis.Law, EvidenceGrade.Medium, true, "pin", "a book"), (both.Basis, both.Grade, both.EndedByLaw, both.Part, both.Source));
        Assert.Equal(["open hook", "rolling catch"], both.Reasons.Select(r => r["what"]));
        Assert.All(both.Reasons, r => Assert.Equal("pieces.two-answers", r.Rule));

        both = (FeatureSeen)Assert.Single(Merge(
            one, other with { Introduced = null, Common = null, Fading = null, Gone = null, Basis = EvidenceBasis.Patent, EndedByLaw = false, Source = "a letter" } with { Fading = Day("1950") }));
        Assert.Equal((null, null, Day("1950"), null), (both.Introduced, both.Common, both.Fading, both.Gone));
        Assert.Equal((EvidenceBasis.Trade, false, "a book; a letter"), (both.Basis, both.EndedByLaw, both.Source));
    }

    [Fact]
    public void Opinions_OnOneGround_TheSurestSpeaksWhateverTheOrder()
    {
        Opinion weak = new([new StatedWindow(DateWindow.InYear(1950), 0.6)], "one", ["a letter"]);
        Opinion sure = new([new StatedWindow(DateWindow.InYear(1950), 0.8)], "two", ["a letter", "a book"]);
        Opinion silent = new([], "three", ["a book"]);
        foreach (Evidence[] items in new[] { new[] { weak, sure, silent }, [silent, sure, weak] })
        {
            IReadOnlyList<Evidence> merged = Merge(items);
            Assert.Equal(items.Select(i => i == sure ? 1 : 0), merged.Select(i => ((Opinion)i).Windows.Count));
            Assert.Equal(sure, merged[1]);
            Assert.Equal("a letter", Assert.Single(merged.Single(i => ((Opinion)i).By == "one").Reasons)["cause"]);
            Assert.Equal("a book", Assert.Single(merged.Single(i => ((Opinion)i).By == "three").Reasons)["cause"]);
        }
    }

    [Fact]
    public void Opinions_ThatBecomeTheSame_CountOnce()
    {
        Opinion first = new([new StatedWindow(DateWindow.InYear(1950), 0.6)], "one", ["t.snap"]);
        Opinion second = new([new StatedWindow(DateWindow.InYear(1960), 0.7)], "one", ["t.snap"]);
        Assert.Equal(2, Merge(Feature("t.snap"), first, second).Count);
    }

    [Fact]
    public void SeveralCausesOfSeveralItems_EachIsOneItemWithAReasonForEachOfTheOthers()
    {
        IReadOnlyList<Evidence> merged = Merge(
            Feature("t.snap", "pin"), Feature("t.until1954", "pin"), Feature("t.snap", "box"), Feature("t.until1954", "box"), Feature("t.snap", "lid"), Feature("t.until1954", "lid"));
        Assert.Equal(["t.snap", "t.until1954"], merged.Select(i => ((FeatureSeen)i).Feature));
        Assert.All(merged, item => Assert.Equal(["box", "lid"], item.Reasons.Select(r => r["part"])));
    }

    // What two items come to is kept; a third must not be taken for part of that.
    [Fact]
    public void TwoItemsWithAThird_AreMergedAnewForEachThird()
    {
        (Evidence one, Evidence two) = (Feature("t.snap", "pin"), Feature("t.snap", "box"));
        Assert.Equal(["box"], Assert.Single(Merge(one, two)).Reasons.Select(r => r["part"]));
        Assert.Equal(["box", "lid"], Assert.Single(Merge(one, two, Feature("t.snap", "lid"))).Reasons.Select(r => r["part"]));
        Assert.Equal(["box", "rim"], Assert.Single(Merge(one, two, Feature("t.snap", "rim"))).Reasons.Select(r => r["part"]));
    }

    private static EvidenceDate Day(string edtf) => EvidenceDate.Parse(edtf);

    private static PatentIssued Issued(string edtf, string? part = null, string? entry = null)
        => new(Day(edtf), part: part, entries: entry is null ? null : [entry]);

    private static FeatureSeen Feature(string id, string? part = null, string introduced = "1936")
        => new(id, Day(introduced), part: part, entries: [id]);

    private static IReadOnlyList<Evidence> Merge(params Evidence[] items) => OneCause.Merge(ValueList.Of(items), InventedReference.Set, Assumptions.House);
}
