using NodaTime;

namespace Terminus.Tests.Registers;

public class RegisterTest
{
    private static readonly RegisterRow[] Rows =
    [
        Year(1, 100, 1901), Year(101, 200, 1902), Year(201, 300, 1903),
    ];

    [Fact]
    public void Constructor_NoRows_IsTheCallersMistake()
        => Assert.StartsWith(
            "A register has at least one row.", Assert.Throws<ArgumentException>("rows", () => new Register("ZZ", "patent", [])).Message, StringComparison.Ordinal);

    [Fact]
    public void Constructor_RowWithAnOpenEnd_IsTheCallersMistake()
        => Assert.Throws<ArgumentOutOfRangeException>(
            () => new RegisterRow(1, 2, DateWindow.From(new LocalDate(1901, 1, 1)), RowOrigin.Source, "an invented gazette"));

    [Fact]
    public void TryWindow_NumberOfARow_IsItsWindow()
    {
        var register = new Register("ZZ", "patent", Rows);
        Assert.True(register.TryWindow(150, out DateWindow window));
        Assert.Equal(DateWindow.InYear(1902), window);
        Assert.False(register.TryWindow(301, out _));
    }

    [Fact]
    public void TryWindow_NumberBetweenRows_ReachesFromOneToTheOther()
    {
        var register = new Register("ZZ", "patent", [Year(1, 10, 1901), Year(90, 100, 1905)]);
        Assert.True(register.TryWindow(50, out DateWindow window));
        Assert.Equal(DateWindow.BetweenYears(1901, 1905), window);
    }

    [Fact]
    public void Read_RowWithAnAllowance_StatesTheTableInsideTheWiderWindow()
    {
        RegisterRow row = new(1, 9, DateWindow.InYear(1901), RowOrigin.Memory, "", allowanceDays: 31);
        var register = new Register("ZZ", "patent", [row]);
        NumberReading reading = register.Read("5");
        Assert.Equal(
            [DateWindow.Between(new LocalDate(1900, 12, 1), new LocalDate(1902, 1, 31)), DateWindow.InYear(1901)],
            reading.Windows.Select(w => w.Window));
    }

    [Fact]
    public void Read_OneSlipAmongDatedNumbers_MovesNeitherTheYearNorTheEstimate()
    {
        RegisterRow[] dated = [Day(110, 1902, 1, 28), Day(120, 1902, 3, 4), Day(180, 1902, 10, 7)];
        RegisterRow slip = Day(150, 1902, 1, 7);
        var clean = new Register("US", "utility", [.. Rows, .. dated]);
        var spoilt = new Register("US", "utility", [.. Rows, .. dated, slip]);
        foreach (int number in Enumerable.Range(101, 100))
        {
            Assert.Equal(clean.Read(DateText.Digits(number)).Windows, spoilt.Read(DateText.Digits(number)).Windows);
        }
    }

    [Fact]
    public void Read_NumberBetweenTwoOfOneDay_IsOfThatDay()
    {
        var register = new Register("US", "utility", [.. Rows, Day(140, 1902, 6, 3), Day(144, 1902, 6, 3)]);
        NumberReading reading = register.Read("142");
        Assert.Equal(DateWindow.On(new LocalDate(1902, 6, 3)), reading.Best);
        Assert.Contains(reading.Reasons, r => r.Rule == "registers.issue-day-certain");
    }

    [Fact]
    public void Read_DatedNumberBeforeAllYears_IsOfItsDay()
    {
        // As plant patent No. 1 of 18 August 1931, before the first table of years.
        var register = new Register("US", "plant", [Day(1, 1901, 8, 20), Year(2, 100, 1902), Year(101, 200, 1903)]);
        Assert.Equal(DateWindow.On(new LocalDate(1901, 8, 20)), register.Read("1").Best);
        Assert.Equal(DateWindow.InYear(1902), register.Read("2").Outer);
        Assert.Equal(DateWindow.On(new LocalDate(1931, 8, 18)), RegisterSet.BuiltIn.Read("US", "plant", "1").Best);
        Assert.True(RegisterSet.BuiltIn.Find("US", "plant")!.TryWindow(1, out DateWindow window));
        Assert.Equal(DateWindow.On(new LocalDate(1931, 8, 18)), window);
    }

    [Fact]
    public void Read_DatedNumberThatIsTheFirstOfTheYears_StaysOfItsYear()
        => Assert.Equal(DateWindow.InYear(1902), new Register("US", "plant", [Day(2, 1902, 8, 19), Year(2, 100, 1902), Year(101, 200, 1903)]).Read("2").Outer);

    [Fact]
    public void TryWindow_NumberOfSeveralSeries_CoversThemAll()
    {
        var register = new Register("ZZ", "patent", [.. Rows, new RegisterRow(150, 160, DateWindow.InYear(1950), RowOrigin.Source, "an invented gazette", "later")]);
        Assert.True(register.TryWindow(155, out DateWindow window));
        Assert.Equal(DateWindow.BetweenYears(1902, 1950), window);
        Assert.True(register.TryWindow(1, out window));
        Assert.Equal(DateWindow.InYear(1901), window);
        Assert.False(register.TryWindow(0, out window));
        Assert.Equal(DateWindow.Any, window);
    }

    [Fact]
    public void Constructor_OfficeAndRight_HaveOneForm()
    {
        var register = new Register(" uk ", "Patent ", Rows);
        Assert.Equal(("GB", "patent", 3), (register.Office, register.Right, register.Rows.Count));
        Assert.Throws<ArgumentNullException>("office", () => new Register(null!, "patent", Rows));
        Assert.Throws<ArgumentNullException>("right", () => new Register("ZZ", null!, Rows));
        Assert.Throws<ArgumentNullException>("rows", () => new Register("ZZ", "patent", null!));
        Assert.Throws<ArgumentNullException>("number", () => register.Read((string)null!));
    }

    [Theory]
    [InlineData("US", "utility", true)]
    [InlineData("US", "design", true)]
    [InlineData("US", "reissue", true)]
    [InlineData("US", "plant", true)]
    [InlineData("US", "trade-mark", false)]
    [InlineData("US", "x-patent", false)]
    [InlineData("GB", "design", false)]
    public void TryLocate_UnitedStatesAlone_IssuedOnTuesdays(string office, string right, bool expected)
    {
        var register = new Register(office, right, Rows);
        Assert.Equal(expected, register.IssuesOnTuesdays);
        Assert.Equal(expected, register.TryLocate(250, out _));
        Assert.Equal(expected, register.Numbers(DateWindow.InYear(1903))[0].Likely is not null);
    }

    [Fact]
    public void TryLocate_DaysAlone_HaveNoYearsToRestOn()
    {
        var register = new Register("US", "utility", [Day(110, 1902, 1, 28), Day(120, 1902, 3, 4)]);
        Assert.False(register.TryLocate(115, out _));
        Assert.Equal(DateWindow.Between(new LocalDate(1902, 1, 28), new LocalDate(1902, 3, 4)), register.Read("115").Outer);
    }

    private static RegisterRow Year(int first, int last, int year)
        => new(first, last, DateWindow.InYear(year), RowOrigin.Source, "an invented gazette");

    private static RegisterRow Day(int number, int year, int month, int day)
        => new(number, number, DateWindow.On(new LocalDate(year, month, day)), RowOrigin.Source, "an invented gazette");
}
