using System.Text;
using Terminus.Fuzz.Targets;

namespace Terminus.Tests.Fuzzing;

/// <summary>Pieces with thousands of entries of one kind, more than a fuzzer gets to: what they cost grows as they do.</summary>
public sealed class LargePieceTest
{
    private const int Entries = 3000;

    [Theory]
    [InlineData("records", """{"date":"19YY","what":"note #"}""")]
    [InlineData("features", """{"feature":"f1","part":"p#"}""")]
    [InlineData("features", """{"feature":"unknown.#"}""")]
    [InlineData("subjects", """{"subject":"sub.jet","part":"p#"}""")]
    [InlineData("makers", """{"maker":"m1","part":"p#","form":"L. & D."}""")]
    [InlineData("marks", """{"text":"PAT. NOV. 10, 18YY","part":"p#"}""")]
    [InlineData("marks", """{"text":"PAT. 2,4#"}""")]
    [InlineData("marks", """{"patent":"US utility 2999999","part":"p#"}""")]
    [InlineData("inscriptions", """{"date":"19YY","text":"to #","of":"presentation"}""")]
    [InlineData("adverts", """{"date":"19YY","model":"Heron","what":"p. #"}""")]
    [InlineData("adverts", """{"date":"19YY","model":"model #"}""")]
    [InlineData("opinions", """{"windows":[{"notBefore":"19YY","confidence":0.5}],"by":"colleague #","restsOn":["f1"]}""")]
    public void EntriesInThousands_KeepTheLawsAndTheLimits(string list, string entry)
    {
        IEnumerable<string> entries = Enumerable.Range(0, Entries).Select(i => entry.Replace("#", $"{i:0000}", StringComparison.Ordinal).Replace("YY", $"{i % 100:00}", StringComparison.Ordinal));
        byte[] piece = Encoding.UTF8.GetBytes($$"""{"id":"A","{{list}}":[{{string.Join(",", entries)}}]}""");

        Allocation allocation = new PieceTarget().Check(piece);

        Assert.Equal(piece.Length, allocation.InputLength);
    }
}
