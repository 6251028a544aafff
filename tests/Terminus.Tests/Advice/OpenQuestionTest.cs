using FsCheck.Xunit;

namespace Terminus.Tests.Advice;

public class OpenQuestionTest
{
    private static readonly NodaTime.LocalDate AsOf = new(2026, 11, 25);

    private static readonly OpenQuestion[] All = [.. OpenQuestions.Of(PieceDating.Of(new Piece("invented"), AsOf))];

    [Property(Arbitrary = [typeof(Gens)])]
    public bool AtEveryDayTheAnswersSumToOne(int anyDay)
    {
        int day = Day(anyDay);
        return All.All(q => q.Probabilities(day) is var p && p.Length == q.Answers.Count && p.All(x => x >= 0) && Math.Abs(p.Sum() - 1) < 1e-12);
    }

    [Property(Arbitrary = [typeof(Gens)])]
    public bool NoProbabilityChangesBetweenTheBreaks(int anyDay)
    {
        int day = Day(anyDay);
        return All.All(q => q.Breaks.Contains(day + 1) || q.Probabilities(day).SequenceEqual(q.Probabilities(day + 1)));
    }

    [Fact]
    public void EveryBreak_IsWhereAProbabilityMayChange()
    {
        int asOf = DayNumber.Of(AsOf);
        Assert.All(All, q => Assert.All(q.Breaks.Where(b => b > int.MinValue && b < asOf), b => Assert.True(Math.Abs(q.Probabilities(b).Sum() - 1) < 1e-12)));
    }

    [Fact]
    public void Of_PieceWithoutAKind_IsAskedEveryDatedQuestionAndForAPatent()
    {
        Assert.Contains(All, q => q.Id == "brooch.catch");
        Assert.Contains(All, q => q.Id == "cuff.closing");
        Assert.Contains(All, q => q.Id == PatentQuestion.QuestionId);
    }

    [Fact]
    public void Of_AnsweredQuestion_IsNotAskedAgain()
        => Assert.DoesNotContain(
            OpenQuestions.Of(PieceDating.Of(new Piece("invented", objectKind: "brooch", features: [new PieceFeature("brooch.c_catch", "catch")]), AsOf)),
            q => q.Id == "brooch.catch");

    [Fact]
    public void Of_AbsentFeature_LeavesTheQuestionOpenWithoutThatAnswer()
    {
        var piece = new Piece("invented", objectKind: "brooch", features: [new PieceFeature("brooch.c_catch", "catch", absent: true)]);
        OpenQuestion open = OpenQuestions.Of(PieceDating.Of(piece, AsOf)).Single(q => q.Id == "brooch.catch");
        Assert.DoesNotContain(open.Answers, a => a.Id == "brooch.c_catch");
        Assert.Contains(open.Answers, a => a.Id == "brooch.tube_catch");
    }

    [Fact]
    public void Of_PartThatIsNotOriginal_IsNotAskedAbout()
    {
        var piece = new Piece("invented", objectKind: "brooch", parts: [new PiecePart("catch", original: false)]);
        Assert.DoesNotContain(OpenQuestions.Of(PieceDating.Of(piece, AsOf)), q => q.Id == "brooch.catch");
    }

    [Fact]
    public void Of_PairWithOneMemberAnswered_AsksAboutTheOther()
    {
        var piece = new Piece(
            "invented",
            objectKind: "cuff links",
            parts: [new PiecePart("left link"), new PiecePart("right link")],
            features: [new PieceFeature("cuff.toggle_swivel", "left link")]);
        OpenQuestion open = OpenQuestions.Of(PieceDating.Of(piece, AsOf)).Single(q => q.Id == "cuff.closing");
        Assert.Equal("right link", open.Part);
    }

    [Fact]
    public void Of_MarkedPiece_IsNotAskedForAPatent()
        => Assert.DoesNotContain(
            OpenQuestions.Of(PieceDating.Of(new Piece("invented", marks: [new PieceMark("LARKFIELD")]), AsOf)), q => q.Id == PatentQuestion.QuestionId);

    private static int Day(int any) => DayNumber.Of(1600, 1, 1) + (int)((uint)any % 160000);

    /// <summary>Each kind of entry of a piece, on a part.</summary>
    public static TheoryData<Func<string, Piece>> Mentioning => new()
    {
        part => Pair with { Marks = [new PieceMark("X", part)] },
        part => Pair with { Features = [.. Pair.Features, new PieceFeature("cuff.snap_apart", part, absent: true)] },
        part => Pair with { Subjects = [new PieceSubject("sub.jet", part)] },
        part => Pair with { Inscriptions = [new PieceInscription(EdtfDate.Parse("1960"), part: part)] },
        part => Pair with { Records = [new PieceRecord(EdtfDate.Parse("1960"), part: part)] },
        part => Pair with { Makers = [new PieceMaker("m", part: part)] },
        part => Pair with { Adverts = [new PieceAdvert(EdtfDate.Parse("1960"), part: part)] },
        part => Pair with { Opinions = [new PieceOpinion([], part: part)] },
    };

    private static Piece Pair { get; } = new(
        "invented",
        objectKind: "cuff links",
        parts: [new PiecePart("left link"), new PiecePart("right link")],
        features: [new PieceFeature("cuff.toggle_swivel", "left link")]);

    [Theory]
    [MemberData(nameof(Mentioning))]
    public void Of_MemberOfAPairThatSomethingSpeaksOf_IsNotAskedAbout(Func<string, Piece> with)
    {
        Assert.DoesNotContain(OpenQuestions.Of(PieceDating.Of(with("right link"), AsOf)), q => q.Id == "cuff.closing");
        Assert.Contains(OpenQuestions.Of(PieceDating.Of(with("box"), AsOf)), q => q.Id == "cuff.closing" && q.Part == "right link");
    }

    [Fact]
    public void Of_PairWithAnAnswerForTheWhole_IsNotAskedAgain()
        => Assert.DoesNotContain(
            OpenQuestions.Of(PieceDating.Of(Pair with { Features = [.. Pair.Features, new PieceFeature("cuff.toggle_swivel")] }, AsOf)), q => q.Id == "cuff.closing");

    [Fact]
    public void Of_PairWhoseOtherMemberIsNotOriginal_IsNotAskedAboutIt()
        => Assert.DoesNotContain(
            OpenQuestions.Of(PieceDating.Of(Pair with { Parts = [new PiecePart("left link"), new PiecePart("right link", false)] }, AsOf)), q => q.Id == "cuff.closing");
}
