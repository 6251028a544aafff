using System.Numerics;

namespace Terminus.Tests.Sightings;

// Published records of silence; rows SO93-*, SR03-*, MCINERNY-*, JE10-* of worked-examples.json.
public class SilenceFormulasTest
{
    private static readonly double[] Ferret = WorkedExample.Of("SO93-ferret-declining").Inputs("months");

    [Fact]
    public void AtConstantRate_MonkSeal_IsThePublishedProbability()
    {
        WorkedExample row = WorkedExample.Of("SO93-monkseal-p");
        Near.Relative(row.Expected("p"), SilenceFormulas.AtConstantRate(4, 1952 - 1915, 1992 - 1915), 1e-12);
        Near.Absolute(row.Expected("p_float"), SilenceFormulas.AtConstantRate(4, 1952 - 1915, 1992 - 1915), 1e-6);
    }

    [Fact]
    public void BayesFactor_MonkSeal_IsThePublishedFactor()
    {
        WorkedExample row = WorkedExample.Of("SO93-monkseal-bayes");
        double factor = SilenceFormulas.BayesFactor((int)row.Input("n"), row.Input("t_n"), row.Input("T"));
        Near.Absolute(row.Expected("bayes_factor_H0_over_H1"), factor, 1e-6);
        Near.Absolute(row.Expected("P_extant"), factor / (1 + factor), 1e-6);
    }

    [Fact]
    public void AtConstantRate_Ferret_IsTheRow()
    {
        WorkedExample row = WorkedExample.Of("SO93-ferret-stationary");
        Near.Relative(row.Expected("p"), SilenceFormulas.AtConstantRate(28, 153, row.Input("T")), 1e-5);
    }

    [Fact]
    public void AtFallingRate_Ferret_IsTheRow()
    {
        WorkedExample row = WorkedExample.Of("SO93-ferret-declining");
        int sum = (int)Ferret.Sum();
        Assert.Equal(row.Expected("s"), sum);
        Near.Relative(row.Expected("F_tn"), Falling(sum, 153, 1), 1e-5);
        Near.Relative(row.Expected("F_T"), Falling(sum, 229, 1), 1e-5);
        Near.Relative(row.Expected("p"), SilenceFormulas.AtFallingRate(28, sum, 153, 229), 1e-5);
    }

    // The upper bound is where p falls to 0.05; times are counted in thousandths of a month.
    [Fact]
    public void AtFallingRate_Ferret_ReachesFivePerCentAtTheRowsBound()
    {
        BigInteger upper = new(Math.Round(WorkedExample.Of("SO93-ferret-declining").Expected("upper95") * 1000));
        BigInteger sum = new(Ferret.Sum() * 1000);
        Assert.True(SilenceFormulas.AtFallingRate(28, sum, 153_000, upper - 1) > 0.05);
        Assert.True(SilenceFormulas.AtFallingRate(28, sum, 153_000, upper + 1) < 0.05);
    }

    // The row's point is t + F(t) / F'(t); the slope is taken over two millionths of a month.
    [Fact]
    public void FallingNumerator_Ferret_GivesTheRowsPoint()
    {
        int sum = (int)Ferret.Sum();
        double slope = (Falling(sum, 153_000_001, 1_000_000) - Falling(sum, 152_999_999, 1_000_000)) / 2e-6;
        Near.Absolute(WorkedExample.Of("SO93-ferret-declining").Expected("point"), 153 + (Falling(sum, 153, 1) / slope), 1e-3);
    }

    [Fact]
    public void ByLastGap_Orchid_IsThePublishedProbability()
    {
        WorkedExample row = WorkedExample.Of("SR03-orchid");
        double[] years = row.Inputs("sightings");
        Assert.Equal(row.Expected("p"), SilenceFormulas.ByLastGap(years[^2], years[^1], row.Input("T")), 12);
    }

    [Fact]
    public void ByTrials_Row_IsExact()
    {
        WorkedExample row = WorkedExample.Of("MCINERNY-closed");
        Assert.Equal(row.Expected("p"), SilenceFormulas.ByTrials((int)row.Input("n"), row.Input("t_n"), row.Input("T")), 12);
    }

    [Fact]
    public void ByGapTrend_Ferret_IsTheRow()
    {
        WorkedExample row = WorkedExample.Of("JE10-ferret");
        Near.Absolute(row.Expected("stationary_p"), SilenceFormulas.ByGapTrend(Ferret, row.Input("T"), withTrend: false), 1e-6);
        Near.Absolute(row.Expected("trend_p"), SilenceFormulas.ByGapTrend(Ferret, row.Input("T"), withTrend: true), 1e-6);
    }

    private static double Falling(int sum, BigInteger x, int scale)
        => SilenceFormulas.Ratio(
            SilenceFormulas.FallingNumerator(28, (BigInteger)sum * scale, x), BigInteger.Pow((BigInteger)sum * scale, 27));
}
