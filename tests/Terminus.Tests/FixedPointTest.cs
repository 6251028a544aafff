using System.Globalization;
using System.Text;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace Terminus.Tests;

public class FixedPointTest
{
    [Theory]
    [InlineData(0, 0, "0")]
    [InlineData(0, 12, "0")]
    [InlineData(7, 0, "7")]
    [InlineData(900, 3, "0.9")]
    [InlineData(948, 3, "0.948")]
    [InlineData(27, 3, "0.027")]
    [InlineData(1_000_000_000_000, 12, "1")]
    [InlineData(12_050, 3, "12.05")]
    [InlineData(long.MaxValue, 18, "9.223372036854775807")]
    public void Write_UnitsAndDecimals_AreDigitsWithoutZerosAtTheEnd(long units, int decimals, string text)
        => Assert.Equal(text, Written(units, decimals));

    // The platform's decimal is the other way to the same digits.
    [Property]
    public Property Write_AnyUnits_AgreesWithTheDecimalOfThePlatform()
        => Prop.ForAll(
            Gen.Choose(0, int.MaxValue).Select(n => (long)n * 997).Zip(Gen.Choose(0, 12)).ToArbitrary(),
            n => Written(n.Item1, n.Item2) == (n.Item1 / (decimal)Math.Pow(10, n.Item2)).ToString("0.############", CultureInfo.InvariantCulture));

    private static string Written(long units, int decimals)
    {
        Span<byte> into = stackalloc byte[FixedPoint.Longest];
        return Encoding.ASCII.GetString(into[..FixedPoint.Write(units, decimals, into)].ToArray());
    }
}
