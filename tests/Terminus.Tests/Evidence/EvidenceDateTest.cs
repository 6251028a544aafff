using NodaTime;

namespace Terminus.Tests.EvidenceKinds;

public class EvidenceDateTest
{
    [Theory]
    [InlineData("1961-07-11", "1961-07-11", false, false)]
    [InlineData("1961", "1961-01-01/1961-12-31", false, false)]
    [InlineData("196X", "1960-01-01/1969-12-31", false, false)]
    [InlineData("1961~", "1961-01-01/1961-12-31", true, false)]
    [InlineData("1961?", "1961-01-01/1961-12-31", false, true)]
    [InlineData("1961%", "1961-01-01/1961-12-31", true, true)]
    [InlineData("1961/..", "1961-01-01/..", false, false)]
    public void Parse_Edtf_GivesItsWindowAndQualifiers(string edtf, string window, bool approximate, bool uncertain)
    {
        var date = EvidenceDate.Parse(edtf);
        Assert.Equal(window, date.Outer.ToString());
        Assert.Equal((approximate, uncertain), (date.IsApproximate, date.IsUncertain));
    }

    [Theory]
    [InlineData("1961", "1961-01-01/1961-12-31")]
    [InlineData("1961~", "1961-01-01/1961-12-31 ~")]
    [InlineData("1961?", "1961-01-01/1961-12-31 ?")]
    [InlineData("1961%", "1961-01-01/1961-12-31 %")]
    public void ToString_SaysTheWindowAndItsQualifier(string edtf, string expected) => Assert.Equal(expected, EvidenceDate.Parse(edtf).ToString());

    [Fact]
    public void From_Null_ThrowsWithTheName() => Assert.Equal("date", Assert.Throws<ArgumentNullException>(() => EvidenceDate.From(null!)).ParamName);

    [Fact]
    public void Constructor_AnyDate_IsKept() => Assert.True(new EvidenceDate([new StatedWindow(DateWindow.Any, 1)]).Outer.IsAny);

    [Fact]
    public void Parse_NotEdtf_ThrowsWithTheTextAndPlace()
    {
        var error = Assert.Throws<EdtfException>(() => EvidenceDate.Parse("1961-13"));
        Assert.Equal("1961-13", error.Text);
    }

    [Fact]
    public void Parse_OutsideTheIsoCalendar_IsAnyDate() => Assert.True(EvidenceDate.Parse("Y170000002").Outer.IsAny);

    [Fact]
    public void Constructor_NoWindow_Throws()
    {
        var error = Assert.Throws<ArgumentException>(() => new EvidenceDate([]));
        Assert.Equal("windows", error.ParamName);
        Assert.StartsWith("A date needs at least one window.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Constructor_WindowsNotNested_AreCutToTheOneBefore()
    {
        var date = new EvidenceDate(
            [new StatedWindow(DateWindow.InYear(1961), 0.9), new StatedWindow(DateWindow.BetweenYears(1960, 1961), 0.8), new StatedWindow(DateWindow.InYear(1970), 0.7)]);
        Assert.Equal([new StatedWindow(DateWindow.InYear(1961), 0.9)], date.Windows);
    }

    [Fact]
    public void On_In_InYear_AreTheSameDateInThreeForms()
    {
        var day = new LocalDate(1961, 1, 1);
        Assert.Equal(EvidenceDate.In(DateWindow.On(day)), EvidenceDate.On(day));
        Assert.Equal(EvidenceDate.In(DateWindow.InYear(1961)), EvidenceDate.InYear(1961));
    }
}
