namespace Terminus.Tests.Pieces;

/// <summary>What each entry of a piece becomes, before anything is merged. Makers, patents and marks are invented.</summary>
public class PieceEvidenceTest
{
    private static readonly ReferenceSet Reference = InventedReference.Set.With(new ReferenceFile(
        "own",
        "1.0.0",
        patents:
        [
            new PatentEntry("GB registered-design 712345", issued: EdtfDate.Parse("1934-08-09"), source: "Invented."),
            new PatentEntry("US utility 2888888", filed: EdtfDate.Parse("1955"), source: "Invented."),
        ],
        makers:
        [
            new MakerEntry(
                "t.firm",
                "Firm",
                EdtfDate.Parse("1900"),
                EdtfDate.Parse("1960"),
                [new MakerDetail("Firm & Son", EdtfDate.Parse("1920"), EdtfDate.Parse("1950")), new MakerDetail("Firm", EdtfDate.Parse("1880"), null)],
                [new MakerDetail("1 Mill Lane", EdtfDate.Parse("1930"), EdtfDate.Parse("1970"))]),
        ],
        marks: [new MarkEntry("t.tarn", "Made in Tarn-Oake", from: EdtfDate.Parse("1910"), until: EdtfDate.Parse("1930"), source: "Invented.")]));

    [Fact]
    public void Marks_NumberThatTheReferenceKnows_HasItsDateAndSaysSo()
    {
        // The register knows US utility 2,999,999 only by the run of its year; the reference file has the day.
        PatentIssued patent = Assert.IsType<PatentIssued>(Assert.Single(Items(new Piece("A", marks: [new PieceMark("PAT. 2,999,999", "back")]))));
        Assert.Equal("1961-07-11", patent.Issued.ToString());
        Assert.Equal(("US", "utility", "2999999", "back", "Invented."), (patent.Office, patent.Right, patent.Number, patent.Part, patent.Source));
        Assert.Equal(["US utility 2999999"], patent.Entries);
        Reason reason = Assert.Single(patent.Reasons);
        Assert.Equal(("pieces.reference-beats-register", "US utility 2999999"), (reason.Rule, reason["patent"]));
    }

    [Fact]
    public void Marks_RegisteredDesignThatTheReferenceKnows_HasItsDateAndSaysSo()
    {
        RightRegistered design = Assert.IsType<RightRegistered>(Assert.Single(Items(new Piece("A", marks: [new PieceMark("RD. NO. 712345", "back")]))));
        Assert.Equal("1934-08-09", design.Registered.ToString());
        Assert.Equal(("GB", "registered-design", "712345", "back", "Invented."), (design.Office, design.Right, design.Number, design.Part, design.Source));
        Assert.Equal(["GB registered-design 712345"], design.Entries);
        Assert.Equal("pieces.reference-beats-register", Assert.Single(design.Reasons).Rule);
    }

    [Fact]
    public void Marks_NumberThatTheReferenceDoesNotKnow_IsThatOfTheRegister()
    {
        PatentIssued patent = Assert.IsType<PatentIssued>(Assert.Single(Items(new Piece("A", marks: [new PieceMark("PAT. 2,999,998")]))));
        Assert.Empty(patent.Entries);
        Assert.DoesNotContain(patent.Reasons, r => r.Rule == "pieces.reference-beats-register");
    }

    [Fact]
    public void Marks_PatentWithoutAnIssueDate_LeavesTheRegistersDate()
    {
        PatentIssued patent = Assert.IsType<PatentIssued>(Assert.Single(Items(new Piece("A", marks: [new PieceMark("PAT. 2,888,888")]))));
        Assert.Empty(patent.Entries);
        DocumentProblem problem = Assert.Single(Problems(new Piece("A", marks: [new PieceMark(patent: "US utility 2888888")])));
        Assert.Equal(("$.marks[0].patent", "The patent \"US utility 2888888\" has no issue date in the reference file."), (problem.Path, problem.Message));
        PatentPending pending = Assert.IsType<PatentPending>(Assert.Single(Items(new Piece("A", marks: [new PieceMark("PAT. PEND.", null, "US utility 2888888")]))));
        Assert.Equal(("1955-01-01/1955-12-31", null), (pending.Filed!.ToString(), pending.Issued));
    }

    [Theory]
    [InlineData("MADE IN TARN-OAKE", true)]
    [InlineData("Sterling / made  in\ttarn oake.", true)]
    [InlineData("made,in.tarn/oake", true)]
    [InlineData("REMADE IN TARN-OAKE", false)]
    [InlineData("MADE IN TARN-OAKES", false)]
    public void Marks_WordsOfTheReference_AreFoundWhateverTheCaseAndTheSpacing(string text, bool found)
    {
        IEnumerable<MarkInUse> marks = Items(new Piece("A", marks: [new PieceMark(text, "back")])).OfType<MarkInUse>().Where(m => m.Wording == "t.tarn");
        if (found)
        {
            MarkInUse mark = Assert.Single(marks);
            Assert.Equal(("back", "Invented."), (mark.Part, mark.Source));
            Assert.Equal(["t.tarn"], mark.Entries);
        }
        else
        {
            Assert.Empty(marks);
        }
    }

    [Fact]
    public void Marks_PatentThatIsNamed_StandsForWhatTheTextSaysOfPatents_AndForNothingElse()
    {
        Piece piece = new("A", marks: [new PieceMark("PAT. APR. 17. 1894 STERLING MADE IN TARN-OAKE", "back", "US utility 2999999")]);
        List<Evidence> items = Items(piece);
        Assert.Equal("2999999", Assert.Single(items.OfType<PatentIssued>()).Number);
        Assert.Contains(items, i => i is MarkInUse { Wording: "t.tarn" });
        Assert.Empty(Problems(piece));
        Assert.Contains(Items(new Piece("A", marks: [new PieceMark("RD. NO. 712345", "back", "US utility 2999999")])), i => i is RightRegistered);
    }

    [Theory]
    [InlineData("4711", true)]
    [InlineData("XQZ?", true)]
    [InlineData("XQZ[ ]", true)]
    [InlineData("XQZ 0", true)]
    [InlineData("XQZ 9", true)]
    [InlineData("XQZ", false)]
    [InlineData("PAT. PEND.", false)]
    public void Marks_NothingReadThoughThereAreDigitsOrLostLetters_IsAProblem(string text, bool unread)
    {
        IReadOnlyList<DocumentProblem> problems = Problems(new Piece("A", marks: [new PieceMark(text)]));
        Assert.Equal(unread ? ["$.marks[0].text"] : [], problems.Select(p => p.Path));
        Assert.All(problems, p => Assert.Equal($"Nothing could be read in the mark \"{text}\".", p.Message));
        Assert.Empty(Problems(new Piece("A", marks: [new PieceMark(text, null, "US utility 2999999")])));
    }

    [Fact]
    public void Marks_DesignThatIsAppliedFor_IsPendingToo()
    {
        PatentPending pending = Assert.IsType<PatentPending>(Assert.Single(Items(new Piece("A", marks: [new PieceMark("DES. PAT. PEND.", null, "US utility 2999999")]))));
        Assert.Equal("1956-03-06", pending.Filed!.ToString());
    }

    [Fact]
    public void Features_WordingOfALaw_IsTheWordingOrItsAbsence()
    {
        List<Evidence> items = Items(new Piece("A", features: [new PieceFeature("mk.made_in_usa", "back"), new PieceFeature("mk.made_in_usa", "pin", absent: true)]));
        Assert.Equal(("mk.made_in_usa", "back"), (Assert.IsType<MarkInUse>(items[0]).Wording, items[0].Part));
        FeatureSeen absent = Assert.IsType<FeatureSeen>(items[1]);
        Assert.Equal(("mk.made_in_usa", "pin"), (absent.Feature, absent.Part));
        Assert.Empty(absent.StatedWindows());
        Assert.Equal(items[0].Source, absent.Source);
        Assert.NotNull(absent.Source);
        Assert.Equal("pieces.feature-absent", Assert.Single(absent.Reasons).Rule);
    }

    [Fact]
    public void Subjects_WithoutADateOrUnknown_AreProblemsAtTheirPlace()
    {
        IReadOnlyList<DocumentProblem> problems = Problems(new Piece("A", subjects: [new PieceSubject("t.undated"), new PieceSubject("sub.kites"), new PieceSubject("t.hooks")]));
        Assert.Equal(
            [
                ("$.subjects[0].subject", "The subject \"t.undated\" has no date in the reference file, so it says nothing."),
                ("$.subjects[1].subject", "The subject \"sub.kites\" is not in the reference file. Did you mean \"sub.kite\"?"),
                ("$.subjects[2].subject", "The subject \"t.hooks\" is not in the reference file."),
            ],
            problems.Select(p => (p.Path, p.Message)));
    }

    [Theory]
    [InlineData(null, null, "1900", "1960")]
    [InlineData("firm & son", null, "1920", "1950")]
    [InlineData("Firm", null, "1900", "1960")]
    [InlineData(null, "1 MILL LANE", "1930", "1960")]
    [InlineData("Firm & Son", "1 Mill Lane", "1930", "1950")]
    public void Makers_FormAndAddress_NarrowTheYearsOfTheFirm(string? form, string? address, string from, string until)
    {
        MakerActive maker = Assert.IsType<MakerActive>(Assert.Single(Items(new Piece("A", makers: [new PieceMaker("t.firm", form, address, "lid")]))));
        Assert.Equal((EvidenceDate.Parse(from), EvidenceDate.Parse(until), "lid"), (maker.From, maker.Until, maker.Part));
    }

    [Fact]
    public void Makers_FormOrAddressThatIsNotKnown_IsAProblemAndTheFirmIsTaken()
    {
        Piece piece = new("A", makers: [new PieceMaker("t.firm", "Firm & Sons", "2 Mill Lane"), new PieceMaker("t.firmm")]);
        Assert.Equal(EvidenceDate.InYear(1900), Assert.IsType<MakerActive>(Assert.Single(Items(piece))).From);
        Assert.Equal(
            [
                ("$.makers[0].form", "The form of \"t.firm\" \"Firm & Sons\" is not in the reference file. Did you mean \"Firm & Son\"?"),
                ("$.makers[0].address", "The address of \"t.firm\" \"2 Mill Lane\" is not in the reference file. Did you mean \"1 Mill Lane\"?"),
                ("$.makers[1].maker", "The maker \"t.firmm\" is not in the reference file. Did you mean \"t.firm\"?"),
            ],
            Problems(piece).Select(p => (p.Path, p.Message)));
    }

    [Fact]
    public void Adverts_EachModelOnEachPart_IsOneItemFirstToLast()
    {
        List<Evidence> items = Items(new Piece("A", adverts:
        [
            new PieceAdvert(EdtfDate.Parse("1955"), "a list", "Model B", "lid"),
            new PieceAdvert(EdtfDate.Parse("1953"), "a list", "Model B", "lid"),
            new PieceAdvert(EdtfDate.Parse("195X"), "a page", "Model B", "lid"),
            new PieceAdvert(EdtfDate.Parse("1950"), "a list", "Model B", "pin"),
            new PieceAdvert(EdtfDate.Parse("1940"), null, null, "pin"),
        ]));
        Assert.Equal(["lid", "pin", "pin"], items.Select(i => i.Part));
        var lid = (ModelAdvertised)items[0];
        Assert.Equal(("1950-01-01/1959-12-31", "1950-01-01/1959-12-31"), (lid.First.ToString(), (lid.Last ?? lid.First).ToString()));
        Assert.Equal(("a list; a page", "a list; a page"), (lid.What, lid.Source));
        Reason merged = Assert.Single(lid.Reasons);
        Assert.Equal(("pieces.adverts-merged", "3"), (merged.Rule, merged["count"]));
        var pin = (ModelAdvertised)items[2];
        Assert.Equal((EvidenceDate.InYear(1940), null, null, null), (pin.First, pin.Last, pin.What, pin.Source));
        Assert.Empty(pin.Reasons);
        Assert.Empty(pin.Entries);
    }

    [Fact]
    public void Adverts_OfAModelThatTheReferenceHas_AreOneItemWithThem()
    {
        // The invented reference has one advertisement of Model A, of 1951.
        ModelAdvertised item = Assert.IsType<ModelAdvertised>(Assert.Single(Items(new Piece("A", adverts: [new PieceAdvert(EdtfDate.Parse("1949"), "a page", "Model A")]))));
        Assert.Equal((EvidenceDate.InYear(1949), EvidenceDate.InYear(1951)), (item.First, item.Last));
        Assert.Equal("a page; a trade list, p. 9", item.What);
        Assert.Equal(["t.advert"], item.Entries);
        Assert.Equal("2", Assert.Single(item.Reasons)["count"]);
    }

    [Fact]
    public void Opinions_UncertainEnd_IsHeldToTheCapOfUncertainDates()
    {
        // Design: "? caps the item at 0.70".
        foreach ((string? from, string? until) in new[] { ("1950?", "1960"), ("1950", "1960?"), ((string?)null, (string?)"1960?"), ("1950?", null) })
        {
            Assert.Equal(0.7, OneWindow(from, until, 0.9).Confidence);
        }

        Assert.Equal(0.9, OneWindow("1950", "1960", 0.9).Confidence);
        Assert.Equal(0.6, OneWindow("1950?", "1960", 0.6).Confidence);
    }

    [Fact]
    public void Opinions_Ends_AreTheFirstAndTheLastDayOfTheirDates()
    {
        Assert.Equal("1950-01-01/1969-12-31", OneWindow("195X", "196X", 0.9).Window.ToString());
        Assert.Equal("../1960-05-31", OneWindow(null, "1960-05", 0.9).Window.ToString());
        Assert.Equal("1960-05-01/..", OneWindow("1960-05", null, 0.9).Window.ToString());

        // Design: "~ widens by Assumptions.CircaYears (5) on both sides".
        Assert.Equal("1945-01-01/1965-12-31", OneWindow("1950~", "1960~", 0.9).Window.ToString());
    }

    [Fact]
    public void Opinions_WindowThatEndsBeforeItStarts_IsLeftOutAndTold()
    {
        Piece piece = new("A", opinions:
        [
            new PieceOpinion([new PieceWindow(EdtfDate.Parse("1940"), null, 0.9), new PieceWindow(EdtfDate.Parse("1960"), EdtfDate.Parse("1950"), 0.8)], "a dealer", ["a letter"], "style", "lid"),
        ]);
        Opinion opinion = Assert.IsType<Opinion>(Assert.Single(Items(piece)));
        Assert.Equal("1940-01-01/.. (0.9)", Assert.Single(opinion.Windows).ToString());
        Assert.Equal(("a dealer", "a dealer", "style", "lid"), (opinion.By, opinion.Source, opinion.Label, opinion.Part));
        Assert.Equal(["a letter"], opinion.RestsOn);
        DocumentProblem problem = Assert.Single(Problems(piece));
        Assert.Equal(
            ("$.opinions[0].windows[1]", "The window starts 1960-01-01, after its end 1950-12-31; it is left out."), (problem.Path, problem.Message));
    }

    // Design: "A feature that a patent introduced counts from the filing year where that is known".
    [Theory]
    [InlineData("1936", EvidenceBasis.Patent, "1934-01-01/1934-12-31", "US utility 2")]
    [InlineData(null, EvidenceBasis.Patent, "1934-01-01/1934-12-31", "US utility 2")]
    [InlineData("1930", EvidenceBasis.Patent, "1930-01-01/1930-12-31", null)]
    [InlineData("1934-02-06", EvidenceBasis.Patent, "1934-02-06", null)]
    [InlineData("1934-02-07", EvidenceBasis.Patent, "1934-01-01/1934-12-31", "US utility 2")]
    [InlineData("1936", EvidenceBasis.Trade, "1936-01-01/1936-12-31", null)]
    public void Features_OfPatents_CountFromTheYearOfTheFirstFiling(string? introduced, EvidenceBasis basis, string from, string? patent)
    {
        ReferenceSet reference = ReferenceSet.Empty.With(new ReferenceFile(
            "a",
            "1",
            [
                new FeatureEntry(
                    "f", "hook", introduced: introduced is null ? null : EdtfDate.Parse(introduced), basis: basis,
                    patents: ["US utility 1", "US utility 2", "US utility 3", "US utility 4", "US utility 5"]),
            ],
            patents:
            [
                new PatentEntry("US utility 1", filed: EdtfDate.Parse("1935-01-08")), new PatentEntry("US utility 2", filed: EdtfDate.Parse("1934-02-06")),
                new PatentEntry("US utility 3"), new PatentEntry("US utility 4", filed: EdtfDate.Parse("../1950")),
            ]));
        FeatureSeen seen = Assert.IsType<FeatureSeen>(Assert.Single(PieceEvidence.Of(new Piece("A", features: [new PieceFeature("f")]), reference, Assumptions.House).Items));
        Assert.Equal(from, seen.Introduced!.ToString());
        Assert.Equal(
            patent is null ? [] : [("pieces.from-filing-year", patent, "1934")], seen.Reasons.Select(r => (r.Rule, r["patent"]!, r["year"]!)));
    }

    [Fact]
    public void Features_Absent_NameWhatWasLookedFor()
    {
        FeatureSeen absent = Assert.IsType<FeatureSeen>(Assert.Single(Items(new Piece("A", features: [new PieceFeature("t.snap", "pin", absent: true)]))));
        Assert.Equal("pieces.feature-absent(feature=snap)", Assert.Single(absent.Reasons).ToString());
        Assert.Equal(("pin", "Invented."), (absent.Part, absent.Source));
        Assert.Equal(["t.snap"], absent.Entries);
    }

    [Fact]
    public void Opinions_WindowsThatAreNotNested_AreToldAndCut()
    {
        Piece piece = new("A", opinions:
        [
            new PieceOpinion([new PieceWindow(EdtfDate.Parse("1950"), EdtfDate.Parse("1960"), 0.9), new PieceWindow(EdtfDate.Parse("1955"), EdtfDate.Parse("1965"), 0.8)]),
        ]);
        DocumentProblem problem = Assert.Single(Problems(piece));
        Assert.Equal(
            ("$.opinions[0].windows", "The windows are not nested: each must lie in the one before it, with no higher confidence. Each was cut to the one before it."),
            (problem.Path, problem.Message));
        Assert.Equal(["1950-01-01/1960-12-31 (0.9)", "1955-01-01/1960-12-31 (0.8)"], Assert.Single(Items(piece)).StatedWindows().Select(w => w.ToString()));
    }

    [Fact]
    public void UnknownIds_OnlyTheFirstTwentyGetASuggestion()
    {
        IReadOnlyList<DocumentProblem> problems = Problems(new Piece("A", features: [.. Enumerable.Range(0, 22).Select(_ => new PieceFeature("t.hoook"))]));
        Assert.Equal([.. Enumerable.Repeat(true, 20), false, false], problems.Select(p => p.Message.EndsWith("Did you mean \"t.hook\"?", StringComparison.Ordinal)));
    }

    private static StatedWindow OneWindow(string? from, string? until, double confidence)
        => Assert.Single(Assert.IsType<Opinion>(Assert.Single(Items(new Piece(
            "A", opinions: [new PieceOpinion([new PieceWindow(from is null ? null : EdtfDate.Parse(from), until is null ? null : EdtfDate.Parse(until), confidence)])])))).Windows);

    private static List<Evidence> Items(Piece piece) => PieceEvidence.Of(piece, Reference, Assumptions.House).Items;

    private static List<DocumentProblem> Problems(Piece piece) => PieceEvidence.Of(piece, Reference, Assumptions.House).Problems ?? [];
}
