namespace Terminus.Tests.Marks;

/// <summary>Characters that a keyboard, a phone or a record puts in place of another, by the names of the Unicode standard.</summary>
public class AlikeCharactersTest
{
    [Theory]
    [InlineData("PAT'D JUNE 4 '89", '\'', "\u2018\u2019\u02BC\u00B4\u2032\u201B\uFF07\u02B9`")] // apostrophes, accents, primes
    [InlineData("PAT. JUNE 4-89", '-', "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\uFE63\uFF0D")] // hyphens, dashes, minus
    [InlineData("PAT. 2.345.678", '.', "\u00B7\u2022\u2027\u2219\uFF0E\u22C5\u02D9\u30FB")] // middle dots, bullets
    [InlineData("PAT. 2,345,678", ',', "\uFF0C\u3001\u201A")]
    [InlineData("PAT. JUNE 4/89", '/', "\uFF0F\u2044\u2215")]
    [InlineData("PAT. 2,345,6?8", '?', "\uFFFD\u25A1\u25A0\u2588")] // replacement character, boxes
    [InlineData("\u271A 123456", '\u271A', "\u271B\u271C\u271D\u2719\u2716\u2720\u2629\u2795")] // crosses
    [InlineData("+ 123456", '+', "\uFF0B")]
    [InlineData("\u25C7 RD", '\u25C7', "\u25CA\u25C6\u2662\u2666\u2B26\u2B25\u2B28")] // lozenges, diamonds
    [InlineData("\u00A9 1958", '\u00A9', "\u24B8\u24D2")]
    [InlineData("\u00AE", '\u00AE', "\u24C7\u24E1")]
    [InlineData("PAT. JUNE 4 & 11 1889", '&', "\uFF06\u204A")]
    [InlineData("PAT. 1,230,456", '0', "\u2070\uFF10")]
    [InlineData("PAT. 1,230,456", '1', "\u00B9\uFF11")]
    [InlineData("PAT. 1,230,456", '2', "\u00B2\uFF12")]
    [InlineData("PAT. 1,230,456", '3', "\u00B3\uFF13")]
    [InlineData("PAT. 1,230,456", '4', "\u2074\uFF14")]
    [InlineData("PAT. 1,230,956", '9', "\u2079\uFF19")]
    [InlineData("PAT. APR. 23RD 1889", 'R', "\uFF32\uFF52\u02B3r")]
    [InlineData("PAT. APR. 23RD 1889", 'D', "\uFF24\uFF44\u1D48\u010E\u0111d")]
    [InlineData("PAT. JUNE 4TH 1889", 'T', "\uFF34\uFF54\u1D57\u0162\u0165t")]
    [InlineData("PAT. JUNE 4TH 1889", 'H', "\uFF28\uFF48\u02B0\u0124\u0127h")]
    [InlineData("PAT. MAY 21ST 1889", 'S', "\uFF33\uFF53\u02E2\u015A\u0161s")]
    [InlineData("PAT. JAN.Y 1 1889", 'Y', "\u02B8\u00DD\u00FD\u00FF\u0176y")]
    [InlineData("BREVETE SGDG", 'E', "\u00C8\u00C9\u00CA\u00CB\u00E8\u00E9\u00EA\u00EB\u0112\u011B\u1D49")]
    [InlineData("PATENT", 'A', "\u00C0\u00C1\u00C2\u00C3\u00C4\u00C5\u00E0\u00E5\u0100\u0105\u1D43\u00AA")]
    [InlineData("STERLING", 'N', "\u00D1\u00F1\u0143\u0148\u207F")]
    [InlineData("COPYRIGHT", 'O', "\u00D2\u00D6\u00D8\u00F2\u00F6\u00F8\u014C\u0151\u1D52\u00BA\u00B0\u02DA")]
    [InlineData("COPYRIGHT", 'C', "\u00C7\u00E7\u0106\u010D\u1D9C")]
    [InlineData("STERLING", 'L', "\u0139\u0142\u02E1")]
    [InlineData("COPYRIGHT", 'P', "\u1D56\uFF30\uFF50")]
    [InlineData("REGISTERED DESIGN", 'I', "\u00CC\u00EF\u0128\u0131")]
    [InlineData("REGISTERED DESIGN", 'G', "\u011C\u0123")]
    [InlineData("NUMMER 12", 'U', "\u00D9\u00FC\u0168\u0173")]
    [InlineData("PRODUCT OF SWITZERLAND", 'W', "\u0174\u0175")]
    [InlineData("PRODUCT OF SWITZERLAND", 'Z', "\u0179\u017E")]
    [InlineData("14K", 'K', "\u0136\u0137\uFF2B\uFF4B")]
    public void Read_CharacterThatLooksAlike_IsReadAlike(string text, char plain, string alike)
    {
        string expected = Read(text);
        Assert.All(alike, c => Assert.Equal(expected, Read(text.Replace(plain, c))));
    }

    [Theory]
    [InlineData('\u0301')] // combining acute accent
    [InlineData('\u0300')]
    [InlineData('\u036F')]
    [InlineData('\u00AD')] // soft hyphen
    [InlineData('\u200B')] // zero-width space
    [InlineData('\u200C')]
    [InlineData('\u200D')]
    [InlineData('\uFEFF')]
    [InlineData('\uFE0F')] // variation selector
    public void Read_CharacterWithoutWidth_IsPassedOver(char nothing)
    {
        foreach (string text in new[] { "PATENT PENDING", "PAT. 2345678", "MADE IN JAPAN" })
        {
            Assert.Equal(Read(text), Read(string.Concat(text.Select(c => c + nothing.ToString()))));
        }
    }

    [Theory]
    [InlineData("P4TENTED", "PATENTED")]
    [InlineData("PAT3NT", "PATENT")]
    [InlineData("C0PYRIGHT", "COPYRIGHT")]
    [InlineData("STERL1NG", "STERLING")]
    [InlineData("RE6ISTERED", "REGISTERED")]
    [InlineData("DE51GN PATENT", "DESIGN PATENT")]
    [InlineData("IT4LY", "ITALY")]
    [InlineData("8REVET", "REVET")]
    [InlineData("P47", "P")]
    public void Read_DigitThatLooksLikeALetter_IsPutRightInsideAWord(string worn, string meant) => Assert.Equal(Read(meant), Read(worn));

    [Theory]
    [InlineData("23I5678", "2315678")]
    [InlineData("23l5678", "2315678")]
    [InlineData("23O5678", "2305678")]
    [InlineData("23Q5678", "2305678")]
    [InlineData("23S5678", "2355678")]
    [InlineData("23B5678", "2385678")]
    [InlineData("23Z5678", "2325678")]
    [InlineData("23G5678", "2365678")]
    public void Read_LetterThatLooksLikeADigit_IsPutRightInsideANumberAndSaysSo(string worn, string meant)
    {
        Mark mark = Assert.Single(Inscription.Read("PAT. NO. " + worn).Marks);
        Assert.Equal(meant, mark.Number);
        Assert.True(mark.IsUncertain);
        Assert.Contains("Characters that look alike were put right.", mark.Reasons.Select(ReasonText.Of));
        Assert.Equal(Read("PAT. NO. " + meant), Read("PAT. NO. " + worn));
    }

    [Theory]
    [InlineData("23K5678")]
    [InlineData("SB5")]
    [InlineData("ZGB")]
    public void Read_OtherLettersAmongDigits_AreNoNumber(string text)
        => Assert.DoesNotContain(Inscription.Read("PAT. NO. " + text).Marks, mark => mark.Number is { Length: > 2 });

    /// <summary>The marks without their characters.</summary>
    private static string Read(string text)
        => string.Join("; ", Inscription.Read(text).Marks.Select(mark => mark.ToString()[..^(mark.Text.Length + 3)] + " " + mark.WordingId));
}
