using System.Collections;
using System.Globalization;

namespace Terminus.Tests.Pieces;

public class ProblemsByPieceTest
{
    [Fact]
    public void Share_ProblemsOfPieces_StartAtTheirPiece_AndTheRestComesLast()
    {
        Piece first = new("A"), third = new("C");
        List<DocumentResult<Piece>> shared = ProblemsByPiece.Share(
            [first, null, third],
            [new("one", "$[0].marks[1]"), new("two", "$[1]"), new("three", "$[1].id"), new("all", "$"), new("beyond", "$[3].id")]);

        Assert.Equal([first, null, third, null], shared.Select(r => r.Value));
        Assert.Equal(["$.marks[1]", "$ $.id", "", "$ $[3].id"], shared.Select(r => string.Join(' ', r.Problems.Select(p => p.Path))));
    }

    [Fact]
    public void Share_TheTenthAndTheHundredthPiece_AreNotTheFirst()
    {
        List<DocumentResult<Piece>> shared = ProblemsByPiece.Share(new Piece?[101], [new("x", "$[10].id"), new("y", "$[100].id"), new("z", "$[1].id")]);
        Assert.Equal([1, 10, 100], Enumerable.Range(0, 101).Where(i => shared[i].Problems.Count > 0));
    }

    // Counted, not timed: pieces with a problem each, and twice and four times as many.
    [Theory]
    [InlineData(1000)]
    [InlineData(2000)]
    [InlineData(4000)]
    public void Share_ManyPiecesWithProblems_LooksAtEachPieceAndProblemOnce(int count)
    {
        var pieces = new CountedList<Piece?>([.. Enumerable.Range(0, count).Select(i => new Piece(Text(i)))]);
        var problems = new CountedList<DocumentProblem>([.. Enumerable.Range(0, count).Select(i => new DocumentProblem("slip", $"$[{Text(i)}].title"))]);
        List<DocumentResult<Piece>> shared = ProblemsByPiece.Share(pieces, problems);

        Assert.All(shared, r => Assert.Equal("$.title", Assert.Single(r.Problems).Path));
        Assert.Equal((count, count), (pieces.Given, problems.Given));
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A list that counts what it hands out.</summary>
    private sealed class CountedList<T>(T[] items) : IReadOnlyList<T>
    {
        internal int Given { get; private set; }

        public int Count => items.Length;

        public T this[int index]
        {
            get
            {
                Given++;
                return items[index];
            }
        }

        public IEnumerator<T> GetEnumerator() => Enumerable.Range(0, items.Length).Select(i => this[i]).GetEnumerator();

        IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
