namespace Terminus.Tests.Reference;

public class BuiltInReferenceTest
{
    private static readonly ReferenceSet BuiltIn = ReferenceSet.BuiltIn;

    [Fact]
    public void Documents_AreSoundAndOneLayer()
    {
        string[] names = [.. BuiltInReference.Documents().Select(d => d.Name)];
        Assert.Contains("reference/patents.json", names);
        Assert.Equal(names.Order(StringComparer.Ordinal), names);
        Assert.Equal(BuiltIn.Features, BuiltInReference.Load().Features);
        Assert.All(BuiltInReference.Documents(), d =>
        {
            DocumentResult<ReferenceFile> read = ReferenceFile.Read(d.Utf8, d.Name);
            Assert.Empty(read.Problems);
            Assert.Equal((BuiltInReference.Name, BuiltInReference.Version), (read.Value!.Name, read.Value.Version));
            Assert.Equal(read.Value, ReferenceFile.Read(read.Value.ToJson()).OrThrow());
        });
        Assert.Equal("built-in 1.1.0", Assert.Single(BuiltIn.Layers).ToString());
        Assert.Empty(BuiltIn.Replacements);
    }

    [Fact]
    public void Features_AreThe169ThatAreNotMarkingPractice_EachWithBasisSourceAndOrigin()
    {
        Assert.Equal(169, BuiltIn.Features.Count);
        Assert.All(BuiltIn.Features, f => Assert.False(string.IsNullOrWhiteSpace(f.Source), f.Id));
        Assert.DoesNotContain(BuiltIn.Features, f => f.Id.StartsWith("mk.", StringComparison.Ordinal));
        Assert.DoesNotContain(BuiltIn.Features, f => f.Origin == ReferenceOrigin.Invented);
    }

    [Fact]
    public void RecalledFeatures_HaveApproximateDatesWhereNoSourceGivesThem()
    {
        Assert.All(
            BuiltIn.Features.Where(f => f.Origin == ReferenceOrigin.Memory && !f.Source!.Contains(';', StringComparison.Ordinal)),
            f => Assert.All(
                new[] { f.Introduced, f.Common, f.Fading, f.Gone }.OfType<EdtfDate>().Where(d => !d.Text.EndsWith("XX", StringComparison.Ordinal)),
                d => Assert.True(d.IsApproximate, f.Id + " " + d)));
        Assert.All(BuiltIn.Features.Where(f => f.Origin == ReferenceOrigin.Memory), f => Assert.Equal(EvidenceGrade.Low, f.GradeCounted));
    }

    [Fact]
    public void Questions_HaveAnswersAndEachAnswerOneQuestion()
    {
        Assert.All(BuiltIn.Questions, q => Assert.NotEmpty(BuiltIn.Answers(q.Id)));
        Assert.Equal("brooch.catch", BuiltIn.Feature("brooch.c_catch")!.Question);
        Assert.Equal("brooch.catch", BuiltIn.Feature("brooch.rotating_safety")!.Question);
        Assert.NotEqual("brooch.catch", BuiltIn.Feature("brooch.ball_hinge")!.Question);
    }

    [Fact]
    public void Feature_OfAPatentThatNamesIt_IsFoundByThePatent()
        => Assert.Equal("cuff.toggle_angled_ends", Assert.Single(BuiltIn.FeaturesOfPatent("US utility 2472958")).Id);

    // Common practice, no source: what dealers and collectors say of these things, which the shipped windows must be compatible with.
    [Theory]
    [InlineData("cuff.snap_apart", 1920, 1939)] // snap-apart fastenings belong to the 1920s and 1930s
    [InlineData("cuff.toggle_swivel", 1940, 1969)] // swivel toggles dominate from the 1940s
    [InlineData("cuff.bean_back", 1900, 1909)] // bean backs grow common in the 1900s
    [InlineData("cuff.pivot_button_back", 1920, 1929)] // lever backs are common in the 1920s
    [InlineData("ear.lever_back", 1920, 1929)] // the same said of earrings
    [InlineData("brooch.c_catch", 1860, 1909)] // plain C-shaped catches are usual before 1910
    public void CommonPractice_Usage_LiesInTheUsualWindowOfTheFeature(string id, int from, int until)
    {
        DateWindow usual = Usual(BuiltIn.Feature(id)!);
        Assert.True(usual.Contains(DateWindow.BetweenYears(from, until)), id + " " + usual);
    }

    // Common practice, no source: wrap-around mesh belongs to the 1960s and 1970s. The shipped row is recalled, of low grade, and ends
    // about 1970, so it meets that window but does not hold all of it.
    [Fact]
    public void CommonPractice_WrapMesh_MeetsTheUsualWindow()
        => Assert.True(Usual(BuiltIn.Feature("cuff.wrap_mesh")!).Meets(DateWindow.BetweenYears(1960, 1979)));

    // Common practice, no source: toggles were patented in the second half of the 1930s.
    [Fact]
    public void CommonPractice_ToggleOf1936_IsNotBeforeItsIntroduction()
    {
        FeatureEntry toggle = BuiltIn.Feature("cuff.toggle_swivel")!;
        DateWindow patented = BuiltIn.Patent(toggle.Patents[0])!.Issued!.Window!.Value;
        Assert.True(DateWindow.BetweenYears(1935, 1939).Contains(patented));
        Assert.True(From(toggle).Contains(patented));
    }

    // Common practice, no source: an angled-end bar belongs to 1949 or later.
    [Fact]
    public void CommonPractice_AngledEnds_AreFirmlyOf1949OrLater()
    {
        StatedWindow widest = Evidence("cuff.toggle_angled_ends")[0];
        Assert.Equal("1949-01-01/.. (0.92)", widest.ToString());
        Assert.True(widest.Confidence >= Assumptions.House.FirmAt);
    }

    [Fact]
    public void SnapApart_RestsOnUsageAlone()
        => Assert.All(Evidence("cuff.snap_apart"), w => Assert.True(w.Confidence < Assumptions.House.FirmAt));

    [Fact]
    public void With_UsersFile_ReplacesABuiltInFeature()
    {
        var mine = new ReferenceFile("mine", "2", features: [new FeatureEntry("cuff.snap_apart", "snap-apart", introduced: EdtfDate.InYear(1921))]);
        ReferenceSet set = BuiltIn.With(mine);
        Assert.Equal("1921", set.Feature("cuff.snap_apart")!.Introduced!.Text);
        Assert.Equal(BuiltIn.Features.Count, set.Features.Count);
        ReferenceReplacement replaced = Assert.Single(set.Replacements);
        Assert.Equal((ReferenceKind.Feature, "cuff.snap_apart", "mine 2"), (replaced.Kind, replaced.Id, replaced.Layer.ToString()));
    }

    private static IReadOnlyList<StatedWindow> Evidence(string id)
    {
        FeatureEntry feature = BuiltIn.Feature(id)!;
        return new FeatureSeen(
            id, Date(feature.Introduced), Date(feature.Common), Date(feature.Fading), Date(feature.Gone), feature.CountsAs, feature.GradeCounted)
            .StatedWindows();
    }

    private static EvidenceDate? Date(EdtfDate? date) => date is null ? null : EvidenceDate.From(date);

    private static DateWindow From(FeatureEntry feature)
        => DateWindow.OfDays(EvidenceDate.From(feature.Introduced!).FirstDay(Assumptions.House), DayNumber.Open);

    /// <summary>From growing common to fading, or to being gone where no fading is known, as evidence would take it.</summary>
    private static DateWindow Usual(FeatureEntry feature) => DateWindow.OfDays(
        Date(feature.Common)?.FirstDay(Assumptions.House) ?? DayNumber.Open,
        Date(feature.Fading ?? feature.Gone)?.LastDay(Assumptions.House) ?? DayNumber.Open);
}
