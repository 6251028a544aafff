using FsCheck.Xunit;
using NodaTime;

namespace Terminus.Tests.Combining;

[Properties(Arbitrary = [typeof(Gens)], MaxTest = 200)]
public class SpreadTest
{
    private static readonly LocalDate AsOf = new(2026, 11, 25);

    [Fact]
    public void Cells_NoEvidence_AreOneOverTheWholePeriod()
    {
        Spread spread = Dating.Of([], AsOf).Spread;
        SpreadCell cell = Assert.Single(spread.Cells);
        Assert.Equal("1700-01-01/2026-11-25", cell.Window.ToEdtf());
        Assert.Equal(1, cell.Mass);
    }

    [Fact]
    public void Median_CertainWindow_IsItsMiddleDay()
    {
        Spread spread = Dating.Of([new Opinion(Window(1, 9), 1)], AsOf).Spread;
        Assert.Equal(new LocalDate(1950, 1, 5), spread.Median);
        Assert.Equal(new LocalDate(1950, 1, 1), spread.Quantile(0));
        Assert.Equal(new LocalDate(1950, 1, 9), spread.Quantile(1));
        Assert.Equal(3.0 / 9, spread.MassIn(Window(4, 6)), 1e-12);
    }

    [Fact]
    public void Before_WindowThatEndsBeforeThePeriod_IsReportedAndNotSpread()
    {
        Spread spread = Dating.Of([new Opinion(DateWindow.BetweenYears(1600, 1650), 0.8)], AsOf).Spread;
        Assert.Equal(0.8, spread.Before, 1e-12);
        Assert.Equal(0.2, spread.Cells.Sum(c => c.Mass), 1e-12);
    }

    // Ten days, the first five of them twice: 0.15 of mass on each of these, 0.05 on each of the others.
    [Theory]
    [InlineData(0.35, 3)]
    [InlineData(0.75, 5)]
    [InlineData(0.88, 8)]
    [InlineData(1, 10)]
    public void Quantile_UnevenMass_IsTheDayThatReachesTheShare(double share, int day)
    {
        Spread spread = Dating.Of([new Opinion([new StatedWindow(Window(1, 10), 1), new StatedWindow(Window(1, 5), 0.5)])], AsOf).Spread;
        Assert.Equal(new LocalDate(1950, 1, day), spread.Quantile(share));
    }

    [Fact]
    public void Cell_Equality_IsThatOfDaysAndMass()
    {
        SpreadCell cell = Assert.Single(Dating.Of([], AsOf).Spread.Cells);
        SpreadCell same = Assert.Single(Dating.Of([], AsOf).Spread.Cells);
        SpreadCell otherDays = Assert.Single(Dating.Of([], AsOf.PlusDays(1)).Spread.Cells);
        SpreadCell otherMass = Dating.Of([new Opinion(DateWindow.Until(new LocalDate(1699, 12, 31)), 0.5)], AsOf).Spread.Cells[0];
        Assert.True(cell == same);
        Assert.False(cell != same);
        Assert.True(cell != otherDays);
        Assert.Equal(cell.Window, otherMass.Window);
        Assert.True(cell != otherMass);
    }

    [Fact]
    public void Before_DayOfTheOpinionBeforeThePeriod_IsAll()
    {
        Spread before = Dating.Of([], new LocalDate(1699, 12, 31)).Spread;
        Assert.Empty(before.Cells);
        Assert.Equal(1, before.Before);
        SpreadCell only = Assert.Single(Dating.Of([], new LocalDate(1700, 1, 1)).Spread.Cells);
        Assert.Equal(1, only.Window.Days);
    }

    [Fact]
    public void Before_WindowThatEndsOnTheFirstDay_IsSpread()
    {
        Spread spread = Dating.Of([new Opinion(DateWindow.Between(new LocalDate(1690, 1, 1), new LocalDate(1700, 1, 1)), 1)], AsOf).Spread;
        Assert.Equal(0, spread.Before);
        Assert.Equal(new LocalDate(1700, 1, 1), spread.Median);
    }

    [Fact]
    public void Cells_TotalConflict_AreNone()
    {
        Spread spread = Dating.Of([new Opinion(Window(1, 2), 1), new Opinion(Window(4, 5), 1)], AsOf).Spread;
        Assert.Empty(spread.Cells);
        Assert.Null(spread.Median);
        Assert.Equal(0, spread.Before);
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void Quantile_ShareOutsideItsRange_ThrowsWithTheValue(double share)
        => Assert.Equal(share, Assert.Throws<ArgumentOutOfRangeException>(() => Dating.Of([], AsOf).Spread.Quantile(share)).ActualValue);

    [Property]
    public void Cells_follow_each_other_without_gaps_and_hold_all_that_is_not_before(EvidenceSet set)
    {
        Spread spread = set.Date().Spread;
        if (spread.Cells.Count > 0)
        {
            Assert.Equal(1, spread.Cells.Sum(c => c.Mass) + spread.Before, 1e-9);
            Assert.Equal(
                spread.Cells.Skip(1).Select(c => c.Window.NotBefore!.Value), spread.Cells.SkipLast(1).Select(c => c.Window.NotAfter!.Value.PlusDays(1)));
        }
    }

    [Property]
    public void The_spread_of_a_window_lies_between_its_belief_and_its_plausibility(EvidenceSet set, DateWindow window)
    {
        Dating dating = set.Date();
        if (dating.Spread.Cells.Count > 0 && dating.Spread.Before == 0)
        {
            double mass = dating.Spread.MassIn(window);
            Assert.InRange(mass, dating.Belief(window) - 1e-9, dating.Plausibility(window) + 1e-9);
        }
    }

    [Property]
    public void A_larger_share_is_reached_no_earlier(EvidenceSet set)
    {
        Spread spread = set.Date().Spread;
        LocalDate?[] quantiles = [.. new[] { 0, 0.1, 0.25, 0.5, 0.75, 0.9, 1 }.Select(spread.Quantile)];
        Assert.Equal(quantiles.Order(), quantiles);
    }

    private static DateWindow Window(int first, int last)
        => DateWindow.Between(new LocalDate(1950, 1, first), new LocalDate(1950, 1, last));

    [Fact]
    public void Cells_CertainWindowInsideThePeriod_StillCoverThePeriod()
    {
        IReadOnlyList<SpreadCell> cells = Dating.Of([new Opinion(DateWindow.InYear(1950), 1)], AsOf).Spread.Cells;
        Assert.Equal(["1700-01-01/1949-12-31", "1950-01-01/1950-12-31", "1951-01-01/2026-11-25"], cells.Select(c => c.Window.ToEdtf()));
        Assert.Equal([0, 1, 0], cells.Select(c => c.Mass));
    }

    [Fact]
    public void Cells_PeriodThatStartsAfterTheOpinion_AreNoneAndAllIsBefore()
    {
        Spread spread = Dating.Of([new Opinion(DateWindow.InYear(1950), 0.9)], new LocalDate(1999, 12, 31), Assumptions.House with { SpreadFrom = 2000 }).Spread;
        Assert.Empty(spread.Cells);
        Assert.Equal(1, spread.Before);
    }

    [Fact]
    public void Cells_PeriodOfOneDay_AreThatDay()
    {
        Spread spread = Dating.Of([], new LocalDate(2000, 1, 1), Assumptions.House with { SpreadFrom = 2000 }).Spread;
        SpreadCell cell = Assert.Single(spread.Cells);
        Assert.Equal((DateWindow.On(new LocalDate(2000, 1, 1)), 1), (cell.Window, cell.Mass));
        Assert.Equal(0, spread.Before);
    }
}
