using FsCheck.Xunit;
using NodaTime;

namespace Terminus.Tests.Sightings;

public class SightingSilenceTest
{
    // The ferret record in months after January 1972 (rows SO93-ferret-*), a month written as a day: the formulas know no unit. A sighting
    // at 0 marks the start.
    [Fact]
    public void Of_Ferret_IsTheRows()
    {
        LocalDate start = new(1972, 1, 1);
        double[] months = [0, .. WorkedExample.Of("SO93-ferret-declining").Inputs("months")];
        SightingSilence silence = SightingSilence.Of(
            months.Select(m => new Sighting(DateWindow.On(start.PlusDays((int)m)), DateText.Digits((int)m))),
            SightingEnd.Last,
            start.PlusDays(229));
        Assert.Equal(29, silence.Sources);
        Near.Relative(WorkedExample.Of("SO93-ferret-stationary").Expected("p"), silence.AtConstantRate!.Value, 1e-5);
        Near.Relative(WorkedExample.Of("SO93-ferret-declining").Expected("p"), silence.AtFallingRate!.Value, 1e-5);
    }

    // Row SR03-orchid: one in ten.
    [Fact]
    public void Of_Orchid_IsThePublishedProbability()
    {
        LocalDate start = new(1900, 1, 1);
        IEnumerable<Sighting> sightings = WorkedExample.Of("SR03-orchid").Inputs("sightings")
            .Select(y => new Sighting(DateWindow.On(start.PlusDays((int)y - 1900)), DateText.Digits((int)y)));
        Assert.Equal(0.1, SightingSilence.Of(sightings, SightingEnd.Last, start.PlusDays(96)).ByLastGap!.Value, 12);
    }

    // Row SO93-monkseal-p: the sighting of 1915 starts the record.
    [Fact]
    public void Of_MonkSealTurnedRound_IsThePublishedProbability()
    {
        LocalDate start = new(1900, 1, 1);
        IEnumerable<Sighting> sightings = WorkedExample.Of("SO93-monkseal-p").Inputs("sightings")
            .Select(y => new Sighting(DateWindow.On(start.PlusDays(1900 - (int)y)), DateText.Digits((int)y)));
        SightingSilence silence = SightingSilence.Of(sightings, SightingEnd.First, start.PlusDays(1900 - 1992));
        Near.Absolute(WorkedExample.Of("SO93-monkseal-p").Expected("p_float"), silence.AtConstantRate!.Value, 1e-6);
    }

    [Fact]
    public void Of_SearchThatStopsAtTheLastSighting_IsRefused()
        => Assert.Equal(
            "sightings.no-silence",
            SightingSilence.Of(Examples.Years(1950, 1955), SightingEnd.Last, new LocalDate(1955, 12, 31)).Refusal!.Rule);

    [Fact]
    public void Of_OneSource_IsRefused()
        => Assert.Equal(
            "sightings.few",
            SightingSilence.Of(Examples.Years(1950), SightingEnd.Last, new LocalDate(1960, 1, 1)).Refusal!.Rule);

    [Property(Arbitrary = [typeof(Gens)])]
    public void A_longer_search_never_makes_the_silence_likelier(Sighting[] sightings, SightingEnd end, ushort days)
    {
        int sign = end == SightingEnd.First ? -1 : 1;
        LocalDate near = new(end == SightingEnd.First ? 1899 : 1977, 6, 1);
        SightingSilence shorter = SightingSilence.Of(sightings, end, near);
        SightingSilence longer = SightingSilence.Of(sightings, end, near.PlusDays(sign * days));
        foreach ((double? p, double? q) in new[]
        {
            (shorter.AtConstantRate, longer.AtConstantRate),
            (shorter.AtFallingRate, longer.AtFallingRate),
            (shorter.ByLastGap, longer.ByLastGap),
        })
        {
            Assert.Equal(p is null, q is null);
            Assert.True(p is null || (q >= 0 && q <= p && p <= 1));
        }
    }

    [Fact]
    public void Of_RefusedAndAnswered_SaysWhich()
    {
        Sighting[] sightings = Examples.Days("1950-01-01", "1951-01-01", "1952-01-01");
        SightingSilence refused = SightingSilence.Of(sightings, SightingEnd.Last, new NodaTime.LocalDate(1952, 1, 1));
        Assert.Equal((true, "sightings.no-silence(searched=1952-01-01)"), (refused.IsRefused, refused.Refusal!.ToString()));
        Assert.False(SightingSilence.Of(sightings, SightingEnd.Last, new NodaTime.LocalDate(1953, 1, 1)).IsRefused);
    }

    // The rates need a range, and the falling one a sighting inside it.
    [Fact]
    public void Of_FewSightings_LeavesOutTheRatesThatNeedMore()
    {
        LocalDates(2, out SightingSilence two);
        LocalDates(3, out SightingSilence three);
        Assert.Equal((true, false, true), (two.AtConstantRate is not null, two.AtFallingRate is not null, two.ByLastGap is not null));
        Assert.Equal((true, true, true), (three.AtConstantRate is not null, three.AtFallingRate is not null, three.ByLastGap is not null));
        SightingSilence tied = SightingSilence.Of(Examples.Days("1950-01-01", "1950-01-01", "1950-01-01"), SightingEnd.Last, new NodaTime.LocalDate(1960, 1, 1));
        Assert.Equal((null, null), (tied.AtConstantRate, tied.AtFallingRate));

        static void LocalDates(int count, out SightingSilence silence)
            => silence = SightingSilence.Of(
                Examples.Days([.. new[] { "1950-01-01", "1951-01-01", "1952-01-01" }.Take(count)]), SightingEnd.Last, new NodaTime.LocalDate(1953, 1, 1));
    }
}
