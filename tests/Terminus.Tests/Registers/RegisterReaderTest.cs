using NodaTime;

namespace Terminus.Tests.Registers;

/// <summary>Readings of invented registers, whose answers can be worked out by hand.</summary>
public class RegisterReaderTest
{
    private static readonly Register Years = Of(Year(11, 20, 1901), Year(21, 30, 1902), Year(31, 40, 1903));

    private static readonly Register Anew = Of(Year(1, 50, 1901, "1901"), Year(1, 80, 1902, "1902"), Year(1, 60, 1903, "1903"));

    private static readonly Register Gap = Of(Year(11, 20, 1901, "old"), Year(101, 120, 1950, "new"));

    [Theory]
    [InlineData("21", 1902, "Number 21 lies between 21 and 30, the numbers from 1 January 1902 to 31 December 1902.")]
    [InlineData("30", 1902, "Number 30 lies between 21 and 30, the numbers from 1 January 1902 to 31 December 1902.")]
    [InlineData("31", 1903, "Number 31 lies between 31 and 40, the numbers from 1 January 1903 to 31 December 1903.")]
    public void Read_NumberOfAYear_SaysWhichNumbersTheYearHas(string number, int year, string why)
    {
        NumberReading reading = Years.Read(number);
        Assert.Equal(DateWindow.InYear(year), Assert.Single(reading.Windows).Window);
        Assert.Equal(DateWindow.InYear(year), reading.Best);
        Assert.Equal(why, ReasonText.Of(Assert.Single(reading.Reasons)));
        Assert.Equal("an invented gazette", Assert.Single(reading.Sources));
        Assert.Empty(reading.Alternatives);
    }

    [Fact]
    public void Read_NumberThatIsItselfInTheTable_SaysSo()
    {
        NumberReading reading = Of(new RegisterRow(7, 7, DateWindow.InYear(1901), RowOrigin.Source, "an invented list")).Read("7");
        Assert.Equal("Number 7 is itself in the table, dated from 1 January 1901 to 31 December 1901.", ReasonText.Of(Assert.Single(reading.Reasons)));
    }

    [Fact]
    public void Read_NumberBetweenTwoRows_RestsOnBoth()
    {
        NumberReading reading = Of(
            new RegisterRow(10, 10, DateWindow.InYear(1901), RowOrigin.Source, "an invented list"),
            new RegisterRow(20, 20, DateWindow.InYear(1903), RowOrigin.Estimate, "another invented list")).Read("15");
        Assert.Equal(DateWindow.BetweenYears(1901, 1903), reading.Outer);
        Assert.Equal(RowOrigin.Estimate, reading.Origin);
        Assert.Equal(["an invented list", "another invented list"], reading.Sources);
        Assert.Equal(
            ["The register dates it from 1 January 1901 to 31 December 1903.", "The figures are placed between known ones, not published."],
            reading.Reasons.Select(ReasonText.Of));
    }

    [Fact]
    public void Read_RowFromMemory_IsNoSourceAndSaysWhatItAllows()
    {
        NumberReading reading = Of(new RegisterRow(1, 9, DateWindow.InYear(1901), RowOrigin.Memory, "recalled", allowanceDays: 1)).Read("5");
        Assert.Empty(reading.Sources);
        Assert.Equal(RowOrigin.Memory, reading.Origin);
        Assert.Equal(
            [
                "Number 5 lies between 1 and 9, the numbers from 1 January 1901 to 31 December 1901.",
                "The figures are recalled, not published, so the confidence is lower.",
                "The figures may be off by 1 day on either side, so the widest window reaches as far.",
            ],
            reading.Reasons.Select(ReasonText.Of));
    }

    [Theory]
    [InlineData("10", NumberOutcome.BeforeSeries, "Number 10 lies before the series: ZZ patent starts at 11.")]
    [InlineData("?", NumberOutcome.BeforeSeries, "Number ? lies before the series: ZZ patent starts at 11.")]
    [InlineData("41", NumberOutcome.BeyondSeries, "Number 41 lies beyond the series as known: ZZ patent is known up to 40, by 31 December 1903.")]
    [InlineData("???", NumberOutcome.BeyondSeries, "Number ??? lies beyond the series as known: ZZ patent is known up to 40, by 31 December 1903.")]
    [InlineData("0", NumberOutcome.Impossible, "No number of ZZ patent fits 0: it is known from 11 to 40.")]
    [InlineData("a pin", NumberOutcome.Impossible, "This is not a number: a pin.")]
    public void Read_NumberThatTheRegisterHasNot_SaysOnWhichSideItLies(string number, NumberOutcome outcome, string why)
    {
        NumberReading reading = Years.Read(number);
        Assert.Equal((outcome, why), (reading.Outcome, ReasonText.Of(Assert.Single(reading.Reasons))));
        Assert.True(reading is { Windows.Count: 0, Best: null, DocumentId: null, Alternatives.Count: 0, Sources.Count: 0, Outer.IsAny: true });
    }

    [Theory]
    [InlineData("50", NumberOutcome.BetweenSeries, "Number 50 lies between two series of ZZ patent, so it was not given.")]
    [InlineData("10", NumberOutcome.BeforeSeries, "Number 10 lies before the series: ZZ patent starts at 11.")]
    [InlineData("121", NumberOutcome.BeyondSeries, "Number 121 lies beyond the series as known: ZZ patent is known up to 120, by 31 December 1950.")]
    [InlineData("5?", NumberOutcome.Impossible, "No number of ZZ patent fits 5?: it is known from 11 to 120.")]
    [InlineData("*9?", NumberOutcome.Impossible, "No number of ZZ patent fits *9?: it is known from 11 to 120.")]
    public void Read_NumberBetweenTwoSeries_WasNotGiven(string number, NumberOutcome outcome, string why)
    {
        NumberReading reading = Gap.Read(number);
        Assert.Equal((outcome, why), (reading.Outcome, ReasonText.Of(Assert.Single(reading.Reasons))));
    }

    [Fact]
    public void Read_NumberOfSeveralYears_KeepsEachUntilAYearSettlesIt()
    {
        NumberReading reading = Anew.Read("55");
        Assert.Equal(NumberOutcome.Several, reading.Outcome);
        Assert.Equal([DateWindow.InYear(1902), DateWindow.InYear(1903)], reading.Alternatives);
        Assert.Equal(DateWindow.BetweenYears(1902, 1903), Assert.Single(reading.Windows).Window);
        Assert.Null(reading.Best);
        Assert.Equal(
            [
                "The office ZZ counted anew, so number 55 alone fits 2 series; a year beside it settles which.",
                "The register dates it from 1 January 1902 to 31 December 1903.",
            ],
            reading.Reasons.Select(ReasonText.Of));
        Assert.Equal(
            [
                "Number 55 lies between 1 and 60, the numbers from 1 January 1903 to 31 December 1903.",
                "The office counted anew each year, and the year 1903 is that of the application.",
            ],
            Anew.Read("55/1903").Reasons.Select(ReasonText.Of));
        Assert.Equal(NumberOutcome.BeyondSeries, Anew.Read("55/1901").Outcome);
    }

    [Fact]
    public void Read_NumberOfTheOneYearThatReachedIt_IsOfThatYear()
    {
        NumberReading reading = Anew.Read("61");
        Assert.Equal((NumberOutcome.Found, DateWindow.InYear(1902)), (reading.Outcome, reading.Best));
        Assert.Contains(reading.Reasons, r => r.Rule == "registers.application-year");
    }

    [Fact]
    public void Read_YearThatIsNoSeries_IsPassedOver()
    {
        Assert.Equal(Years.Read("21").Windows, Years.Read("21/1850").Windows);
        Assert.Equal(Anew.Read("55").Alternatives, Anew.Read("55/1850").Alternatives);
    }

    [Fact]
    public void Read_SeriesWithANameOfFourLetters_IsNoYear()
        => Assert.DoesNotContain(
            Of(Year(1, 5, 1901, "post"), Year(6, 9, 1902, "late")).Read("7").Reasons, r => r.Rule == "registers.application-year");

    [Theory]
    [InlineData("1?", 1901, 1901, 0, "9 numbers fit 1?, from 11 to 19.")]
    [InlineData("?0", 1901, 1903, 0, "3 numbers fit ?0, from 20 to 40.")]
    [InlineData("*5", 1901, 1903, 0, "3 numbers fit *5, from 15 to 35.")]
    public void Read_LostDigits_CountsWhatFits(string number, int from, int to, int alternatives, string why)
    {
        NumberReading reading = Years.Read(number);
        Assert.Equal(DateWindow.BetweenYears(from, to), reading.Outer);
        Assert.Equal((NumberOutcome.Found, alternatives), (reading.Outcome, reading.Alternatives.Count));
        Assert.Equal(reading.Outer, reading.Best);
        Assert.Equal(why, ReasonText.Of(reading.Reasons[0]));
    }

    [Fact]
    public void Read_LostDigitsThatLeaveOneNumber_AreThatNumber()
    {
        NumberReading reading = Of(Year(18, 20, 1901)).Read("2?");
        Assert.Equal((NumberOutcome.Found, "2?"), (reading.Outcome, reading.Number));
        Assert.Equal("Number 20 lies between 18 and 20, the numbers from 1 January 1901 to 31 December 1901.", ReasonText.Of(reading.Reasons[0]));
    }

    [Fact]
    public void Read_LostDigitWithAYearBetween_KeepsBothSpans()
    {
        NumberReading reading = Of(Year(1, 9, 1901), Year(10, 19, 1902), Year(20, 29, 1903), Year(30, 39, 1905)).Read("?5");
        Assert.Equal([DateWindow.BetweenYears(1902, 1903), DateWindow.InYear(1905)], reading.Alternatives);
        Assert.Equal((NumberOutcome.Several, null, DateWindow.BetweenYears(1902, 1905)), (reading.Outcome, reading.Best, reading.Outer));
    }

    [Fact]
    public void Read_LostDigitOverRowsOfTwoOrigins_StandsOnTheWeaker()
    {
        NumberReading reading = Of(
            Year(10, 19, 1901), new RegisterRow(20, 29, DateWindow.InYear(1902), RowOrigin.Memory, "recalled")).Read("?5");
        Assert.Equal((RowOrigin.Memory, "an invented gazette"), (reading.Origin, Assert.Single(reading.Sources)));
        Assert.Equal("registers.from-memory", reading.Reasons[^1].Rule);
    }

    [Fact]
    public void Read_StartOfAYearThatMayBeOffByMoreThanAQuarter_HasNoEstimatedDay()
    {
        Assert.True(UnitedStates(92).Read("150").Windows.Count > 2);
        Assert.Equal([DateWindow.InYear(1902)], UnitedStates(93).Read("150").Windows.Skip(1).Select(w => w.Window));
        Assert.DoesNotContain(UnitedStates(93).Read("150").Reasons, r => r.Rule == "registers.issue-day-estimated");

        static Register UnitedStates(int allowance)
            => new("US", "utility", [
                Year(1, 100, 1901), new RegisterRow(101, 200, DateWindow.InYear(1902), RowOrigin.Memory, "recalled", allowanceDays: allowance), Year(201, 300, 1903),
            ]);
    }

    [Fact]
    public void Read_NumberBetweenASureRowAndARoughOne_HasNoEstimatedDay()
    {
        var register = new Register("US", "utility", [
            Year(1, 100, 1901), Year(101, 140, 1902), new RegisterRow(160, 200, DateWindow.InYear(1902), RowOrigin.Memory, "recalled", allowanceDays: 93), Year(201, 300, 1903),
        ]);
        Assert.DoesNotContain(register.Read("150").Reasons, r => r.Rule.StartsWith("registers.issue-day", StringComparison.Ordinal));
        Assert.Contains(register.Read("120").Reasons, r => r.Rule.StartsWith("registers.issue-day", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_SeriesThatDoNotRiseTogether_GiveTheirSpansInOrderOfDates()
        => Assert.Equal(
            [DateWindow.InYear(1901), DateWindow.BetweenYears(1901, 1902), DateWindow.InYear(1950)],
            Of(
                Year(1, 50, 1950, "late"), Year(2, 60, 1901, "early"),
                new RegisterRow(3, 60, DateWindow.BetweenYears(1901, 1902), RowOrigin.Source, "", "longer")).Read("30").Alternatives);

    [Fact]
    public void Read_FirstNumberOfARow_IsNoneOfTheRowBefore()
        => Assert.Equal(
            [DateWindow.InYear(1902), DateWindow.InYear(1950)],
            Of(Year(1, 50, 1901, "a"), Year(51, 80, 1902, "a"), Year(1, 80, 1950, "b")).Read("51").Alternatives);

    [Fact]
    public void Read_OneSeriesWithTheNameOfAYear_WasNotCountedAnew()
    {
        Assert.DoesNotContain(Of(Year(1, 5, 1897, "1897")).Read("3").Reasons, r => r.Rule == "registers.application-year");
        Assert.DoesNotContain(Of(Year(1, 5, 1897, "1st"), Year(6, 9, 1898, "2nd")).Read("3").Reasons, r => r.Rule == "registers.application-year");
    }

    [Fact]
    public void Read_RowWithoutASource_NamesNone()
        => Assert.Empty(Of(new RegisterRow(1, 5, DateWindow.InYear(1897), RowOrigin.Source, "")).Read("3").Sources);

    [Fact]
    public void Read_IssueDay_SaysWhichDaysTheDatedNumbersLeave()
    {
        var register = new Register("US", "utility", [
            Year(1, 100, 1901), Year(101, 200, 1902), Year(201, 300, 1903), Day(140, 3), Day(142, 3), Day(150, 17),
        ]);
        Assert.Equal("Known numbers before and after it issued on 3 June 1902, so this one did too.", ReasonText.Of(register.Read("141").Reasons[^1]));
        string words = ReasonText.Of(register.Read("145").Reasons[^1]);
        Assert.StartsWith("From known numbers around it the likeliest issue day is ", words, StringComparison.Ordinal);
        Assert.EndsWith("; they leave 3 June 1902 to 17 June 1902.", words, StringComparison.Ordinal);
        Assert.Equal("3", register.Read("145").Reasons[^1]["weeks"]);
    }

    private static Register Of(params RegisterRow[] rows) => new("ZZ", "patent", rows);

    private static RegisterRow Year(int first, int last, int year, string series = "")
        => new(first, last, DateWindow.InYear(year), RowOrigin.Source, "an invented gazette", series);

    private static RegisterRow Day(int number, int day)
        => new(number, number, DateWindow.On(new LocalDate(1902, 6, day)), RowOrigin.Source, "an invented gazette");
}
