using FsCheck;
using FsCheck.Fluent;

namespace Terminus.Tests;

/// <summary>A number of a shipped register: any number of a series, often at an end of a row.</summary>
/// <param name="Register">The register.</param>
/// <param name="Series">The index of the series.</param>
/// <param name="Number">The number.</param>
/// <param name="Other">Another number of the series.</param>
public sealed record RegisteredNumber(Register Register, int Series, int Number, int Other)
{
    internal NumberSeries In => Register.Series[Series];

    /// <summary>The number as written, with the year of a series that counts anew each year.</summary>
    internal string Text => Written(DateText.Digits(Number));

    internal string Written(string digits) => In.Name.Length == 4 ? digits + "/" + In.Name : digits;
}

public static partial class Gens
{
    /// <summary>Numbers of the shipped registers.</summary>
    public static Arbitrary<RegisteredNumber> RegisteredNumbers()
        => Arb.From(
            from register in Gen.Elements(Shipped)
            from series in Gen.Choose(0, register.Series.Count - 1)
            from number in NumberIn(register.Series[series])
            from other in NumberIn(register.Series[series])
            select new RegisteredNumber(register, series, number, other));

    private static Register[] Shipped
        => [.. RegisterSet.BuiltIn.Offices.SelectMany(o => RegisterSet.BuiltIn.Rights(o).Select(r => RegisterSet.BuiltIn.Find(o, r)!))];

    private static Gen<int> NumberIn(NumberSeries series)
        => Gen.Frequency(
            (3, Gen.Choose(series.First, series.Last)),
            (1, from row in Gen.Elements<RegisterRow>([.. series.Rows])
                from step in Gen.Choose(-1, 1)
                from last in Gen.Elements(true, false)
                select Math.Min(series.Last, Math.Max(series.First, (last ? row.Last : row.First) + step))));
}
