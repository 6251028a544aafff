using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace Terminus.Tests.Registers;

public class NumberPatternTest
{
    [Property(MaxTest = 1000)]
    public Property FitsAreThoseThatTryingEveryNumberFinds()
        => Prop.ForAll(Arb.From(Cases), one =>
        {
            (string mask, bool open, int low, int high) = one;
            NumberPattern.TryCreate(mask, open, null, out NumberPattern pattern);
            int[] fits = [.. Enumerable.Range(1, 9999).Where(n => Fits(n, mask, open))];
            int[] between = [.. fits.Where(n => n >= low && n <= high)];
            int? first = pattern.FirstFrom(low);
            int? last = pattern.LastUpTo(high);
            return first == fits.Cast<int?>().FirstOrDefault(n => n >= low) || (open && first > 9999)
                ? last == fits.Cast<int?>().LastOrDefault(n => n <= high) && pattern.CountBetween(low, high) == between.Length
                : false;
        });

    [Theory]
    [InlineData("2,474,442", "2474442")]
    [InlineData("D 123,4?6", "1234?6")]
    [InlineData("No. 0012", "12")]
    [InlineData("US2474442A", "2474442")]
    [InlineData("US6285999B1", "6285999")]
    [InlineData("10811/97", "10811/1897")]
    [InlineData("10811 of 1897", "10811/1897")]
    [InlineData("4711/03", "4711/1903")]
    [InlineData("...898", "*898")]
    [InlineData("… 4,898", "*4898")]
    [InlineData("*?98", "*?98")]
    public void TryRead_NumberAsTyped_HasOneForm(string text, string expected)
    {
        Assert.True(NumberText.TryRead(text, out NumberPattern pattern));
        Assert.Equal(expected, pattern.ToString());
    }

    [Theory]
    [InlineData("")]
    [InlineData("patent")]
    [InlineData("12/3/1894")]
    [InlineData("-5")]
    [InlineData(" - 5")]
    [InlineData("1234567890")]
    [InlineData("12 and 13")]
    public void TryRead_NotOneNumber_IsRefused(string text) => Assert.False(NumberText.TryRead(text, out _));

    private static Gen<(string Mask, bool Open, int Low, int High)> Cases
        => from length in Gen.Choose(1, 4)
           from mask in Gen.Elements("012389??".ToCharArray()).ArrayOf(length)
           from open in Gen.Elements(true, false)
           from low in Gen.Choose(1, 9999)
           from high in Gen.Choose(low, 9999)
           where open || mask[0] != '0'
           select (new string(mask), open, low, high);

    private static bool Fits(int number, string mask, bool open)
    {
        string digits = DateText.Digits(number);
        return (open ? digits.Length >= mask.Length : digits.Length == mask.Length)
            && digits[(digits.Length - mask.Length)..].Zip(mask).All(pair => pair.Second == '?' || pair.First == pair.Second);
    }
}
