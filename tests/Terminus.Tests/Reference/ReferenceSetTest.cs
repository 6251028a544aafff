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
}
