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

    [Fact] // The letters in the order of their years and months: The National Archives guide to registered designs.
    public void Read_EveryLetter_IsItsYearAndMonth()
    {
        foreach ((int cycle, int first, string letters) in new[] { (1, 1842, "XHCAIFUSVPDYJELKBMZROGNWQT"), (2, 1868, "XHCAIFUSVPDYJELK") })
        {
            for (int i = 0; i < letters.Length; i++)
            {
                int year = first + i;
                DateWindow whole = year == 1842 ? DateWindow.Between(new LocalDate(1842, 9, 1), new LocalDate(1842, 12, 31)) : DateWindow.InYear(year);
                Assert.Equal(whole, new RegistryDiamond(cycle, letters[i]).Read().Best);
                for (int month = year == 1842 ? 9 : 1; month <= 12; month++)
                {
                    NumberReading reading = new RegistryDiamond(cycle, letters[i], "CGWHEMIRDBKA"[month - 1], 20).Read();
                    Assert.Equal(DateWindow.On(new LocalDate(year, month, 20)), reading.Alternatives.Count == 0 ? reading.Best : reading.Alternatives[0]);
                }
            }
        }

        Assert.Equal(NumberOutcome.Impossible, new RegistryDiamond(1, 'X', 'R', 31).Read().Outcome);
        Assert.Equal(DateWindow.On(new LocalDate(1842, 9, 1)), new RegistryDiamond(1, 'X', 'D', 1).Read().Best);
    }

    [Theory]
    [InlineData("R", "13", "4", "D", "IV", "cycle 1, year R, month D, day 13, parcel 4, class IV")]
    [InlineData("13", "R", "D", "4", "iv ", "cycle 2, year R, month D, day 13, parcel 4, class IV")]
    [InlineData("r", null, null, null, null, "cycle 1, year R")]
    [InlineData(null, "13", "", "?", null, "cycle 1, day 13")]
    [InlineData(null, null, "4", null, null, "cycle 1, parcel 4")]
    [InlineData(null, null, null, "d", null, "cycle 1, month D")]
    [InlineData("13", null, null, null, null, "cycle 2, day 13")]
    [InlineData(null, "R", null, null, null, "cycle 2, year R")]
    [InlineData(null, null, "D", null, null, "cycle 2, month D")]
    [InlineData(null, null, null, "4", null, "cycle 2, parcel 4")]
    [InlineData("?", "RR", "1?", " ", "", "class ")]
    [InlineData(null, null, null, null, null, "")]
    public void FromCorners_ALetterOrAFigureInACorner_TellsTheCycle(
        string? top, string? right, string? bottom, string? left, string? goodsClass, string expected)
        => Assert.Equal(expected, RegistryDiamond.FromCorners(top, right, bottom, left, goodsClass).ToString());

    [Fact]
    public void Read_Diamond_SaysWhatEachPartStandsFor()
    {
        NumberReading reading = RegistryDiamond.FromCorners("R", "13", "4", "D", "IV").Read();
        Assert.Equal(
            [
                "A letter in the top corner: the registry mark is of the cycle 1842 to 1867.",
                "The letter R stands for 1861.",
                "The letter D stands for September.",
                "Class IV is earthenware / ceramics.",
                "A registry diamond gives the day of registration; the piece can be later by the years of protection and more.",
            ],
            reading.Reasons.Select(ReasonText.Of));
        Assert.Equal(["1861-01-01/1861-12-31 (0.98)", "1861-09-01/1861-09-30 (0.96)", "1861-09-13 (0.95)"], reading.Windows.Select(w => w.ToString()));
        Assert.Equal(("GB", "registry-diamond", RowOrigin.Source), (reading.Office, reading.Right, reading.Origin));
        Assert.Equal("Registry mark, cycle 1, year R, month D, day 13, parcel 4, class IV", Assert.Single(reading.Writings));
        Assert.Equal("oldcopper.org; porcelainmarksandmore.com; The National Archives guide to registered designs", Assert.Single(reading.Sources));
        Assert.Empty(reading.Alternatives);
        Assert.Equal("A figure in the top corner: the registry mark is of the cycle 1868 to 1883.", ReasonText.Of(new RegistryDiamond(2).Read().Reasons[0]));
    }

    [Fact]
    public void Read_CycleAndLettersLost_KeepsWhatEachCycleMakesOfThem()
    {
        NumberReading reading = new RegistryDiamond(null, 'A', 'M', 5).Read();
        Assert.Equal([DateWindow.On(new LocalDate(1845, 6, 5)), DateWindow.On(new LocalDate(1871, 6, 5))], reading.Alternatives);
        Assert.Equal(
            ["1845-01-01/1871-12-31 (0.98)", "1845-06-01/1871-06-30 (0.96)", "1845-06-05/1871-06-05 (0.95)"], reading.Windows.Select(w => w.ToString()));
        Assert.DoesNotContain(reading.Reasons, r => r.Rule == "registers.diamond-corner");
        Assert.Null(reading.Best);
        Assert.Equal(
            [DateWindow.Between(new LocalDate(1842, 9, 1), new LocalDate(1867, 12, 31)), DateWindow.BetweenYears(1868, 1883)],
            new RegistryDiamond(month: 'M', day: 5).Read().Alternatives);
    }

    [Theory] // The letters' exceptions: phoenixmasonry.org, oldcopper.org; those of March 1878 recalled.
    [InlineData(1, 'K', 'R', 1, "1857-08-01 1857-09-01")]
    [InlineData(1, 'K', 'R', 19, "1857-08-19 1857-09-19")]
    [InlineData(1, 'K', 'R', 20, "1857-08-20")]
    [InlineData(1, 'B', 'R', 10, "1858-08-10")]
    [InlineData(1, 'Z', 'K', 30, "1860-11-30 1860-12-30")]
    [InlineData(1, 'Z', 'K', 31, "1860-12-31")]
    [InlineData(1, 'R', 'K', 3, "1861-11-03")]
    [InlineData(2, 'W', 'G', 1, "1878-03-01")]
    [InlineData(2, 'W', 'G', 6, "1878-03-06")]
    [InlineData(2, 'W', 'W', 5, "")]
    [InlineData(2, 'D', 'W', 5, "1878-03-05")]
    [InlineData(2, 'P', 'G', 5, "1877-02-05")]
    [InlineData(1, 'R', 'G', 29, "")]
    [InlineData(1, 'N', 'G', 29, "1864-02-29")]
    [InlineData(1, 'R', 'D', 0, "")]
    public void Read_DayOfALetterWithAnException_IsEachDayThatFits(int cycle, char year, char month, int day, string expected)
    {
        NumberReading reading = new RegistryDiamond(cycle, year, month, day).Read();
        Assert.Equal(
            expected, string.Join(" ", reading.Alternatives.Count > 0 ? reading.Alternatives : reading.Best is { } best ? [best] : []));
        Assert.Equal(
            expected.Length == 0 ? NumberOutcome.Impossible : expected.Length == 10 ? NumberOutcome.Found : NumberOutcome.Several, reading.Outcome);
    }

    [Fact]
    public void Read_MonthOfALetterWithAnException_IsEachSpan()
    {
        NumberReading reading = new RegistryDiamond(1, 'K', 'R').Read();
        Assert.Equal(["1857-08-01/1857-08-31", "1857-09-01/1857-09-19"], reading.Alternatives.Select(w => w.ToString()));
        Assert.Equal("1857-08-01/1857-09-19", reading.Windows[1].Window.ToString());
        Assert.Equal(2, reading.Windows.Count);
        Assert.Contains(
            "A published exception of the registry applies: letter of August used from 1 to 19 September 1857.", reading.Reasons.Select(ReasonText.Of));
        Assert.Equal("1878-03-01/1878-03-06", new RegistryDiamond(2, 'W', 'G').Read().Best.ToString());
        Assert.Equal("1878-01-01/1878-12-31", new RegistryDiamond(2, 'W').Read().Best.ToString());
    }

    [Fact]
    public void Read_LettersOfAnExceptionInOneCycleAlone_RestOnMemoryToo()
    {
        NumberReading reading = new RegistryDiamond(null, 'W', 'G', 5).Read();
        Assert.Equal(["1865-02-05", "1878-03-05"], reading.Alternatives.Select(w => w.ToString()));
        Assert.Equal(RowOrigin.Memory, reading.Origin);
    }

    [Fact]
    public void Read_DayThatNoMonthHas_IsNoneWithoutAMonthToo()
    {
        Assert.Equal(NumberOutcome.Impossible, new RegistryDiamond(1, day: 32).Read().Outcome);
        Assert.Equal(NumberOutcome.Impossible, new RegistryDiamond(1, 'R', day: 0).Read().Outcome);
        Assert.Equal(DateWindow.InYear(1861), new RegistryDiamond(1, 'R', day: 31).Read().Best);
    }

    [Fact]
    public void Read_MarkTheRegistryNeverUsed_NamesIt()
    {
        NumberReading reading = new RegistryDiamond(1, 'r', 't', 3).Read();
        Assert.Equal("The registry used no such mark: cycle 1, year R, month T, day 3.", ReasonText.Of(Assert.Single(reading.Reasons)));
        Assert.Equal(("GB", "registry-diamond", "cycle 1, year R, month T, day 3"), (reading.Office, reading.Right, reading.Number));
        Assert.Empty(reading.Windows);
    }

    [Fact]
    public void Read_ClassThatIsNone_IsPassedOver()
        => Assert.DoesNotContain(new RegistryDiamond(1, 'R', 'D', 13, 4, "XIV").Read().Reasons, r => r.Rule == "registers.diamond-class");

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
