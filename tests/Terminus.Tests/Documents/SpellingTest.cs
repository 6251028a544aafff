namespace Terminus.Tests.Documents;

public class SpellingTest
{
    [Theory]
    [InlineData("titel", "title")]
    [InlineData("Title", "title")]
    [InlineData("feature", "features")]
    [InlineData("inscription", "inscriptions")]
    [InlineData("xy", null)]
    [InlineData("colour", null)]
    [InlineData("", null)]
    public void Nearest_Word_IsFoundWithinAThirdOfItsLetters(string word, string? nearest)
        => Assert.Equal(nearest, Spelling.Nearest(word, ["title", "features", "inscriptions", "marks"]));

    [Fact]
    public void Nearest_VeryLongWord_IsNotCompared()
        => Assert.Null(Spelling.Nearest(new string('a', 10_000), ["a"]));

    // Counted by hand: a swap of two neighbours is one change.
    [Theory]
    [InlineData("inscripiton", "inscriptions")]
    [InlineData("nscriptons", "inscriptions")]
    [InlineData("abcriptions", "inscriptions")]
    [InlineData("abcdeptions", null)]
    [InlineData("inscriabcde", null)]
    [InlineData("eltit", null)]
    public void Nearest_ChangesUpToAThird_AreFound(string word, string? nearest)
        => Assert.Equal(nearest, Spelling.Nearest(word, ["title", "features", "inscriptions", "marks"]));
}
