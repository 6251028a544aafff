using FsCheck.Xunit;

namespace Terminus.Tests.Pieces;

[Properties(Arbitrary = [typeof(Gens)])]
public class ItemsByPartTest
{
    [Property]
    public void The_whole_and_what_is_left_out_are_all_items_once(Piece piece)
    {
        (ItemsByPart items, IReadOnlyList<Evidence> all) = Of(piece);
        HashSet<string> others = [.. piece.Parts.Where(p => !p.Original).Select(p => p.Part)];
        Assert.Equal(all.Where(i => i.Part is null || !others.Contains(i.Part)), items.Whole);
        Assert.Equal(all.Where(i => i.Part is not null && others.Contains(i.Part)), items.LeftOut);
        Assert.All(items.Parts, part => Assert.Equal(!others.Contains(part), items.IsOriginal(part)));
        Assert.True(items.IsOriginal(null));
    }

    [Property]
    public void A_part_has_its_items_and_those_of_no_part(Piece piece)
    {
        (ItemsByPart items, IReadOnlyList<Evidence> all) = Of(piece);
        foreach (string part in items.Parts)
        {
            Assert.Equal(all.Where(i => i.Part is null || i.Part == part), items.OfPart(part));
        }
    }

    [Property]
    public void Parts_are_those_with_evidence_in_the_order_described_and_then_met(Piece piece)
    {
        (ItemsByPart items, IReadOnlyList<Evidence> all) = Of(piece);
        HashSet<string> shown = [.. all.Select(i => i.Part).OfType<string>()];
        Assert.Equal(piece.Parts.Select(p => p.Part).Where(shown.Contains).Concat(all.Select(i => i.Part).OfType<string>()).Distinct(), items.Parts);
    }

    [Fact]
    public void Parts_MoreThanAListIsSearchedFor_AreEachNamedOnce()
    {
        string[] names = [.. Enumerable.Range(0, 40).Select(i => "part " + (i % 20))];
        var items = new ItemsByPart([new PiecePart("part 19"), new PiecePart("no such")], ValueList.Of<Evidence>(names.Select(n => new MarkInUse("w", part: n))));
        Assert.Equal(["part 19", .. names.Take(19)], items.Parts);
        Assert.Equal(2, items.OfPart("part 7").Count);
    }

    private static (ItemsByPart Items, IReadOnlyList<Evidence> All) Of(Piece piece)
    {
        ValueList<Evidence> all = ValueList.Of(PieceEvidence.Of(piece, InventedReference.Set, Assumptions.House).Items);
        return (new ItemsByPart(piece.Parts, all), all);
    }
}
