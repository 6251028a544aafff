using FsCheck.Xunit;

namespace Terminus.Tests.Pieces;

[Properties(Arbitrary = [typeof(Gens)])]
public class SharedCauseTest
{
    private static readonly EvidenceDate Issued = EvidenceDate.Parse("1936-05-05");

    [Fact]
    public void Among_ItemsOfTheirOwn_IsNone()
        => Assert.Equal(SharedCauses.None, Among(Feature("t.snap", "pin"), Feature("t.until1954"), new PatentIssued(Issued, part: "pin"), new KnownBy(Issued)));

    [Fact]
    public void Among_IdenticalItems_IsEverything()
        => Assert.Equal(SharedCauses.Everything, Among(new KnownBy(Issued), new KnownBy(Issued)));

    [Fact]
    public void Among_TwoMarksOnOnePart_IsTheirCarrier()
    {
        Assert.Equal(SharedCauses.Carrier, Among(new PatentIssued(Issued, part: "pin"), new PatentIssued(Issued, number: "1", part: "pin")));
        Assert.Equal(SharedCauses.None, Among(new PatentIssued(Issued, part: "pin"), new PatentIssued(Issued, part: "box")));
        Assert.Equal(SharedCauses.None, Among(new PatentIssued(Issued, part: "pin"), new PatentPending(Issued, part: "pin")));
    }

    [Fact]
    public void Among_FeatureAndTheMarkOfItsPatent_IsThePatent()
    {
        var mark = new PatentIssued(Issued, part: "pin", entries: ["US utility 2040000"]);
        Assert.Equal(SharedCauses.Patent, Among(mark, Feature("t.catch", "pin")));
        Assert.Equal(SharedCauses.Patent, Among(Feature("t.catch"), mark));
        Assert.Equal(SharedCauses.None, Among(mark, Feature("t.catch", "box")));
    }

    [Fact]
    public void Among_OneEntryOnTwoParts_IsTheEntry()
    {
        Assert.Equal(SharedCauses.Entry, Among(Feature("t.snap", "pin"), Feature("t.snap", "box")));
        Assert.Equal(SharedCauses.Entry, Among(new MakerActive("t.maker", part: "pin"), new MakerActive("t.maker", part: "box")));
        Assert.Equal(SharedCauses.None, Among(new MakerActive("t.maker", Issued), new MakerActive("t.maker")));
    }

    [Fact]
    public void Among_TwoAnswersOnOnePart_IsTheQuestion()
    {
        Assert.Equal(SharedCauses.Question, Among(Feature("t.hook", "pin"), Feature("t.catch", "pin")));
        Assert.Equal(SharedCauses.None, Among(Feature("t.hook", "pin"), Feature("t.catch", "box")));
    }

    [Fact]
    public void Among_OpinionThatRestsOnSomething_IsItsGround()
        => Assert.Equal(SharedCauses.Ground, Among(new Opinion([], restsOn: ["a letter"])));

    [Property]
    public void MergingAmongManyIsMergingAmongFew(Piece piece)
    {
        // More than 16 items are never compared two by two; items that share nothing must not matter.
        ReferenceSet reference = InventedReference.Set;
        ValueList<Evidence> items = ValueList.Of(PieceEvidence.Of(piece, reference, Assumptions.House).Items);
        Evidence[] padding = [.. Enumerable.Range(0, 17).Select(i => new Opinion(DateWindow.InYear(1900 + i), 0.5, "padding " + i))];
        ValueList<Evidence> many = OneCause.Merge(ValueList.Of(items.Concat(padding)), reference, Assumptions.House);
        Assert.Equal(OneCause.Merge(items, reference, Assumptions.House), many.Take(many.Count - padding.Length));
    }

    private static SharedCauses Among(params Evidence[] items) => SharedCause.Among(items, InventedReference.Set);

    private static FeatureSeen Feature(string id, string? part = null) => new(id, Issued, part: part);
}
