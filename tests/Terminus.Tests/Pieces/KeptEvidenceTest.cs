using FsCheck.Xunit;

namespace Terminus.Tests.Pieces;

[Properties(Arbitrary = [typeof(Gens)])]
public class KeptEvidenceTest
{
    private static readonly FeatureEntry Snap = InventedReference.Set.Feature("t.snap")!;

    private static KeptEvidence Kept => KeptEvidence.Of(InventedReference.Set, Assumptions.House);

    [Fact]
    public void Feature_OfOneEntryAndPartThatComesAgain_IsOneItem()
    {
        Kept.Feature(Snap, "pin", InventedReference.Set);
        Assert.Same(Kept.Feature(Snap, "pin", InventedReference.Set), Kept.Feature(Snap, "pin", InventedReference.Set));
        Assert.Equal("box", Kept.Feature(Snap, "box", InventedReference.Set).Part);
        Assert.Null(Kept.Feature(Snap, null, InventedReference.Set).Part);
    }

    [Fact]
    public void Entry_AsFeatureSubjectAndAbsence_IsThreeItems()
    {
        FeatureEntry kite = InventedReference.Set.Feature("sub.kite")!;
        Assert.IsType<FeatureSeen>(Kept.Feature(kite, null, InventedReference.Set));
        Assert.IsType<SubjectShown>(Kept.Subject(kite, null));
        Assert.Empty(Kept.Absent(kite, null).StatedWindows());
    }

    [Fact]
    public void Of_OtherHouseDefaults_KeepsApart()
    {
        Evidence usual = Kept.Feature(Snap, null, InventedReference.Set);
        Evidence other = KeptEvidence.Of(InventedReference.Set, Assumptions.House with { CircaYears = 9 }).Feature(Snap, null, InventedReference.Set);
        Assert.NotSame(usual, other);
    }

    [Fact]
    public void Of_TwoHouseDefaultsInTurn_KeepsBoth_AndOfManyTheLast()
    {
        ReferenceSet reference = ReferenceSet.Empty.With(ReferenceFile.Read(InventedReference.Json).OrThrow());
        KeptEvidence usual = KeptEvidence.Of(reference, Assumptions.House);
        KeptEvidence other = KeptEvidence.Of(reference, Assumptions.House with { CircaYears = 9 });
        Assert.Same(usual, KeptEvidence.Of(reference, Assumptions.House));
        Assert.Same(other, KeptEvidence.Of(reference, Assumptions.House with { CircaYears = 9 }));
        for (int years = 10; years < 20; years++)
        {
            KeptEvidence.Of(reference, Assumptions.House with { CircaYears = years });
        }

        Assert.NotSame(usual, KeptEvidence.Of(reference, Assumptions.House));
    }

    [Fact]
    public void Stamp_ShortTextThatComesAgain_IsNotReadAgain_AndALongOneEachTime()
    {
        Kept.Stamp("PAT. PEND.", "back", InventedReference.Set);
        Assert.Same(Kept.Stamp("PAT. PEND.", "back", InventedReference.Set), Kept.Stamp("PAT. PEND.", "back", InventedReference.Set));
        Assert.NotSame(Kept.Stamp("PAT. PEND.", "back", InventedReference.Set), Kept.Stamp("PAT. PEND.", "pin", InventedReference.Set));
        string letter = new('A', 100);
        Assert.NotSame(Kept.Stamp(letter, null, InventedReference.Set), Kept.Stamp(letter, null, InventedReference.Set));
    }

    [Theory]
    [InlineData(80, true)]
    [InlineData(81, false)]
    public void Stamp_UpToEightyCharacters_IsKept(int length, bool kept)
    {
        StampEvidence[] asked = [.. Enumerable.Range(0, 4).Select(_ => Kept.Stamp(new string('B', length), null, InventedReference.Set))];
        Assert.Equal(kept, ReferenceEquals(asked[2], asked[3]));
    }

    [Property]
    public void WhatIsKeptChangesNoAnswer(Piece piece)
    {
        // A reference set of its own has nothing kept yet.
        ReferenceSet fresh = ReferenceSet.Empty.With(ReferenceFile.Read(InventedReference.Json).OrThrow());
        PieceDating first = PieceDating.Of(piece, InventedReference.Today, fresh);
        PieceDating.Of(piece, InventedReference.Today, fresh);
        PieceDating again = PieceDating.Of(piece, InventedReference.Today, fresh);
        PieceDating usual = PieceDating.Of(piece, InventedReference.Today, InventedReference.Set);
        Assert.Equal(first.Dating.Evidence, again.Dating.Evidence);
        Assert.Equal(first.Dating.Evidence, usual.Dating.Evidence);
        Assert.Equal(ResultDocument.ToJson(first), ResultDocument.ToJson(again));
        Assert.Equal(ResultDocument.ToJson(first), ResultDocument.ToJson(usual));
    }
}
