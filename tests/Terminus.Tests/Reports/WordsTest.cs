namespace Terminus.Tests.Reports;

public class WordsTest
{
    [Theory]
    [InlineData("CannotTell", "cannot-tell")]
    [InlineData("Yes", "yes")]
    [InlineData("A", "a")]
    [InlineData("", "")]
    [InlineData("ABc", "a-bc")]
    public void Kebab_AName_IsItsWordsInSmallLetters(string name, string words) => Assert.Equal(words, Words.Kebab(name));

    [Fact]
    public void Kebab_AndSpaced_OfEachVerdict_AreItsWords()
    {
        Assert.Equal(["cannot-tell", "yes", "no"], Enum.GetValues<AgeVerdict>().Select(v => Words.Kebab(v)));
        Assert.Equal(["agrees", "too narrow", "contradicted"], Enum.GetValues<ClaimVerdict>().Select(v => Words.Spaced(v)));
    }
}
