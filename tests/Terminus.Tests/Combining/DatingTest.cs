using NodaTime;

namespace Terminus.Tests.Combining;

public class DatingTest
{
    private static readonly LocalDate AsOf = new(2026, 11, 25);

    // Three witnesses in whole years; the figures are worked out in fractions in TestData/combining (COMB-3win-dated, COMB-3win-conflict).
    private static readonly Opinion From1876 = new(DateWindow.From(new LocalDate(1876, 1, 1)), 0.98, "first");
    private static readonly Opinion In1883To1891 = new(DateWindow.BetweenYears(1883, 1891), 0.9, "second");
    private static readonly Opinion In1870To1890 = new(DateWindow.BetweenYears(1870, 1890), 0.8, "third");
    private static readonly Opinion In1850To1870 = new(DateWindow.BetweenYears(1850, 1870), 0.6, "third");

    private static readonly PatentPending Pending = new(EvidenceDate.InYear(1956), EvidenceDate.InYear(1961));

    [Fact]
    public void Interval_ThreeWitnessesThatAgree_IsTheShortestThatReachesTheLevel()
    {
        var dating = Dating.Of([From1876, In1883To1891, In1870To1890], AsOf);
        DatedInterval interval = dating.Interval(0.9)!;
        Assert.Equal("1883-01-01/1891-12-31", interval.ToEdtf());
        Assert.Equal((1883, 1891), (interval.EarliestYear, interval.LatestYear));
        Assert.Equal(0.9, interval.Belief, 1e-12);
        Assert.Equal(1, interval.Plausibility);
        Assert.True(interval.InsidePossible);
        Assert.Equal(0, dating.Conflict);
        Assert.Empty(dating.Disagreements);
        Assert.Equal("1883-01-01/1891-12-31", dating.Possible!.Value.ToEdtf());
    }

    [Fact]
    public void Interval_OneWitnessDisagrees_ReachesOutsideThePossible()
    {
        var dating = Dating.Of([From1876, In1883To1891, In1850To1870], AsOf);
        DatedInterval interval = dating.Interval(0.9)!;
        Assert.Equal("1850-01-01/1891-12-31", interval.ToEdtf());
        Assert.False(interval.InsidePossible);
        Assert.Equal(903.0 / 1003, interval.Belief, 1e-12);
        Assert.Equal(0.5988, dating.Conflict, 1e-12);
        Assert.False(dating.Qualified);
        Assert.Equal([(0, 2), (1, 2)], dating.Disagreements.Select(d => (d.First, d.Second!.Value)));
        Assert.All(dating.Disagreements, d => Assert.Equal(DisagreementLevel.Face, d.Level));
        Assert.Equal([0.98 * 0.6, 0.9 * 0.6], dating.Disagreements.Select(d => d.Mass));
    }

    [Fact]
    public void Disagreements_WindowsOpenAtTheStart_AreNone()
    {
        var dating = Dating.Of([new KnownBy(EvidenceDate.InYear(1950)), new KnownBy(EvidenceDate.InYear(1970))], AsOf);
        Assert.Empty(dating.Disagreements);
        Assert.Equal(0, dating.Conflict);
    }

    [Fact]
    public void Disagreements_AfterTheOpinion_NameTheDayOfTheOpinion()
    {
        Disagreement only = Assert.Single(Dating.Of([new Opinion(DateWindow.InYear(2030), 0.8)], AsOf).Disagreements);
        Assert.Null(only.Second);
        Assert.Equal(DisagreementCause.AfterOpinion, only.Cause);
        Assert.Equal(0.8, only.Mass);
        Assert.Equal(Period.DaysBetween(AsOf, new LocalDate(2030, 1, 1)), only.DaysApart);
        Assert.Equal("0 and today: 0.8 (Face, 1133 days apart)", only.ToString());
    }

    // Common practice, no source: "patent pending", filed 1956 and issued 1961, dates to 1956-1961.
    [Fact]
    public void Interval_PatentPending_IsFromFilingToIssue()
        => Assert.Equal((1956, 1961), Years(Dating.Of([Pending], AsOf)));

    // Common practice, no source: a piece that bears the number of that patent dates to 1961 or later.
    [Fact]
    public void Interval_PatentNumber_IsTheIssueOrLater()
    {
        var dating = Dating.Of([new PatentIssued(EvidenceDate.InYear(1961), "US", "utility")], AsOf);
        Assert.Equal("1961-01-01/..", dating.Interval(0.9)!.ToEdtf());
        Assert.True(dating.Interval(0.9)!.EndsToday);
        Assert.Equal(1961, dating.Possible!.Value.NotBefore!.Value.Year);
    }

    // Common practice, no source: a feature seen in adverts up to 1954 and another seen from 1955 tell two otherwise equal pieces apart.
    [Fact]
    public void Interval_OlderAndNewerForm_TellsTwoPiecesApart()
    {
        Evidence maker = new MakerActive("larkfield", EvidenceDate.InYear(1949), EvidenceDate.InYear(1968));
        Evidence older = new FeatureSeen(
            "invented.plain_bar", gone: EvidenceDate.InYear(1954), grade: EvidenceGrade.High, basis: EvidenceBasis.Event, endedByLaw: true);
        Evidence newer = new FeatureSeen(
            "invented.swivel_bar", EvidenceDate.InYear(1955), grade: EvidenceGrade.High, basis: EvidenceBasis.Event);
        (int? first, int last) = Years(Dating.Of([maker, older], AsOf));
        (int? later, int latest) = Years(Dating.Of([maker, newer], AsOf));
        Assert.True(last <= 1954 && later >= 1955, $"{first}-{last} and {later}-{latest}");
    }

    [Fact]
    public void Interval_NoEvidence_IsAnyDate()
    {
        var dating = Dating.Of([], AsOf);
        Assert.True(dating.Interval(0.9)!.IsAnyDate);
        Assert.Null(dating.Interval(0.9)!.ToEdtf());
        Assert.Equal((0d, false), (dating.Conflict, dating.Qualified));
        Assert.Single(dating.Steps);
    }

    [Fact]
    public void Interval_CertainWindowsExcludeEachOther_IsNull()
    {
        var dating = Dating.Of([new Opinion(DateWindow.InYear(1900), 1), new Opinion(DateWindow.InYear(1950), 1)], AsOf);
        Assert.Equal(1, dating.Conflict);
        Assert.True(dating.Qualified);
        Assert.Null(dating.Possible);
        Assert.Null(dating.Interval(0.5));
        Assert.Empty(dating.Steps);
        Assert.Equal(1, dating.Belief(DateWindow.Any));
        Assert.Equal((0, 1), (dating.Belief(DateWindow.InYear(1900)), dating.Plausibility(DateWindow.InYear(1900))));
    }

    [Fact]
    public void Interval_OnlyALastDay_IsOpenAtTheStart()
    {
        DatedInterval interval = Dating.Of([new KnownBy(EvidenceDate.InYear(1963))], AsOf).Interval(0.9)!;
        Assert.Equal("../1963-12-31", interval.ToEdtf());
        Assert.Null(interval.EarliestYear);
    }

    [Fact]
    public void Interval_Likely_LiesInsideTheWiderAnswer()
    {
        var dating = Dating.Of([Pending, new ModelAdvertised(EvidenceDate.InYear(1958))], AsOf);
        DatedInterval asked = dating.Interval(0.9)!;
        Assert.True(asked.Window.Contains(dating.Interval(Dating.LikelyLevel, asked)!.Window));
    }

    [Fact]
    public void Steps_MoreThanEightAnswers_AreThinnedToEightNarrowestFirst()
    {
        var windows = Enumerable.Range(0, 12).Select(i => new StatedWindow(DateWindow.BetweenYears(1900 + i, 1950 - i), 0.98 - (0.04 * i)));
        var dating = Dating.Of([new Opinion(windows)], AsOf);
        Assert.Equal(8, dating.Steps.Count);
        Assert.Equal(dating.Steps.OrderBy(s => s.Window.Days ?? int.MaxValue).Select(s => s.Window), dating.Steps.Select(s => s.Window));
        Assert.All(dating.Steps, s => Assert.Equal(dating.Belief(s.Window), s.Belief));
    }

    // Of thirteen answers the five that gain least over the one before go; the last gains least of all and stays.
    [Fact]
    public void Steps_MoreThanEightAnswers_KeepThoseThatGainMost()
    {
        double[] beliefs = [0.98, 0.90, 0.87, 0.82, 0.79, 0.74, 0.71, 0.66, 0.63, 0.58, 0.55, 0.50];
        Assert.Equal([0.50, 0.55, 0.63, 0.71, 0.79, 0.87, 0.98, 1], Steps(beliefs));
    }

    [Fact]
    public void Steps_TwoThatGainTheSame_LoseTheEarlier()
        => Assert.Equal([0.50, 0.60, 0.68, 0.76, 0.84, 0.92, 0.98, 1], Steps([0.98, 0.92, 0.84, 0.76, 0.68, 0.60, 0.55, 0.50]));

    [Fact]
    public void Of_OtherAssumptions_AreThoseOfTheAnswer()
    {
        Assumptions bold = Assumptions.House with { PatentIssuedFrom = 0.6 };
        var dating = Dating.Of([new PatentIssued(EvidenceDate.InYear(1961))], AsOf, bold);
        Assert.Same(bold, dating.Assumptions);
        Assert.Equal(0.6, dating.Belief(DateWindow.From(new LocalDate(1961, 1, 1))), 1e-12);
    }

    [Fact]
    public void Qualified_ConflictAtTheLimit_IsFalse()
    {
        Evidence[] apart = [new Opinion(DateWindow.InYear(1900), 1), new Opinion(DateWindow.InYear(1950), 0.5)];
        Assert.Equal(0.5, Dating.Of(apart, AsOf).Conflict);
        Assert.False(Dating.Of(apart, AsOf, Assumptions.House with { QualifiedAbove = 0.5 }).Qualified);
        Assert.True(Dating.Of(apart, AsOf, Assumptions.House with { QualifiedAbove = 0.49 }).Qualified);
    }

    [Fact]
    public void ToString_OfAnswers_IsTheWindowAndItsConfidence()
    {
        var dating = Dating.Of([new PatentIssued(EvidenceDate.InYear(1961)), new KnownBy(EvidenceDate.InYear(1970))], AsOf);
        Assert.Equal("1961-01-01/1970-12-31 (0.9)", dating.Interval(0.9)!.ToString());
        Assert.Equal("1961-01-01/1970-12-31 (0.667)", dating.Interval(2.0 / 3)!.ToString());
        Assert.Equal("any date (0.9)", Dating.Of([], AsOf).Interval(0.9)!.ToString());
        Assert.Equal("without 0: ../1970-12-31 (0.9)", dating.InfluenceOf(0, 0.9).ToString());
    }

    [Fact]
    public void InfluenceOf_RestThatExcludesItself_HasNoAnswer()
    {
        var dating = Dating.Of([new Opinion(DateWindow.InYear(1900), 1), new Opinion(DateWindow.InYear(1950), 1), new KnownBy(EvidenceDate.InYear(1970))], AsOf);
        Assert.Equal("without 2: no answer", dating.InfluenceOf(2, 0.9).ToString());
    }

    [Fact]
    public void InfluenceOf_TheItemThatSetsTheStart_ChangesBoth()
    {
        var dating = Dating.Of([new PatentIssued(EvidenceDate.InYear(1961), "US", "utility"), new KnownBy(EvidenceDate.InYear(1970))], AsOf);
        Influence patent = dating.InfluenceOf(0, 0.9);
        Assert.True(patent.ChangesPossible && patent.ChangesInterval);
        Assert.Equal("../1970-12-31", patent.PossibleWithout!.Value.ToEdtf());
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => dating.InfluenceOf(2, 0.9));
        Assert.Equal(2, error.ActualValue);
        Assert.StartsWith("The items are numbered from 0 to 1.", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void Interval_LevelOutsideItsRange_ThrowsWithTheValue(double level)
    {
        var dating = Dating.Of([], AsOf);
        Assert.Equal(level, Assert.Throws<ArgumentOutOfRangeException>(() => dating.Interval(level)).ActualValue);
        Assert.Equal(level, Assert.Throws<ArgumentOutOfRangeException>(() => dating.Interval(level, dating.Interval(0.9))).ActualValue);
    }

    [Fact]
    public void Of_ItemThatIsNull_ThrowsAndNamesItsIndex()
    {
        var error = Assert.Throws<ArgumentException>(() => Dating.Of([new Opinion(DateWindow.InYear(1950), 0.5), null!], AsOf));
        Assert.Contains("index 1 ", error.Message, StringComparison.Ordinal);
        Assert.Equal("evidence", error.ParamName);
    }

    [Fact]
    public void Of_MoreThan256DifferentItems_ThrowsAndIdenticalOnesCountOnce()
    {
        Evidence Witness(int i) => new Opinion(DateWindow.InYear(1950), 0.01, "witness " + i);
        Assert.Equal(256, Dating.Of(Enumerable.Range(0, 512).Select(i => Witness(i % 256)), AsOf).Evidence.Count);
        var error = Assert.Throws<ArgumentException>(() => Dating.Of(Enumerable.Range(0, 257).Select(Witness), AsOf));
        Assert.Contains("257", error.Message, StringComparison.Ordinal);
    }

    // The beliefs of the steps of one witness who states ever narrower windows.
    private static double[] Steps(double[] confidences)
    {
        var windows = confidences.Select((confidence, i) => new StatedWindow(DateWindow.BetweenYears(1900 + i, 1950 - i), confidence));
        IReadOnlyList<DatedInterval> steps = Dating.Of([new Opinion(windows)], AsOf).Steps;
        Assert.All(steps, step => Assert.Equal(step.Belief, step.Confidence, 1e-8));
        return [.. steps.Select(step => Math.Round(step.Belief, 6))];
    }

    private static (int? Earliest, int Latest) Years(Dating dating)
        => (dating.Interval(0.9)!.EarliestYear, dating.Interval(0.9)!.LatestYear);

    [Fact]
    public void Answers_AskedForAgain_AreTheSame()
    {
        var dating = Dating.Of([From1876, In1883To1891, In1850To1870], AsOf);
        Assert.Same(dating.Disagreements, dating.Disagreements);
        Assert.Same(dating.Readings, dating.Readings);
        Assert.Same(dating.Spread, dating.Spread);
        Assert.Same(dating.Steps, dating.Steps);
    }

    // Design: "1 - K < 1e-9 counts as 1, and then Belief is 0 (1 for any date), Plausibility 1, Interval null". Here 1 - K = 2e-10 or 2e-9.
    [Theory]
    [InlineData(1e-10, true)]
    [InlineData(1e-9, false)]
    public void Conflict_AllButTotal_CountsAsTotal(double doubt, bool total)
    {
        var dating = Dating.Of([new Opinion(DateWindow.InYear(1900), 1 - doubt), new Opinion(DateWindow.InYear(1950), 1 - doubt)], AsOf);
        Assert.Equal(total, dating.Conflict == 1);
        Assert.Equal(total, dating.Interval(0.9) is null);
        Assert.Equal(total, dating.Plausibility(DateWindow.InYear(1800)) == 1);
        Assert.Equal(total, dating.Belief(DateWindow.BetweenYears(1900, 1950)) == 0);
        Assert.All(dating.Readings, reading => Assert.Equal(total, reading.Weight is null));
    }

    // Design: "K is 0 exactly when all windows meet", however the sum of many products is rounded.
    [Fact]
    public void Conflict_OfManyItemsThatMeet_IsExactlyNone()
    {
        for (int count = 1; count <= 60; count++)
        {
            var windows = Enumerable.Range(0, count).Select(i => new Opinion(DateWindow.BetweenYears(1900 - (i % 7), 1950 + (i % 5)), 0.1 + (i % 9 / 10.1), "witness " + i));
            Assert.Equal(0d, Dating.Of(windows, AsOf).Conflict);
        }
    }

    [Fact]
    public void Interval_FirmEvidenceOfOneDay_IsThatDay()
    {
        var dating = Dating.Of([new Opinion(DateWindow.From(new LocalDate(1950, 5, 1)), 0.98), new Opinion(DateWindow.Until(new LocalDate(1950, 5, 1)), 0.97)], AsOf);
        Assert.Equal(DateWindow.On(new LocalDate(1950, 5, 1)), dating.Possible);
        Assert.Equal(("1950-05-01", true), (dating.Interval(0.9)!.ToEdtf(), dating.Interval(0.9)!.InsidePossible));
        Assert.Equal("1950-05-01", dating.Interval(Dating.LikelyLevel, dating.Interval(0.9))!.ToEdtf());
    }

    [Fact]
    public void Of_Null_ThrowsWithTheName() => Assert.Equal("evidence", Assert.Throws<ArgumentNullException>(() => Dating.Of(null!, AsOf)).ParamName);
}
