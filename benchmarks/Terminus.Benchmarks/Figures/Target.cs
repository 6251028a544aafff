namespace Terminus.Benchmarks.Figures;

/// <summary>A row of the table of ratios: a measured value beside its baseline, and the limit it was set, if any.</summary>
internal sealed record Target(string What, string Measured, string Baseline, double Ratio)
{
    /// <summary>What the limit is on where it is not on the ratio.</summary>
    internal double? Value { get; init; }

    internal double? AtMost { get; init; }

    internal double? AtLeast { get; init; }

    /// <summary>The limit in words.</summary>
    internal string Limit { get; init; } = "–";

    internal string Verdict => (Value ?? Ratio, AtMost, AtLeast) switch
    {
        (double.NaN, _, _) => "not measured",
        (var value, { } most, _) => value <= most ? "met" : "**missed**",
        (var value, _, { } least) => value >= least ? "met" : "**missed**",
        _ => "–",
    };

    internal Target NoMoreThan(double times) => this with { AtMost = times, Limit = FormattableString.Invariant($"at most {times} times") };

    internal Target NoLessThan(double times) => this with { AtLeast = times, Limit = FormattableString.Invariant($"at least {times} times") };

    public override string ToString() => $"| {What} | {Measured} | {Baseline} | {FigureText.Times(Ratio)} | {Limit} | {Verdict} |";
}
