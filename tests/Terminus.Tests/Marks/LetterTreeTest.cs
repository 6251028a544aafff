using System.Text;

namespace Terminus.Tests.Marks;

public sealed class LetterTreeTest
{
    private static readonly Lexeme Patent = new("PATENT", WordClass.Word);
    private static readonly Lexeme Pending = new("PENDING", WordClass.Word);

    [Theory]
    [InlineData("PATENT", "PATENT")]
    [InlineData("PAT", "PATENT")]
    [InlineData("P?T", "PATENT")]
    [InlineData("*T", "PATENT")]
    [InlineData("*E*", "PATENT PENDING")]
    [InlineData("P*", "PATENT PENDING")]
    [InlineData("*", "PATENT PENDING")]
    [InlineData("***", "PATENT PENDING")]
    [InlineData("?*?", "PATENT PENDING")]
    [InlineData("P*N*G", "PENDING")]
    [InlineData("*ING*", "PENDING")]
    [InlineData("PEND???", "PENDING")]
    [InlineData("PEND??", "")]
    [InlineData("PATENTS*", "")]
    [InlineData("????????*", "")]
    [InlineData("", "")]
    public void Match_LostLetters_FitsTheFormsThatCanBeMeant(string pattern, string terms)
    {
        var words = new LetterTree();
        words.Add("PAT", Patent);
        words.Add("PATENT", Patent);
        words.Add("PENDING", Pending);
        int visits = 0;

        Assert.Equal(terms.Split(' ', StringSplitOptions.RemoveEmptyEntries), words.Match(pattern.AsSpan(), ref visits).Select(l => l.Term));
        Assert.Equal(pattern.Length, visits);
    }

    [Theory]
    [InlineData("[ ]E ")]
    [InlineData("[ ] ")]
    [InlineData("E[ ]E[ ]E ")]
    [InlineData("?*?*?*?*?* ")]
    [InlineData("???? ")]
    public void Read_ManyWordsWithLostLetters_AllocatesInProportion(string word)
    {
        string text = new StringBuilder().Insert(0, word, Inscription.LongestText / word.Length).ToString();
        Inscription.Read(word);

        long before = GC.GetAllocatedBytesForCurrentThread();
        Inscription.Read(text);

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1024L * text.Length);
    }
}
