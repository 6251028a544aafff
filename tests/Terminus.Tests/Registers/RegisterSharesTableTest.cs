namespace Terminus.Tests.Registers;

/// <summary>The confidences as docs/registers.md states them, beside what <see cref="RegisterSharesTest"/> measured.</summary>
public class RegisterSharesTableTest
{
    [Theory] // Weeks to either side of the estimated day, and the confidence in hundredths, widest first.
    [InlineData("utility", 1, "0:97")]
    [InlineData("utility", 2, "1:97 0:78")]
    [InlineData("utility", 3, "1:96 0:70")]
    [InlineData("utility", 8, "1:96 0:70")]
    [InlineData("utility", 9, "3:97 1:94 0:60")]
    [InlineData("utility", 20, "3:97 1:94 0:60")]
    [InlineData("utility", 21, "6:97 4:95 2:90 1:80 0:38")]
    [InlineData("utility", 106, "6:97 4:95 2:90 1:80 0:38")]
    [InlineData("utility", 107, "")]
    [InlineData("design", 1, "0:95")]
    [InlineData("design", 2, "1:93 0:40")]
    [InlineData("design", 8, "1:93 0:40")]
    [InlineData("design", 9, "3:97 1:85 0:25")]
    [InlineData("design", 20, "3:97 1:85 0:25")]
    [InlineData("design", 21, "8:97 4:88 2:70 1:50 0:15")]
    [InlineData("reissue", 106, "8:97 4:88 2:70 1:50 0:15")]
    [InlineData("plant", 107, "")]
    public void Weeks_AsManyAsTheDatedNumbersLeave_HaveTheStatedShares(string right, int possible, string expected)
        => Assert.Equal(
            expected,
            string.Join(" ", RegisterShares.Weeks(right, possible).Select(w => DateText.Digits(w.Weeks) + ":" + DateText.Digits((int)Math.Round(100 * w.Confidence)))));

    [Theory]
    [InlineData(true, RowOrigin.Source, 0.99, 0.97)]
    [InlineData(true, RowOrigin.Estimate, 0.98, 0.90)]
    [InlineData(true, RowOrigin.Memory, 0.98, 0.95)]
    [InlineData(false, RowOrigin.Source, 0.97, 0.85)]
    [InlineData(false, RowOrigin.Estimate, 0.95, 0.80)]
    [InlineData(false, RowOrigin.Memory, 0.93, 0.70)]
    public void OuterAndTable_ByOrigin_AreAsStated(bool tuesdays, RowOrigin weakest, double outer, double table)
        => Assert.Equal((outer, table), (RegisterShares.Outer(tuesdays, weakest), RegisterShares.Table(tuesdays, weakest)));
}
