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
    [InlineData("1234567890", false)]
    [InlineData("0123456789", true)]
    [InlineData("", false)]
    [InlineData("12a", false)]
    [InlineData("1/2", false)]
    [InlineData("1:2", false)]
    [InlineData("?????????", true)]
    public void TryCreate_Digits_AreAtMostNine(string digits, bool expected)
    {
        Assert.Equal(expected, NumberPattern.TryCreate(digits, false, null, out NumberPattern pattern));
        Assert.Equal(expected ? digits.TrimStart('0') : "0", pattern.Digits);
    }

    [Fact]
    public void TryCreate_LeadingDigitsLost_KeepsTheZeroBehindThem()
    {
        Assert.True(NumberPattern.TryCreate("007", true, null, out NumberPattern pattern));
        Assert.Equal("*007", pattern.ToString());
        Assert.False(pattern.IsExact);
        Assert.Equal(1007, pattern.FirstFrom(1));
        Assert.Equal(999999007, pattern.LastUpTo(int.MaxValue));
        Assert.Equal(9, pattern.CountBetween(1, 9999));
    }

    [Fact]
    public void Fits_NineLostDigits_AreEveryNumberOfNineDigits()
    {
        Assert.True(NumberPattern.TryCreate("?????????", false, null, out NumberPattern pattern));
        Assert.Equal(100000000, pattern.FirstFrom(1));
        Assert.Equal(999999999, pattern.LastUpTo(int.MaxValue));
        Assert.Equal(900000000, pattern.CountBetween(1, 999999999));
        Assert.Null(pattern.FirstFrom(1000000000));
        Assert.Null(pattern.LastUpTo(99999999));
    }

    [Fact]
    public void Of_Number_IsExact()
    {
        NumberPattern pattern = NumberPattern.Of(4711);
        Assert.True(pattern.IsExact);
        Assert.False(pattern.IsOpen);
        Assert.Null(pattern.Year);
        Assert.Equal((4711, "4711"), (pattern.Value, pattern.ToString()));
        Assert.Equal((4711, 4711), (pattern.FirstFrom(-5), pattern.LastUpTo(4711)));
        Assert.Equal((0, 1), (pattern.CountBetween(4712, 9999), pattern.CountBetween(4711, 4711)));
        Assert.Equal(0, NumberPattern.None.CountBetween(1, 10));
        Assert.Null(NumberPattern.None.LastUpTo(10));
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
