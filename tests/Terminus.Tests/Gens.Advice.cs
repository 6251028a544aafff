using FsCheck;
using FsCheck.Fluent;
using Terminus.Tests.Advice;

namespace Terminus.Tests;

/// <summary>A density of a few cells of whole widths and masses, some of them empty.</summary>
public sealed class SmallDensity
{
    private readonly (int Width, int Mass)[] cells;

    internal SmallDensity((int Width, int Mass)[] cells) => this.cells = cells;

    internal int Count => cells.Length;

    internal StepDensity Build() => new(cells.Select(c => (double)c.Width), cells.Select(c => (double)c.Mass));

    internal StepDensity BuildInHalves()
        => new(cells.SelectMany(c => new[] { c.Width / 2.0, c.Width / 2.0 }), cells.SelectMany(c => new[] { c.Mass / 2.0, c.Mass / 2.0 }));

    /// <summary>The mass of each stretch of a unit's part.</summary>
    internal double[] Grid(int parts)
    {
        double total = cells.Sum(c => c.Mass);
        return [.. cells.SelectMany(c => Enumerable.Repeat(c.Mass / total / (c.Width * parts), c.Width * parts))];
    }

    public override string ToString() => string.Join(" ", cells.Select(c => $"{c.Mass}/{c.Width}"));
}

/// <summary>The outcomes of an observation on a small density, which sum to one in each cell.</summary>
public sealed class SmallObservation
{
    internal SmallObservation(SmallDensity density, double[][] likelihoods)
    {
        Density = density;
        Likelihoods = likelihoods;
    }

    internal SmallDensity Density { get; }

    internal double[][] Likelihoods { get; }

    public override string ToString() => Density + ": " + string.Join(" | ", Likelihoods.Select(l => string.Join(" ", l)));
}

public static partial class Gens
{
    public static Arbitrary<SmallDensity> SmallDensities() => Densities.ToArbitrary();

    public static Arbitrary<SmallObservation> SmallObservations()
        => (from density in Densities
            from outcomes in Gen.Choose(1, 4)
            from weights in Gen.ArrayOf(Gen.ArrayOf(Gen.Choose(0, 5), density.Count), outcomes)
            select new SmallObservation(density, SumToOne(weights, density.Count))).ToArbitrary();

    private static Gen<SmallDensity> Densities
        => from count in Gen.Choose(1, 6)
           from widths in Gen.ArrayOf(Gen.Choose(1, 6), count)
           from masses in Gen.ArrayOf(Gen.Choose(0, 4), count)
           select new SmallDensity([.. widths.Zip(masses, (w, m) => (w, m)).Select((c, i) => i == 0 ? (c.w, c.m + 1) : (c.w, c.m))]);

    private static double[][] SumToOne(int[][] weights, int cells)
        => [.. weights.Select((outcome, x) => Enumerable.Range(0, cells)
            .Select(cell => (outcome[cell] + (x == 0 ? 1.0 : 0)) / (weights.Sum(o => o[cell]) + 1.0)).ToArray())];
}
