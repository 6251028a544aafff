using NodaTime;
using NodaTime.Text;

namespace Terminus.Tests.Registers;

public class RegistryDiamondTest
{
    [Theory] // Letters as in The National Archives guide to registered designs and at oldcopper.org.
    [InlineData("X", "2", "5", "A", "1842-12-02")]
    [InlineData("K", "14", "4", "H", "1857-04-14")]
    [InlineData("T", "31", "1", "A", "1867-12-31")]
    [InlineData("1", "X", "C", "3", "1868-01-01")]
    [InlineData("22", "K", "R", "7", "1883-08-22")]
    public void Read_WholeDiamond_IsADay(string top, string right, string bottom, string left, string expected)
    {
        NumberReading reading = RegistryDiamond.FromCorners(top, right, bottom, left).Read();
        Assert.Equal(NumberOutcome.Found, reading.Outcome);
        Assert.Equal(DateWindow.On(LocalDatePattern.Iso.Parse(expected).Value), reading.Best);
        Assert.Equal(3, reading.Windows.Count);
    }

    [Fact]
    public void Read_RInEarlySeptember1857_KeepsAugustAndSeptember()
    {
        // phoenixmasonry.org: in 1857 the letter R was used from 1 to 19 September too.
        NumberReading reading = new RegistryDiamond(1, 'K', 'R', 10).Read();
        Assert.Equal(NumberOutcome.Several, reading.Outcome);
        Assert.Equal(
            [DateWindow.On(new LocalDate(1857, 8, 10)), DateWindow.On(new LocalDate(1857, 9, 10))], reading.Alternatives);
        Assert.Equal(NumberOutcome.Found, new RegistryDiamond(1, 'K', 'R', 25).Read().Outcome);
    }

    [Fact]
    public void Read_KIn1860_KeepsNovemberAndDecember()
        => Assert.Equal(2, new RegistryDiamond(1, 'Z', 'K', 3).Read().Alternatives.Count);

    [Fact]
    public void Read_WAndGOfMarch1878_AreTheExceptionOfSixDays()
    {
        NumberReading reading = new RegistryDiamond(2, 'W', 'G', 5).Read();
        Assert.Equal(DateWindow.On(new LocalDate(1878, 3, 5)), reading.Best);
        Assert.Equal(RowOrigin.Memory, reading.Origin);
        Assert.Equal(NumberOutcome.Impossible, new RegistryDiamond(2, 'W', 'G', 7).Read().Outcome);
        Assert.Equal(DateWindow.On(new LocalDate(1878, 2, 5)), new RegistryDiamond(2, 'D', 'G', 5).Read().Best);
    }

    [Fact]
    public void Read_OAndC_AreBothJanuary()
        => Assert.Equal(new RegistryDiamond(1, 'A', 'C', 9).Read().Best, new RegistryDiamond(1, 'A', 'O', 9).Read().Best);

    [Fact]
    public void Read_DayLost_IsAMonth()
    {
        DateWindow september = DateWindow.Between(new LocalDate(1881, 9, 1), new LocalDate(1881, 9, 30));
        Assert.Equal(september, new RegistryDiamond(2, 'E', 'D').Read().Best);
    }

    [Fact]
    public void Read_CycleLost_KeepsBothYears()
        => Assert.Equal([DateWindow.InYear(1845), DateWindow.InYear(1871)], new RegistryDiamond(year: 'A').Read().Alternatives);

    [Fact]
    public void Read_OnlyTheCycle_IsTheCycle()
    {
        Assert.Equal(DateWindow.Between(new LocalDate(1842, 9, 1), new LocalDate(1867, 12, 31)), new RegistryDiamond(1).Read().Outer);
        Assert.Equal(DateWindow.BetweenYears(1868, 1883), new RegistryDiamond(2).Read().Outer);
    }

    [Fact]
    public void Read_ClassFour_IsCeramics()
        => Assert.Contains(
            new RegistryDiamond(1, 'R', 'D', 13, 4, "iv").Read().Reasons,
            r => r.Rule == "registers.diamond-class" && r["material"] == "earthenware / ceramics");

    [Theory]
    [InlineData('B', 'D', 31)]
    [InlineData('R', 'T', 3)]
    [InlineData('?', 'D', 3)]
    [InlineData('R', 'D', 32)]
    public void Read_MarkTheRegistryNeverUsed_SaysSo(char year, char month, int day)
        => Assert.Equal(NumberOutcome.Impossible, new RegistryDiamond(1, year, month, day).Read().Outcome);
}
