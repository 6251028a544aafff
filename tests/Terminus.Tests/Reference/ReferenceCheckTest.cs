using FsCheck.Xunit;

namespace Terminus.Tests.Reference;

public class ReferenceCheckTest
{
    [Fact]
    public void Run_BuiltInReference_FindsNothing()
    {
        Assert.Empty(ReferenceCheck.Run(BuiltInReference.Load(), ReferenceSet.Empty));
        Assert.Empty(ReferenceCheck.Run(ReferenceSet.BuiltIn));
    }

    [Property(MaxTest = 300, Arbitrary = [typeof(Gens)])]
    public void BreakingOneEntryOfTheBuiltInReferenceGivesExactlyThatFindingWithItsPlace(BrokenReference broken)
    {
        ReferenceFinding finding = Assert.Single(ReferenceCheck.Run(broken.File, ReferenceSet.Empty));
        Assert.Equal((broken.Rule, broken.Id, broken.Path), (finding.Rule, finding.Id, finding.Path));
        Assert.StartsWith("reference/", finding.File, StringComparison.Ordinal);
        Assert.True(finding.Line > 1);
        Assert.DoesNotContain("{", ReasonText.Of(finding.Reason), StringComparison.Ordinal);
        Assert.NotEqual(finding.Reason.ToString(), ReasonText.Of(finding.Reason));
    }

    [Fact]
    public void Run_MarkUsedBeforeItsMaker_IsFound()
    {
        ReferenceFinding finding = Assert.Single(Run("\"from\": \"1921\", \"until\": \"1964\"", "\"from\": \"1919\", \"until\": \"1964\""));
        Assert.Equal(("reference.mark-before-maker", "$.marks[0].from", 25), (finding.Rule, finding.Path, finding.Line));
        Assert.Equal("The mark is used from 1919, before its maker larkfield began, 1920.", ReasonText.Of(finding.Reason));
    }

    [Theory]
    [InlineData("\"until\": \"1965\",\n", "\"until\": \"1919\",\n", "$.makers[0].until", "reference.order")]
    [InlineData("\"from\": \"1931\", \"until\": \"1965\"", "\"from\": \"1971\", \"until\": \"1965\"", "$.makers[0].forms[0].until", "reference.order")]
    [InlineData("\"until\": \"1964\"", "\"until\": \"1902\"", "$.marks[0].until", "reference.order")]
    [InlineData("\"feature\": \"cuff.tumbler\"", "\"feature\": \"cuff.tumbled\"", "$.adverts[0].feature", "reference.unknown-id")]
    [InlineData("\"maker\": \"larkfield\", \"source\"", "\"maker\": \"larkfeld\", \"source\"", "$.adverts[0].maker", "reference.unknown-id")]
    public void Run_OtherKindsBroken_IsFoundWithItsPath(string sound, string broken, string path, string rule)
    {
        ReferenceFinding finding = Assert.Single(Run(sound, broken));
        Assert.Equal((rule, path, "quay.json"), (finding.Rule, finding.Path, finding.File));
    }

    // The years are made up. House defaults take "about" as five years on either side.
    [Theory]
    [InlineData("1909", "1910~", false)]
    [InlineData("191X", "1910~", true)] // 1919 against 1915
    [InlineData("1905/1915", "1910~", false)]
    [InlineData("1905/1916", "1910~", true)]
    [InlineData("1915~", "1915~", false)]
    [InlineData("1915~", "1919", true)] // 1920 against 1919
    [InlineData("1905/..", "1910", false)]
    [InlineData("1916", "1910/..", false)]
    public void Run_UsageThatOutlastsItsEnd_IsFound(string fading, string gone, bool isFound)
    {
        var feature = new FeatureEntry("my.feature", "mine", fading: EdtfDate.Parse(fading), gone: EdtfDate.Parse(gone));
        IReadOnlyList<ReferenceFinding> findings = ReferenceCheck.Run(new ReferenceFile("mine", "1", features: [feature]));
        Assert.Equal(isFound ? ["reference.fades-after-gone .fading"] : [], findings.Select(f => f.Rule + " " + f.Path));
    }

    [Fact]
    public void Run_FileOverTheBuiltInReference_MayReferToIt()
    {
        string builtIn = ReferenceSet.BuiltIn.Questions[0].Id;
        var file = new ReferenceFile("mine", "1", features: [new FeatureEntry("my.feature", "mine", question: builtIn)]);
        Assert.Empty(ReferenceCheck.Run(file));
        Assert.Equal("reference.unknown-id", Assert.Single(ReferenceCheck.Run(file, ReferenceSet.Empty)).Rule);
    }

    /// <summary>Two dates that meet are in order, whichever is named first; two that do not must be in the order of their members.</summary>
    [Theory]
    [InlineData("1950", "1950", true)]
    [InlineData("1950", "1950-01-01", true)]
    [InlineData("1950-12-31", "1950", true)]
    [InlineData("1951-01-01", "1950", false)]
    [InlineData("195X", "1950", true)]
    [InlineData("1960", "195X", false)]
    [InlineData("1960", "195X/..", true)]
    [InlineData("../1960", "1940", true)]
    public void Run_TwoDates_AreInOrderWhereTheyMeet(string first, string second, bool ordered)
    {
        (EdtfDate one, EdtfDate two) = (EdtfDate.Parse(first), EdtfDate.Parse(second));
        ReferenceFile[] files =
        [
            new("a", "1", [new FeatureEntry("f", "f", introduced: one, common: two)]),
            new("a", "1", [new FeatureEntry("f", "f", introduced: one, fading: two)]),
            new("a", "1", [new FeatureEntry("f", "f", introduced: one, gone: two)]),
            new("a", "1", [new FeatureEntry("f", "f", common: one, fading: two)]),
            new("a", "1", [new FeatureEntry("f", "f", common: one, gone: two)]),
            new("a", "1", [new FeatureEntry("f", "f", fading: one, gone: two)]),
            new("a", "1", makers: [new MakerEntry("m", "m", one, two)]),
            new("a", "1", makers: [new MakerEntry("m", "m", forms: [new MakerDetail("f"), new MakerDetail("f", one, two)])]),
            new("a", "1", makers: [new MakerEntry("m", "m", addresses: [new MakerDetail("f", one, two)])]),
            new("a", "1", marks: [new MarkEntry("k", "k", from: one, until: two)]),
        ];
        Assert.Equal(
            ordered ? [] : [".common", ".fading", ".gone", ".fading", ".gone", ".gone", ".until", ".forms[1].until", ".addresses[0].until", ".until"],
            OutOfOrder(files).Select(f => f.Path));
        Assert.All(OutOfOrder(files), finding =>
        {
            Assert.Equal((first, second), (finding.Reason["earlier"], finding.Reason["later"]));
            Assert.EndsWith("." + finding.Reason["second"], finding.Path, StringComparison.Ordinal);
        });
    }

    private static IEnumerable<ReferenceFinding> OutOfOrder(ReferenceFile[] files)
        => files.SelectMany(file => ReferenceCheck.Run(file, ReferenceSet.Empty)).Where(f => f.Rule == "reference.order");

    [Fact]
    public void Run_OrderBroken_NamesBothDates()
    {
        ReferenceFinding finding = Assert.Single(ReferenceCheck.Run(
            new ReferenceFile("a", "1", [new FeatureEntry("f", "f", introduced: EdtfDate.Parse("1960"), fading: EdtfDate.Parse("1950"), gone: EdtfDate.Parse("1955"))]), ReferenceSet.Empty));
        Assert.Equal("The date \"fading\", 1950, lies before \"introduced\", 1960.", ReasonText.Of(finding.Reason));
        Assert.Equal((ReferenceKind.Feature, "f", null, null), (finding.Kind, finding.Id, finding.File, finding.Line));
    }

    [Fact]
    public void Run_IdsThatNothingHas_AreNamedWithTheirKind()
    {
        var file = new ReferenceFile(
            "a",
            "1",
            [new FeatureEntry("f", "f", question: "q", patents: ["US utility 1"])],
            adverts: [new AdvertEntry("a", EdtfDate.Parse("1950"), feature: "g", maker: "m")],
            marks: [new MarkEntry("k", "k", maker: "m")]);
        Assert.Equal(
            [(".question", "question", "q"), (".patents[0]", "patent", "US utility 1"), (".feature", "feature", "g"), (".maker", "maker", "m"), (".maker", "maker", "m")],
            ReferenceCheck.Run(file, ReferenceSet.Empty).Select(f => (f.Path, f.Reason["kind"], f.Reason["id"])));
    }

    [Fact]
    public void Run_OneIdTwice_IsFoundInItsKindAlone()
    {
        FeatureEntry feature = new("a", "a");
        Assert.Empty(ReferenceCheck.Run(new ReferenceFile("a", "1", [feature], makers: [new MakerEntry("a", "a")]), ReferenceSet.Empty));
        ReferenceFinding finding = Assert.Single(ReferenceCheck.Run(new ReferenceFile("a", "1", [feature, feature]), ReferenceSet.Empty));
        Assert.Equal(("reference.duplicate-id", ".id", "feature", "a"), (finding.Rule, finding.Path, finding.Reason["kind"], finding.Reason["id"]));
    }

    // 11 July 1961 is a Tuesday, on which US patents issue (Official Gazette); 12 July is not. A trade mark is no patent, and a year is no day.
    [Theory]
    [InlineData("US utility 2999999", "1961-07-12", "reference.issue-day")]
    [InlineData("US utility 2999999", "1961-07-11", null)]
    [InlineData("US utility 2999999", "1961", null)]
    [InlineData("US design 190000", "1961-03-29", "reference.issue-day")]
    [InlineData("US trade-mark 1000", "1873-06-11", null)]
    [InlineData("XX utility 2999999", "1961-07-12", null)]
    public void Run_IssueDay_MustBeATuesdayOfAPatentOfTheUnitedStates(string id, string issued, string? rule)
    {
        var file = new ReferenceFile("a", "1", patents: [new PatentEntry(id, issued: EdtfDate.Parse(issued))]);
        Assert.Equal(rule is null ? [] : [(rule, ".issued")], ReferenceCheck.Run(file, ReferenceSet.Empty).Select(f => (f.Rule, f.Path)));
    }

    // Outside the United States numbers are mostly of applications: one of 1910 is looked for in the three years before its grant, or from its filing on.
    [Theory]
    [InlineData(null, "1910", true)]
    [InlineData(null, "1913", true)]
    [InlineData(null, "1914-01-02", false)]
    [InlineData(null, "1909", false)]
    [InlineData("1910-05", "1920", true)]
    [InlineData("1911-05", "1912", false)]
    public void Run_NumberOfAnotherOffice_IsLookedForFromItsFilingToItsGrant(string? filed, string issued, bool fits)
    {
        RegisterSet registers = RegisterSet.BuiltIn.With(
            new Register("XX", "patent", [new RegisterRow(9001, 20000, DateWindow.InYear(1910), RowOrigin.Source, "Invented.")]));
        var file = new ReferenceFile("a", "1", patents: [new PatentEntry("XX patent 10000", filed is null ? null : EdtfDate.Parse(filed), EdtfDate.Parse(issued))]);
        IReadOnlyList<ReferenceFinding> findings = ReferenceCheck.Run(file, ReferenceSet.Empty, registers);
        Assert.Equal(fits ? [] : [("reference.number-year", "10000", issued)], findings.Select(f => (f.Rule, f.Reason["number"], f.Reason["issued"])));
        Assert.Equal(findings, ReferenceCheck.Run(ReferenceSet.Empty.With(file), registers));
    }

    [Theory]
    [InlineData("1950", "1949", false)]
    [InlineData("1950", "1950", true)]
    [InlineData("1950", "1951", true)]
    public void Run_PatentOfAFeature_IsIssuedBeforeItIsCommon(string issued, string common, bool fits)
    {
        var patent = new PatentEntry("XX patent 1", issued: EdtfDate.Parse(issued));
        var feature = new FeatureEntry("f", "f", common: EdtfDate.Parse(common), patents: ["XX patent 1"]);
        IReadOnlyList<ReferenceFinding> findings = ReferenceCheck.Run(new ReferenceFile("a", "1", [feature], patents: [patent]), ReferenceSet.Empty);
        Assert.Equal(
            fits ? [] : [("reference.patent-after-common", "XX patent 1", issued, common)],
            findings.Select(f => (f.Rule, f.Reason["patent"], f.Reason["issued"], f.Reason["common"])));
        Assert.Empty(ReferenceCheck.Run(new ReferenceFile("a", "1", [feature with { PatentOfWiderClass = true }], patents: [patent]), ReferenceSet.Empty));
    }

    [Fact]
    public void Run_Null_ThrowsWithTheName()
    {
        Assert.Equal("file", Assert.Throws<ArgumentNullException>(() => ReferenceCheck.Run((ReferenceFile)null!)).ParamName);
        Assert.Equal("set", Assert.Throws<ArgumentNullException>(() => ReferenceCheck.Run((ReferenceSet)null!)).ParamName);
    }

    [Fact]
    public void Run_ASet_ChecksEntriesOfEveryKind()
    {
        (EdtfDate late, EdtfDate early) = (EdtfDate.Parse("1960"), EdtfDate.Parse("1950"));
        ReferenceSet set = ReferenceSet.Empty.With(new ReferenceFile(
            "a",
            "1",
            [new FeatureEntry("f", "f", common: late, fading: early)],
            [new QuestionEntry("q", "q")],
            [new PatentEntry("XX patent 1", late, early)],
            [new MakerEntry("m", "m", late, early)],
            [new AdvertEntry("a", early, maker: "none")],
            [new MarkEntry("k", "k", from: late, until: early)]));
        Assert.Equal([ReferenceKind.Feature, ReferenceKind.Patent, ReferenceKind.Maker, ReferenceKind.Advert, ReferenceKind.Mark], ReferenceCheck.Run(set).Select(f => f.Kind));
    }

    private static IReadOnlyList<ReferenceFinding> Run(string sound, string broken)
    {
        string json = ReferenceFileTest.Whole.Replace("\r", "", StringComparison.Ordinal);
        Assert.Empty(ReferenceCheck.Run(ReferenceFile.Read(json, "quay.json").OrThrow()));
        Assert.Contains(sound, json, StringComparison.Ordinal);
        return ReferenceCheck.Run(ReferenceFile.Read(json.Replace(sound, broken, StringComparison.Ordinal), "quay.json").OrThrow());
    }
}
