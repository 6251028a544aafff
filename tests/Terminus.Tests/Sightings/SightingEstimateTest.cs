using FsCheck.Xunit;

namespace Terminus.Tests.Sightings;

public class SightingEstimateTest
{
    private static readonly Sighting OpenSince1955 = new(DateWindow.From(Examples.Date("1955-01-01")), "a");
    private static readonly Sighting OfX = new(DateWindow.InYear(1955), "a", "x");
    private static readonly Sighting OfY = new(DateWindow.InYear(1956), "b", "y");

    // The formulas by hand: two sightings a hundred days apart, so the range and the gap are the same; at 0.9 nine gaps.
    [Fact]
    public void Of_TwoSightings_IsNineGapsBeforeTheFirst()
    {
        Sighting[] sightings = Examples.Days("1950-04-11", "1950-01-01");
        SightingEstimate estimate = SightingEstimate.Of(sightings, SightingEnd.First, SightingMethod.Abrupt);
        Assert.Equal(SightingEstimator.Range, estimate.Estimator);
        Assert.Equal(Examples.Date("1950-01-01").PlusDays(-900), estimate.Bound);
        Assert.Equal(DateWindow.On(Examples.Date("1950-01-01").PlusDays(-100)), estimate.Point);
        Assert.Equal(DateWindow.On(Examples.Date("1950-01-01")), estimate.Extreme);
    }

    // Row SS-point (1943.41) with its years taken as whole years: at most the widening of the range by a year, and the year itself, later.
    [Fact]
    public void Of_SeventeenYears_IsNearThePrintedBound()
    {
        int[] years = [.. WorkedExample.Of("SS-point").Inputs("sightings").Select(y => (int)y)];
        SightingEstimate estimate = SightingEstimate.Of(Examples.Years(years), SightingEnd.Last, SightingMethod.Abrupt, 0.95);
        Assert.Equal(SightingEstimator.Range, estimate.Estimator);
        Assert.InRange(estimate.Bound!.Value, Examples.Date("1943-05-30"), Examples.Date("1944-08-17"));
    }

    // Row OLE-17yrs: point 1940.63 and one-sided bound 1950.46, for years as points; a whole year runs to its end.
    [Fact]
    public void Of_SeventeenYearsLinear_IsPointAndBoundOnly()
    {
        int[] years = [.. WorkedExample.Of("SS-point").Inputs("sightings").Select(y => (int)y)];
        SightingEstimate estimate = SightingEstimate.Of(Examples.Years(years), SightingEnd.Last, SightingMethod.Linear, 0.95);
        Assert.True(estimate.IsApproximate);
        Assert.Equal(1951, estimate.Bound!.Value.Year);
        Assert.Equal(1940, estimate.Point!.Value.NotBefore!.Value.Year);
        Assert.Equal(1941, estimate.Point!.Value.NotAfter!.Value.Year);
        Assert.Empty(estimate.Windows);
        Assert.Empty(estimate.EndWindows);
    }

    [Fact]
    public void Of_GradualEnd_NeverUsesTheRange()
        => Assert.Equal(
            SightingEstimator.GradualGap,
            SightingEstimate.Of(Examples.Years(1900, 1910, 1920, 1930), SightingEnd.First, SightingMethod.Gradual).Estimator);

    [Fact]
    public void Of_UnevenSightings_FallsBackOnTheGap()
        => Assert.Equal(
            SightingEstimator.Gap,
            SightingEstimate.Of(Examples.Years(1900, 1985, 1986, 1987, 1988, 1990), SightingEnd.First, SightingMethod.Abrupt).Estimator);

    [Fact]
    public void Of_FewSightingsByDefault_TakesTheBoundThatHoldsForBoth()
        => Assert.Equal(SightingEstimator.GradualGap, SightingEstimate.Of(Examples.Years(1900, 1910, 1920), SightingEnd.First).Estimator);

    [Fact]
    public void Of_ManySightingsCrowdedAtTheStartByDefault_CountsAsAbrupt()
    {
        int[] years = [.. Enumerable.Range(1900, 30), 1950, 1960];
        Assert.Equal(SightingEstimator.Gap, SightingEstimate.Of(Examples.Years(years), SightingEnd.First).Estimator);
    }

    [Fact]
    public void Of_Windows_StateTheCurveForAPieceAndForTheEnd()
    {
        Sighting[] sightings = Examples.Days("1950-01-01", "1950-04-11");
        SightingEstimate estimate = SightingEstimate.Of(sightings, SightingEnd.First, SightingMethod.Abrupt);
        Assert.Equal([0.98, 0.95, 0.9, 0.8, 0.66, 0.5], estimate.Windows.Select(w => w.Confidence));
        Assert.Equal(DateWindow.From(Examples.Date("1950-01-01").PlusDays(-900)), estimate.Windows[2].Window);
        Assert.Equal(
            DateWindow.Between(Examples.Date("1950-01-01").PlusDays(-900), Examples.Date("1950-01-01")), estimate.EndWindows[2].Window);
    }

    [Fact]
    public void Of_YearOnlyTie_IsBoundedByTheYear()
    {
        // The day of neither is known, so the gap is at most 364 days: nine of them before the first day of the year.
        SightingEstimate estimate = SightingEstimate.Of(Examples.Years(1955, 1955), SightingEnd.First, SightingMethod.Abrupt);
        Assert.Equal(Examples.Date("1955-01-01").PlusDays(-9 * 364), estimate.Bound);
    }

    // 98.5 gaps of 110 years after 1960 is after 9999; the gap at 0.5 is 2.4 times as long only.
    [Fact]
    public void Of_BoundOutsideTheCalendar_LeavesTheWindowOut()
    {
        SightingEstimate estimate = SightingEstimate.Of(Examples.Years(1850, 1960), SightingEnd.Last, SightingMethod.Gradual, 0.98);
        Assert.False(estimate.IsRefused);
        Assert.Null(estimate.Bound);
        Assert.DoesNotContain(estimate.Windows, w => w.Confidence == 0.98);
        Assert.Contains(estimate.Windows, w => w.Confidence == 0.5);
        Assert.Equal("sightings.beyond-calendar", estimate.Reasons[^1].Rule);
    }

    public static TheoryData<string, Sighting[], SightingMethod, double> Refusals => new()
    {
        { "sightings.none", [], SightingMethod.Auto, 0.9 },
        { "sightings.few", Examples.Years(1955), SightingMethod.Auto, 0.9 },
        { "sightings.few", [new(DateWindow.InYear(1955), "a"), new(DateWindow.InYear(1960), "A")], SightingMethod.Abrupt, 0.9 },
        { "sightings.open-date", [OpenSince1955, .. Examples.Years(1960, 1970)], SightingMethod.Auto, 0.9 },
        { "sightings.two-features", [OfX, OfY], SightingMethod.Auto, 0.9 },
        { "sightings.certainty", Examples.Years(1955, 1960), SightingMethod.Abrupt, 1 },
        { "sightings.tie", Examples.Days("1955-01-01", "1955-01-01", "1960-01-01"), SightingMethod.Gradual, 0.9 },
        { "sightings.no-spread", Examples.Days("1955-01-01", "1955-01-01"), SightingMethod.Abrupt, 0.9 },
        { "sightings.linear-few", Examples.Years(1955, 1956, 1957, 1958), SightingMethod.Linear, 0.9 },
        { "sightings.linear-level", Examples.Years(1955, 1956, 1957, 1958, 1959), SightingMethod.Linear, 0.995 },
        { "sightings.tie", Examples.Years(1955, 1955, 1957, 1958, 1959), SightingMethod.Linear, 0.9 },
        { "sightings.linear-flat", Examples.Years(1955, 1957, 1957, 1957, 1957), SightingMethod.Linear, 0.9 },
    };

    [Theory]
    [MemberData(nameof(Refusals))]
    public void Of_WhatCannotBeAnswered_IsRefusedWithItsReason(string rule, Sighting[] sightings, SightingMethod method, double confidence)
    {
        SightingEstimate estimate = SightingEstimate.Of(sightings, SightingEnd.First, method, confidence);
        Assert.True(estimate.IsRefused);
        Assert.Equal(rule, estimate.Refusal!.Rule);
        Assert.Equal(estimate.Refusal, estimate.Reasons[^1]);
        Assert.Null(estimate.Estimator);
        Assert.Null(estimate.Bound);
        Assert.Null(estimate.Point);
        Assert.Empty(estimate.Windows);
        Assert.DoesNotContain(rule, ReasonText.Of(estimate.Refusal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void Of_ConfidenceOutsideItsRange_Throws(double confidence)
        => Assert.Throws<ArgumentOutOfRangeException>(
            () => SightingEstimate.Of(Examples.Years(1955, 1956), SightingEnd.First, SightingMethod.Auto, confidence));

    [Fact]
    public void Of_NoNameOfItsEnum_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SightingEstimate.Of([], (SightingEnd)2));
        Assert.Throws<ArgumentOutOfRangeException>(() => SightingEstimate.Of([], SightingEnd.First, (SightingMethod)4));
        Assert.Throws<ArgumentNullException>(() => SightingEstimate.Of(null!, SightingEnd.First));
    }

    [Property(Arbitrary = [typeof(Gens)])]
    public void Moving_all_sightings_moves_every_answer(Sighting[] sightings, SightingEnd end, SightingMethod method, short days)
    {
        SightingEstimate moved = SightingEstimate.Of(sightings.Select(s => Moved(s, days)), end, method);
        SightingEstimate still = SightingEstimate.Of(sightings, end, method);
        Assert.Equal(still.Bound?.PlusDays(days), moved.Bound);
        Assert.Equal(still.Windows.Select(w => Moved(w, days)), moved.Windows);
        Assert.Equal(still.EndWindows.Select(w => Moved(w, days)), moved.EndWindows);
        Assert.Equal(still.Reasons, moved.Reasons);
    }

    [Property(Arbitrary = [typeof(Gens)])]
    public void The_last_end_is_the_first_end_of_time_turned_round(Sighting[] sightings, SightingMethod method)
    {
        SightingEstimate first = SightingEstimate.Of(sightings, SightingEnd.First, method);
        SightingEstimate last = SightingEstimate.Of(sightings.Select(Turned), SightingEnd.Last, method);
        Assert.Equal(first.Estimator, last.Estimator);
        Assert.Equal(first.Refusal, last.Refusal);
        Assert.Equal(first.Windows.Select(w => new StatedWindow(Turned(w.Window), w.Confidence)), last.Windows);
        Assert.Equal(first.EndWindows.Select(w => new StatedWindow(Turned(w.Window), w.Confidence)), last.EndWindows);
        Assert.Equal(first.Point is { } point ? Turned(point) : null, last.Point);
    }

    [Property(Arbitrary = [typeof(Gens)])]
    public void The_order_of_the_sightings_does_not_matter(Sighting[] sightings, SightingEnd end, SightingMethod method)
        => Assert.Equal(SightingEstimate.Of(sightings, end, method), SightingEstimate.Of(sightings.Reverse(), end, method));

    [Property(Arbitrary = [typeof(Gens)])]
    public void A_sighting_farther_inside_from_the_same_source_changes_nothing(Sighting[] sightings, SightingMethod method)
    {
        IEnumerable<Sighting> more = sightings.Concat(sightings.Select(s => Moved(s, 30)));
        SightingEstimate once = SightingEstimate.Of(sightings, SightingEnd.First, method);
        SightingEstimate twice = SightingEstimate.Of(more, SightingEnd.First, method);
        Assert.Equal(once.Sources, twice.Sources);
        Assert.Equal(once.Bound, twice.Bound);
        Assert.Equal(once.Windows, twice.Windows);
    }

    [Property(Arbitrary = [typeof(Gens)])]
    public void A_higher_confidence_never_gives_a_narrower_bound(Sighting[] sightings, SightingMethod method, byte low, byte high)
    {
        double lower = (1 + Math.Min(low, high)) / 257.0;
        double higher = (1 + Math.Max(low, high)) / 257.0;
        SightingEstimate narrow = SightingEstimate.Of(sightings, SightingEnd.First, method, lower);
        SightingEstimate wide = SightingEstimate.Of(sightings, SightingEnd.First, method, higher);
        Assert.True(wide.Bound is null || wide.Bound <= narrow.Bound);
    }

    [Property(Arbitrary = [typeof(Gens)])]
    public void The_windows_are_nested_and_hold_the_extreme_sighting(Sighting[] sightings, SightingEnd end, SightingMethod method)
    {
        SightingEstimate estimate = SightingEstimate.Of(sightings, end, method);
        foreach (IReadOnlyList<StatedWindow> windows in new[] { estimate.Windows, estimate.EndWindows })
        {
            for (int i = 0; i < windows.Count; i++)
            {
                Assert.True(windows[i].Window.Contains(estimate.Extreme!.Value));
                Assert.True(i == 0 || windows[i - 1].Window.Contains(windows[i].Window));
                Assert.True(i == 0 || windows[i - 1].Confidence > windows[i].Confidence);
            }
        }
    }

    [Property(Arbitrary = [typeof(Gens)])]
    public void A_bound_from_windows_is_no_narrower_than_from_any_days_in_them(Sighting[] sightings, byte share)
    {
        Sighting[] sharp = [.. sightings.Select(s => new Sighting(Inside(s.Date, share), s.Source, s.Feature))];
        SightingEstimate wide = SightingEstimate.Of(sightings, SightingEnd.First, SightingMethod.Gradual);
        SightingEstimate narrow = SightingEstimate.Of(sharp, SightingEnd.First, SightingMethod.Gradual);
        Assert.True(narrow.IsRefused || wide.Bound <= narrow.Bound);
    }

    [Property(Arbitrary = [typeof(Gens)])]
    public void Every_reason_has_words(Sighting[] sightings, SightingEnd end, SightingMethod method)
        => Assert.All(
            SightingEstimate.Of(sightings, end, method).Reasons,
            r => Assert.DoesNotContain(r.Rule, ReasonText.Of(r), StringComparison.Ordinal));

    private static DateWindow Inside(DateWindow window, byte share)
    {
        int day = window.FirstDay + ((window.LastDay - window.FirstDay) * share / 255);
        return DateWindow.OfDays(day, day);
    }

    private static Sighting Moved(Sighting sighting, int days)
        => new(DateWindow.OfDays(sighting.Date.FirstDay + days, sighting.Date.LastDay + days), sighting.Source, sighting.Feature);

    private static StatedWindow Moved(StatedWindow stated, int days)
    {
        DateWindow window = stated.Window;
        return new(
            DateWindow.OfDays(window.FirstDay == 0 ? 0 : window.FirstDay + days, window.LastDay == 0 ? 0 : window.LastDay + days),
            stated.Confidence);
    }

    private static Sighting Turned(Sighting sighting) => new(Turned(sighting.Date), sighting.Source, sighting.Feature);

    private static DateWindow Turned(DateWindow window)
    {
        int turn = 2 * DayNumber.Of(1900, 1, 1);
        return DateWindow.OfDays(window.LastDay == 0 ? 0 : turn - window.LastDay, window.FirstDay == 0 ? 0 : turn - window.FirstDay);
    }

    // The formulas by hand: three sightings fifty days apart; the point lies half the range, a range over n - 1, before the first.
    [Fact]
    public void Of_ThreeSightings_HasItsPointOneMeanGapBeforeTheFirst()
    {
        SightingEstimate estimate = SightingEstimate.Of(Examples.Days("1950-01-01", "1950-02-20", "1950-04-11"), SightingEnd.First, SightingMethod.Abrupt);
        Assert.Equal(SightingEstimator.Range, estimate.Estimator);
        Assert.Equal(DateWindow.On(Examples.Date("1950-01-01").PlusDays(-50)), estimate.Point);
        Assert.Equal("0.27", Assert.Single(estimate.Reasons, r => r.Rule == "sightings.range")["years"]);
    }

    /// <summary>What is said of how an estimate came about.</summary>
    public static TheoryData<Sighting[], SightingMethod, string[]> Told => new()
    {
        { Examples.Days("1950-01-01", "1950-02-20", "1950-04-11"), SightingMethod.Abrupt, ["sightings.sources", "sightings.even", "sightings.range"] },
        { Examples.Years(1900, 1910, 1920), SightingMethod.Auto, ["sightings.sources", "sightings.windows", "sightings.auto-gradual", "sightings.gradual-gap"] },
        {
            Examples.Years([.. Enumerable.Range(1900, 30), 1950, 1960]), SightingMethod.Auto,
            ["sightings.sources", "sightings.windows", "sightings.auto-abrupt", "sightings.uneven", "sightings.gap"]
        },
        {
            [new(DateWindow.On(new(1950, 1, 1)), "a"), new(DateWindow.InYear(1952), "b")], SightingMethod.Gradual,
            ["sightings.sources", "sightings.windows", "sightings.gradual-gap"]
        },
        { Examples.Days("1950-01-01", "1950-02-01", "1950-04-01", "1951-01-01", "1952-01-01"), SightingMethod.Linear, ["sightings.sources", "sightings.linear"] },
    };

    [Theory]
    [MemberData(nameof(Told))]
    public void Of_AnEstimate_SaysHowItCameAbout(Sighting[] sightings, SightingMethod method, string[] rules)
    {
        SightingEstimate estimate = SightingEstimate.Of(sightings, SightingEnd.First, method);
        Assert.Equal(rules, estimate.Reasons.Select(r => r.Rule));
        Assert.Equal((DateText.Digits(sightings.Length), DateText.Digits(sightings.Length)), (estimate.Reasons[0]["given"], estimate.Reasons[0]["sources"]));
        Assert.DoesNotContain(estimate.Reasons, r => r.Parameters.Any(p => p.Value.Length == 0));
    }

    [Fact]
    public void Of_RefusedSightings_NameWhatIsWrong()
    {
        Assert.Equal("sightings.open-date(date=1955-01-01/.., source=a)", SightingEstimate.Of([OpenSince1955, .. Examples.Years(1960, 1970)], SightingEnd.First).Refusal!.ToString());
        Assert.Equal("sightings.two-features(first=x, second=y)", SightingEstimate.Of([OfY, OfX], SightingEnd.First).Refusal!.ToString());
        Assert.Equal(
            "sightings.linear-few(sources=4, needed=5)", SightingEstimate.Of(Examples.Years(1955, 1956, 1957, 1958), SightingEnd.First, SightingMethod.Linear).Refusal!.ToString());
        Assert.Equal(
            "sightings.linear-level(sources=5, confidence=0.995)",
            SightingEstimate.Of(Examples.Years(1955, 1956, 1957, 1958, 1959), SightingEnd.First, SightingMethod.Linear, 0.995).Refusal!.ToString());
    }

    [Fact]
    public void ToString_OfASighting_IsItsDateSourceAndFeature()
    {
        Assert.Equal("1955-01-01/1955-12-31 a (x)", OfX.ToString());
        Assert.Equal("1955-01-01/.. a", OpenSince1955.ToString());
    }
}
