namespace Terminus.Tests.Marks;

public sealed class DigitPatternTest
{
    [Theory]
    [InlineData("5", 1, 31, "5")]
    [InlineData("05", 1, 31, "5")]
    [InlineData("45", 1, 31, "")]
    [InlineData("1?", 1, 31, "10 11 12 13 14 15 16 17 18 19")]
    [InlineData("?", 1, 12, "1 2 3 4 5 6 7 8 9")]
    [InlineData("?1", 1, 31, "1 11 21 31")]
    [InlineData("*", 1, 12, "1 2 3 4 5 6 7 8 9 10 11 12")]
    [InlineData("1*", 1, 31, "")]
    [InlineData("18?9", 1500, 2099, "1809 1819 1829 1839 1849 1859 1869 1879 1889 1899")]
    [InlineData("1889", 1500, 2099, "1889")]
    [InlineData("", 0, 99, "")]
    public void Next_FromTheLeast_GivesEveryNumberThatFits(string digits, int least, int most, string expected)
    {
        var pattern = new DigitPattern(digits.AsSpan());
        var found = new List<int>();
        for (int value = pattern.Next(least, most); value >= 0; value = pattern.Next(value + 1, most))
        {
            found.Add(value);
        }

        Assert.Equal(expected, string.Join(' ', found));
    }

    [Theory]
    [InlineData("", 0, false)]
    [InlineData("7", 1, false)]
    [InlineData("1?", 2, true)]
    [InlineData("*", 1, true)]
    [InlineData("1894", 4, false)]
    public void Pattern_OfUpToFourCharacters_KeepsThem(string digits, int length, bool losses)
    {
        var pattern = new DigitPattern(digits.AsSpan());

        Assert.Equal((digits, length, losses, length == 0), (pattern.ToString(), pattern.Length, pattern.HasLosses, pattern.IsEmpty));
    }
}
