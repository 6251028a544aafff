using NodaTime;

namespace Terminus.Tests.Marks;

public class MarkEvidenceTest
{
    [Fact]
    public void ToEvidence_DateAndPending_AreTwoItems()
    {
        IReadOnlyList<Evidence> items = Inscription.Read("PAT. APR. 17-94 / PAT. PEND.").ToEvidence("back");

        var issued = Assert.IsType<PatentIssued>(items[0]);
        Assert.Equal(DateWindow.On(new LocalDate(1894, 4, 17)), issued.Issued.Outer);
        Assert.Equal("back", issued.Part);
        Assert.IsType<PatentPending>(items[1]);
        Assert.Equal(2, items.Count);
    }

    [Fact]
    public void ToEvidence_NumberAndDateThatAgree_AreOneItem()
    {
        // US 223,898 issued on 27 January 1880: the printed patent.
        var issued = Assert.IsType<PatentIssued>(Assert.Single(Inscription.Read("PAT. NO. 223,898 JAN. 27 1880").ToEvidence()));

        Assert.Equal(("223898", DateWindow.On(new LocalDate(1880, 1, 27))), (issued.Number, issued.Issued.Outer));
    }

    [Fact]
    public void ToEvidence_NumberAndDateThatDisagree_AreTwoItems()
        => Assert.Equal(2, Inscription.Read("PAT. 1,234,567 JUNE 4 1889").ToEvidence().Count);

    [Fact]
    public void ToEvidence_DateThatIsNoTuesday_IsUncertain()
    {
        var issued = Assert.IsType<PatentIssued>(Assert.Single(Inscription.Read("PAT. MAY 3 1876").ToEvidence()));

        Assert.True(issued.Issued.IsUncertain);
    }

    [Fact]
    public void ToEvidence_SixDigits_HoldsBothReadings()
    {
        var issued = Assert.IsType<PatentIssued>(Assert.Single(Inscription.Read("PAT. 123456").ToEvidence()));

        Assert.True(issued.Issued.Outer.Contains(new LocalDate(1872, 2, 6)));
        Assert.True(issued.Issued.Outer.Meets(DateWindow.InYear(1940)));
    }

    [Fact]
    public void ToEvidence_RegisteredDesign_IsARegistration()
    {
        // 345678 is of 1899: The National Archives, guide to registered designs.
        var registered = Assert.IsType<RightRegistered>(Assert.Single(Inscription.Read("Rd No 345678").ToEvidence()));

        Assert.True(registered.Registered.Outer.Meets(DateWindow.InYear(1899)));
    }

    [Fact]
    public void ToEvidence_NumberOfTwoRegisters_NamesWhatTheRangeIsOf()
    {
        // Utility 123,456 is of 1872; design 123,456 of 1940 (year tables of the Patent Office), with an allowance for recalled figures.
        Evidence item = Assert.Single(Inscription.Read("PAT. NO. 123456").ToEvidence());

        Assert.Contains(
            "The range holds every reading of the number: US utility patent 123456 (1872), US design patent 123456 (1939–1941).", item.Reasons.Select(ReasonText.Of));
    }

    [Fact]
    public void ToEvidence_WordingOfKnownPeriod_IsAMarkInUse()
    {
        var mark = Assert.IsType<MarkInUse>(Assert.Single(Inscription.Read("MADE IN OCCUPIED JAPAN").ToEvidence()));

        Assert.Equal("mk.occupied_japan", mark.Wording);
        Assert.Equal(["mk.occupied_japan"], mark.Entries);
    }

    [Theory]
    [InlineData("SINCE 1887")]
    [InlineData("A. MAKER 1002")]
    [InlineData("14K")]
    [InlineData("")]
    public void ToEvidence_NothingOfADate_HasNoItem(string text) => Assert.Empty(Inscription.Read(text).ToEvidence());
}
