namespace Terminus.Tests.Marks;

public class InscriptionTest
{
    [Fact]
    public void Read_DateWordingAndMetal_ReadsAllThreeAndSettlesTheCentury()
    {
        Inscription read = Inscription.Read("PAT. APR. 17-94 / PAT. PEND. / 1/20 12K G.F.");

        Assert.Equal([MarkKind.PatentDate, MarkKind.Pending, MarkKind.Metal], read.Marks.Select(m => m.Kind));
        Assert.Equal("1894-04-17", read.Marks[0].Date);
        Assert.Equal("gold filled", read.Marks[2].Right);
        Assert.Contains("17 April 1894 was a Tuesday, the day US patents issue.", read.Marks[0].Reasons.Select(ReasonText.Of));
        Assert.DoesNotContain(read.Unread, u => u.HasWords);
    }

    [Fact]
    public void Read_DateThatIsNoTuesday_IsUsableAndSaysSo()
    {
        // 3 May 1876 was a Wednesday (a cap in a museum's record reads so); a calendar says as much.
        Mark mark = Assert.Single(Inscription.Read("PAT. MAY 3 1876").Marks);

        Assert.Equal("1876-05-03", mark.Date);
        Assert.Contains(mark.Reasons, r => r.Rule == "marks.not-tuesday" && r["weekday"] == "Wednesday");
    }

    [Fact]
    public void Read_TwoDigitYearThatTheWeekdayDoesNotSettle_KeepsBothCenturies()
    {
        // Neither 16 April 1894 nor 16 April 1994 was a Tuesday.
        Mark mark = Assert.Single(Inscription.Read("PAT. APR. 16-94").Marks);

        Assert.Equal("1894-04-16", mark.Date);
        Assert.Contains(mark.Alternatives, a => a.Date == "1994-04-16");
    }

    [Fact]
    public void Read_SixDigitsOnJewellery_KeepsUtilityAndDesign()
    {
        // Utility 123,456 is of 1872; design 123,456 of 1940 (year tables of the Patent Office).
        Mark mark = Assert.Single(Inscription.Read("PAT. 123456").Marks);
        Mark design = Assert.Single(mark.Alternatives);

        Assert.Equal((MarkKind.PatentNumber, "utility"), (mark.Kind, mark.Right));
        Assert.Equal((MarkKind.DesignNumber, "design"), (design.Kind, design.Right));
        Assert.True(mark.Windows[0].Window.Contains(new NodaTime.LocalDate(1872, 2, 6)));
        Assert.True(DateWindow.InYear(1940).Meets(design.Windows[0].Window));
    }

    [Fact]
    public void Read_DateOfMoreDaysThanAreTried_HoldsEachOfThem()
    {
        // 13 June 1905 and 10 June 1851 were Tuesdays, as every calendar shows.
        Mark mark = Assert.Single(Inscription.Read("PAT. JUNE 1? 1???").Marks);

        Assert.True(mark.Windows[0].Window.Contains(new NodaTime.LocalDate(1905, 6, 13)));
        Assert.True(mark.Windows[0].Window.Contains(new NodaTime.LocalDate(1851, 6, 10)));
    }

    [Fact]
    public void Read_LostDigits_GivesThePatternAndAWindow()
    {
        Mark mark = Assert.Single(Inscription.Read("PAT. 2,4?4,1?2").Marks);

        Assert.Equal("24?41?2", mark.Number);
        Assert.True(mark.Windows.Count > 0);
    }

    [Fact]
    public void Read_LostMonth_IsSettledByTheWeekday()
    {
        // Of 4 January, June and July 1889 only 4 June was a Tuesday.
        Mark mark = Assert.Single(Inscription.Read("PAT. J[illegible] 4 1889").Marks);

        Assert.Equal("1889-06-04", mark.Date);
    }

    [Fact]
    public void Read_ContradictingNumberAndDate_GivesBoth()
    {
        Inscription read = Inscription.Read("PAT. 1,234,567 JUNE 4 1889");

        Assert.Equal([MarkKind.PatentNumber, MarkKind.PatentDate], read.Marks.Select(m => m.Kind));
        Assert.Equal(read.Marks[0].Group, read.Marks[1].Group);
    }

    [Theory]
    [InlineData("MADE IN OCCUPIED JAPAN", "mk.occupied_japan", "1945-09-02/1952-04-28")]
    [InlineData("NIPPON", "mk.nippon", "1891-03-01/1921-08-31")]
    [InlineData("WEST GERMANY", "mk.west_germany", "1949-05-23/1990-10-02")]
    public void Read_WordingOfKnownPeriod_GivesThePeriod(string text, string wording, string window)
    {
        // Sources: SCAPIN 1535 and the end of the occupation; US Treasury notice of 1921; the founding and the end of two German states.
        Mark mark = Assert.Single(Inscription.Read(text).Marks);

        Assert.Equal(wording, mark.WordingId);
        Assert.Equal(window, mark.Windows[^1].Window.ToEdtf());
    }

    [Theory]
    [InlineData("SINCE 1887")]
    [InlineData("ESTABLISHED 1871")]
    [InlineData("1889")]
    [InlineData("No. 1847")]
    public void Read_YearOrNumberOfSomethingElse_HasNoWindow(string text)
    {
        Mark mark = Assert.Single(Inscription.Read(text).Marks);

        Assert.Equal(MarkKind.Other, mark.Kind);
        Assert.Empty(mark.Windows);
    }

    [Fact]
    public void Read_WithRegistersOfTheUser_TakesItsWindowsFromThem()
    {
        var own = new Register("GB", "patent", [new RegisterRow(1, 500_000, DateWindow.InYear(1901), RowOrigin.Source, "an invented gazette")]);
        Mark mark = Assert.Single(Inscription.Read("BRIT. PAT. 456789", RegisterSet.BuiltIn.With(own)).Marks);

        Assert.Equal(DateWindow.InYear(1901), Assert.Single(mark.Windows).Window);
    }

    [Fact]
    public void Unread_WordsAndSigns_AreToldApart()
    {
        Inscription read = Inscription.Read("A. MAKER / PAT. PEND. - STERLING");

        Assert.Equal([(0, "A. MAKER / ", true), (21, " - ", false)], read.Unread.Select(part => (part.Start, part.ToString(), part.HasWords)));
        Assert.True(Assert.Single(Inscription.Read("7").Unread).HasWords);
    }

    [Fact]
    public void Groups_MarksOfOneStamp_AreOneAndRiseAlongTheText()
        => Assert.Equal([1, 1, 2, 3], Inscription.Read("PAT. 2345678, 2345679 / STERLING / PAT. PEND.").Marks.Select(mark => mark.Group));

    [Fact]
    public void Read_TextAtTheLimit_IsRead()
        => Assert.Equal(MarkKind.Pending, Assert.Single(Inscription.Read("PAT. PEND.".PadRight(Inscription.LongestText)).Marks).Kind);

    [Fact]
    public void Read_TextBeyondTheLimit_IsUnreadAsAWhole()
    {
        string text = "PAT. PEND.".PadRight(Inscription.LongestText + 1);
        Inscription read = Inscription.Read(text);

        Assert.Empty(read.Marks);
        Assert.Equal(text, Assert.Single(read.Unread).Text);
        Assert.Empty(read.ToEvidence());
    }

    [Theory]
    [InlineData("PAT. NO. -5")]
    [InlineData("No. -5")]
    [InlineData("-5")]
    [InlineData("PATENT -123")]
    public void Read_MinusBeforeAFewDigits_IsNoNumber(string text)
    {
        Inscription read = Inscription.Read(text);

        Assert.DoesNotContain(read.Marks, m => m.Number is not null);
        Assert.Contains(read.Unread, u => u.HasWords);
    }

    [Theory]
    [InlineData("PATENT - 2345678", "2345678")]
    [InlineData("PAT. NO.-2345678", "2345678")]
    [InlineData("DES. D-123456", "123456")]
    public void Read_DashBeforeANumber_IsPassedOver(string text, string number)
        => Assert.Contains(Inscription.Read(text).Marks, m => m.Number == number);

    [Fact]
    public void Equals_AnotherTextOrOtherRegisters_IsFalse()
    {
        Assert.NotEqual(Inscription.Read("PAT. 123456"), Inscription.Read("PAT. 123457"));
        Assert.NotEqual(Inscription.Read("PAT. 123456").Marks[0], Inscription.Read("PAT. 123456").Marks[0].Alternatives[0]);
        Assert.False(Inscription.Read("PAT. PEND.").Equals(null));
    }

    // Found by fuzzing: the sign before a country was in two marks.
    [Fact]
    public void Read_SignBeforeACountryBehindADate_IsInOneMark()
    {
        Inscription read = Inscription.Read("PAT. 1710# FRANCE 188");

        Assert.All(read.Marks.Zip(read.Marks.Skip(1)), pair => Assert.True(pair.First.Start + pair.First.Length <= pair.Second.Start));
    }

    [Fact]
    public void Read_Null_Throws() => Assert.Throws<ArgumentNullException>(() => Inscription.Read(null!));

    [Fact]
    public void Read_Empty_IsEmpty()
    {
        Inscription read = Inscription.Read(string.Empty);

        Assert.Empty(read.Marks);
        Assert.Empty(read.Unread);
    }
}
