namespace Terminus.Tests.Reference;

public class ReferenceSetTest
{
    private static readonly ReferenceFile Lower = ReferenceFile.Read(ReferenceFileTest.Whole).OrThrow();

    private static readonly ReferenceFile Upper = new(
        "desk notes",
        "7",
        features: [new FeatureEntry("cuff.tumbler", "tumbler back, corrected", question: "cuff.closing"), new FeatureEntry("cuff.new", "new one")],
        makers: [new MakerEntry("larkfield", "Larkfield", source: "a letter")]);

    [Fact]
    public void With_LaterLayer_ReplacesByKindAndIdAndSaysSo()
    {
        ReferenceSet set = ReferenceSet.Empty.With(Lower).With(Upper);
        Assert.Equal(["quay house 3", "desk notes 7"], set.Layers.Select(l => l.ToString()));
        Assert.Equal("tumbler back, corrected", set.Feature("cuff.tumbler")!.Name);
        Assert.Equal(["cuff.tumbler", "cuff.new"], set.Features.Select(f => f.Id));
        Assert.Equal(
            ["Feature cuff.tumbler desk notes", "Maker larkfield desk notes"],
            set.Replacements.Select(r => $"{r.Kind} {r.Id} {r.Layer.Name}"));
        Assert.Same(Lower.Features[0], set.Replacements[0].Replaced);
        Assert.Same(Upper.Features[0], set.Replacements[0].By);
    }

    [Fact]
    public void With_LeavesTheLowerSetAsItWas()
    {
        ReferenceSet lower = ReferenceSet.Empty.With(Lower);
        lower.With(Upper);
        Assert.Equal("tumbler back", lower.Feature("cuff.tumbler")!.Name);
        Assert.Empty(lower.Replacements);
    }

    [Fact]
    public void LookUps_FindEachKindAndNullForTheRest()
    {
        ReferenceSet set = ReferenceSet.Empty.With(Lower);
        Assert.NotNull(set.Question("cuff.closing"));
        Assert.NotNull(set.Patent("US utility 2999999"));
        Assert.NotNull(set.Maker("larkfield"));
        Assert.NotNull(set.Advert("ad-1"));
        Assert.NotNull(set.Mark("lark"));
        Assert.Null(set.Feature("CUFF.TUMBLER"));
        Assert.Null(set.Feature(null));
        Assert.Equal("cuff.tumbler", Assert.Single(set.FeaturesOfPatent("US utility 2999999")).Id);
        Assert.Equal("cuff.tumbler", Assert.Single(set.Answers("cuff.closing")).Id);
        Assert.Empty(set.Answers("no such question"));
    }

    [Fact]
    public void QuestionAppliesTo_ItsObjectsAndPiecesThatNameNone()
    {
        QuestionEntry question = Lower.Questions[0];
        Assert.True(question.AppliesTo("Cuff fastening"));
        Assert.True(question.AppliesTo(null));
        Assert.False(question.AppliesTo("brooch"));
    }

    [Fact]
    public void With_OneIdTwiceInALayer_TheFirstCounts()
    {
        ReferenceSet set = ReferenceSet.Empty.With(new ReferenceFile("a", "1", makers: [new MakerEntry("m", "first"), new MakerEntry("n", "n"), new MakerEntry("m", "second")]));
        Assert.Equal(["first", "n"], set.Makers.Select(m => m.Name));
        Assert.Empty(set.Replacements);
        set = set.With(new ReferenceFile("b", "1", makers: [new MakerEntry("m", "third"), new MakerEntry("m", "fourth")]));
        Assert.Equal(["third", "n"], set.Makers.Select(m => m.Name));
        Assert.Equal("first", ((MakerEntry)Assert.Single(set.Replacements).Replaced).Name);
    }

    [Fact]
    public void With_LayersOverEachOther_KeepEveryReplacementInItsOrder()
    {
        ReferenceSet set = ReferenceSet.Empty.With(Lower).With(Upper).With(new ReferenceFile("third", "1", makers: [new MakerEntry("larkfield", "L")]));
        Assert.Equal(["desk notes", "desk notes", "third"], set.Replacements.Select(r => r.Layer.Name));
        Assert.Equal("a letter", set.Replacements[2].Replaced.Source);
    }

    [Fact]
    public void LookUps_OfModels_GiveTheirDatedAdverts()
    {
        ReferenceSet set = ReferenceSet.Empty.With(new ReferenceFile(
            "a", "1", adverts: [new AdvertEntry("1", EdtfDate.Parse("1950"), model: "A"), new AdvertEntry("2", model: "A"), new AdvertEntry("3", EdtfDate.Parse("1951")), new AdvertEntry("4", EdtfDate.Parse("1952"), model: "A")]));
        Assert.Equal(["1", "4"], set.AdvertsOfModel("A").Select(a => a.Id));
        Assert.Empty(set.AdvertsOfModel("a"));
    }

    [Fact]
    public void LookUps_OfPatentsAndQuestions_GiveEveryFeature()
    {
        ReferenceSet set = ReferenceSet.Empty.With(new ReferenceFile(
            "a", "1", [new FeatureEntry("f", "f", patents: ["US utility 1", "US utility 2"], question: "q"), new FeatureEntry("g", "g", patents: ["US utility 2"], question: "q"), new FeatureEntry("h", "h")]));
        Assert.Equal(["f"], set.FeaturesOfPatent("US utility 1").Select(f => f.Id));
        Assert.Equal(["f", "g"], set.FeaturesOfPatent("US utility 2").Select(f => f.Id));
        Assert.Equal(["f", "g"], set.Answers("q").Select(f => f.Id));
        Assert.Equal("patentId", Assert.Throws<ArgumentNullException>(() => set.FeaturesOfPatent(null!)).ParamName);
        Assert.Equal("questionId", Assert.Throws<ArgumentNullException>(() => set.Answers(null!)).ParamName);
        Assert.Equal("file", Assert.Throws<ArgumentNullException>(() => set.With(null!)).ParamName);
    }

    [Fact]
    public void QuestionAppliesTo_WithoutObjects_IsAll() => Assert.True(new QuestionEntry("q", "q").AppliesTo("brooch"));
}
