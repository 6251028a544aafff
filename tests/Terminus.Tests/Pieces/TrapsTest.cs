namespace Terminus.Tests.Pieces;

/// <summary>The traps of docs/traps.md that no single type of the library meets alone. Pieces, makers and patents are invented.</summary>
public class TrapsTest
{
    [Fact]
    public void PatentLeftOnAfterExpiry_GivesNoEnd()
    {
        PieceDating tool = InventedReference.Date("""
            { "id": "A", "marks": [ { "patent": "US utility 1480977" } ], "records": [ { "date": "1995", "what": "an invented receipt", "new": true } ] }
            """);
        Assert.Equal(new NodaTime.LocalDate(1924, 1, 15), tool.Dating.Possible!.Value.NotBefore);
        Assert.Equal(1995, tool.Interval!.LatestYear);
        Assert.Equal(DisagreementCause.OldDie, Assert.Single(tool.Dating.Disagreements).Cause);
        Assert.Equal(DisagreementLevel.Usage, tool.Dating.Disagreements[0].Level);
    }

    [Fact]
    public void IssueDate_IsTheEarliestDate_NeverTheDate()
    {
        PieceDating marked = InventedReference.Date("""{ "id": "A", "marks": [ { "patent": "US utility 1480977" } ] }""");
        Assert.True(marked.Interval!.EndsToday);
        Assert.Equal(1924, marked.Interval.EarliestYear);
    }

    [Fact]
    public void NumberOfOnePart_DatesThatPart()
    {
        PieceDating piece = InventedReference.Date("""
            { "id": "A", "marks": [ { "patent": "US utility 1480977", "part": "clip" } ], "features": [ { "feature": "t.hook", "part": "body" } ] }
            """);
        Assert.Equal(1924, piece.Parts.Single(p => p.Part == "clip").Interval!.EarliestYear);
        Assert.Null(piece.Parts.Single(p => p.Part == "body").Dating.Possible!.Value.NotBefore);
    }

    [Fact]
    public void ImprovementPatent_CountsAsUsage()
    {
        FeatureEntry wider = ReferenceSet.BuiltIn.Features.First(f => f.PatentOfWiderClass && f.Introduced is not null);
        Assert.Equal(EvidenceBasis.Trade, wider.CountsAs);
        PieceDating piece = PieceDating.Of(new Piece("A", features: [new PieceFeature(wider.Id)]), InventedReference.Today);
        Assert.Null(piece.Dating.Possible!.Value.NotBefore);
    }

    [Theory]
    [InlineData("REG. U.S. PAT. OFF.", MarkKind.TradeMark)]
    [InlineData("COPR.", MarkKind.Copyright)]
    public void WordsThatNameAnotherRight_AreNotReadAsAPatent(string text, MarkKind kind)
    {
        Inscription read = Inscription.Read(text);
        Assert.Contains(read.Marks, m => m.Kind == kind);
        Assert.DoesNotContain(read.ToEvidence(), e => e is PatentIssued);
    }

    [Fact]
    public void DateAlone_NamesNoPatentOfThatDay()
    {
        PatentIssued dated = Assert.IsType<PatentIssued>(Assert.Single(Inscription.Read("PAT. JAN. 4. 1910").ToEvidence()));
        Assert.Null(dated.Number);
        Assert.Equal(new NodaTime.LocalDate(1910, 1, 4), dated.Issued.Outer.NotBefore);
    }

    /// <summary>A page gives 1867 for number 34,216; number 38,999 issued in June 1863 (vintagecorkscrews.com, and the register).</summary>
    [Fact]
    public void PageErrorCopiedOn_IsFoundAgainstTheRegister()
    {
        ReferenceFile file = ReferenceFile.Read("""
            { "format": 1, "name": "invented", "version": "1",
              "patents": [ { "id": "US utility 34216", "issued": "1867-01-01", "source": "a page", "origin": "source" } ] }
            """).OrThrow();
        Assert.Contains(ReferenceCheck.Run(file), f => f.Id == "US utility 34216" && f.Rule.Contains("year", StringComparison.Ordinal));
    }

    [Fact]
    public void MakersDates_AreTakenWithYearsOnEitherSide()
    {
        PieceDating piece = InventedReference.Date("""{ "id": "A", "makers": [ { "maker": "t.maker" } ] }""");
        Assert.Equal(1919 - Assumptions.House.MakerYears, piece.Interval!.EarliestYear);
    }

    [Fact]
    public void ReplacedFinding_MakesTheWholeNoOlder_AndIsTold()
    {
        PieceDating piece = InventedReference.Date("""
            { "id": "A", "features": [ { "feature": "t.hook", "part": "body" }, { "feature": "t.catch", "part": "catch" } ] }
            """);
        Assert.Equal(DisagreementCause.ReplacedPart, Assert.Single(piece.Dating.Disagreements).Cause);
        Assert.Contains("replaced part", Statement.Of(piece), StringComparison.Ordinal);
    }

    [Fact]
    public void LeftoverStock_IsASuggestedCause()
    {
        PieceDating piece = InventedReference.Date("""
            { "id": "A", "features": [ { "feature": "t.hook" } ], "records": [ { "date": "1960", "new": true } ] }
            """);
        Assert.Equal(DisagreementCause.OldStock, Assert.Single(piece.Dating.Disagreements).Cause);
    }

    [Fact]
    public void Style_IsUsageAlone_AndSaysSo()
    {
        PieceDating piece = InventedReference.Date("""{ "id": "A", "features": [ { "feature": "t.hook" } ] }""");
        Assert.Null(piece.Dating.Possible!.Value.NotBefore);
        Assert.Contains("usage alone", Statement.Of(piece), StringComparison.Ordinal);
    }

    [Fact]
    public void ConflictingHandbooks_AreBothInsideTheWindow()
    {
        FeatureEntry catchOf1901Or1911 = ReferenceSet.BuiltIn.Feature("brooch.rotating_safety")!;
        Assert.Equal("1901", catchOf1901Or1911.Introduced!.Text);
        Assert.Contains("1911", catchOf1901Or1911.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void EachKindOfEvidence_HasACautionOfWhatItCannotShow()
    {
        IEnumerable<string> kinds = typeof(Evidence).Assembly.GetExportedTypes().Where(t => t.IsSealed && t.IsSubclassOf(typeof(Evidence))).Select(KindOf);
        Assert.All(kinds, kind => Assert.Contains("unseen." + kind, ReasonText.Rules));
        PieceDating piece = InventedReference.Date("""{ "id": "A", "features": [ { "feature": "t.hook" } ] }""");
        Assert.Equal("unseen.feature-seen", Assert.Single(NextSteps.Of(piece).Unseen).Rule);
    }

    // Kinds are the names of the types, as documents write names.
    private static string KindOf(Type type) => Words.Kebab(type.Name);
}
