using FsCheck;
using FsCheck.Fluent;
using Terminus.Tests.Combining;

namespace Terminus.Tests;

/// <summary>Items for the engine on so few days that equal ends, ties and certain items occur.</summary>
public sealed class SmallCase
{
    internal SmallCase(IReadOnlyList<IReadOnlyList<ExactWindow>> items, int asOf)
    {
        Items = items;
        AsOf = asOf;
    }

    internal IReadOnlyList<IReadOnlyList<ExactWindow>> Items { get; }

    internal int AsOf { get; }

    internal StatedDays ToDays()
    {
        var days = new StatedDays(Items.Count);
        foreach (IReadOnlyList<ExactWindow> item in Items)
        {
            days.AddItem([.. item.Select(window => new StatedDay(window.Low, window.High, window.Hundredths / 100.0))]);
        }

        return days;
    }

    /// <summary>The same case as opinions on the first days of 1900, for laws of the public type.</summary>
    internal IReadOnlyList<Evidence> ToOpinions(int shift = 0)
        => [.. Items.Select((item, index) => (Evidence)new Opinion(
            item.Select(w => new StatedWindow(
                DateWindow.OfBounds(Move(w.Low, shift), Move(w.High, shift)), w.Hundredths / 100.0)), by: "witness " + index))];

    internal static NodaTime.LocalDate Day(int day) => DayNumber.ToDate(Base + day);

    private static int Base => DayNumber.Of(1900, 1, 1);

    /// <summary>The number that a dating gives to a day of the case.</summary>
    internal static int Number(int day) => Move(day, 0);

    private static int Move(int day, int shift) => day is int.MinValue or int.MaxValue ? day : Base + day + shift;

    public override string ToString()
        => $"asOf {AsOf}: " + string.Join(" | ", Items.Select(i => string.Join(" > ", i.Select(w => $"[{Show(w.Low)},{Show(w.High)}] {w.Hundredths}"))));

    private static string Show(int day) => day switch
    {
        int.MinValue => "..",
        int.MaxValue => "..",
        _ => day.ToString(System.Globalization.CultureInfo.InvariantCulture),
    };
}

public static partial class Gens
{
    private const int SmallDays = 12;

    private static readonly int[] RoundHundredths = [0, 50, 60, 66, 70, 75, 80, 85, 90, 92, 93, 95, 97, 98, 99, 100];

    public static Arbitrary<SmallCase> SmallCases()
        => Arb.From(
            from count in Gen.Choose(0, 8)
            from items in Gen.ArrayOf(SmallItem(), count)
            from asOf in Gen.Choose(4, SmallDays + 1)
            select new SmallCase(items, asOf),
            Shrink);

    private static IEnumerable<SmallCase> Shrink(SmallCase value)
        => Enumerable.Range(0, value.Items.Count).Select(i => new SmallCase([.. value.Items.Where((_, index) => index != i)], value.AsOf));

    private static Gen<IReadOnlyList<ExactWindow>> SmallItem()
        => from count in Gen.Choose(0, 3)
           from ends in Gen.ArrayOf(Gen.Two(SmallEnd()), count)
           from confidences in Gen.ArrayOf(Gen.Elements(RoundHundredths), count)
           select Nest(ends, confidences);

    private static Gen<int?> SmallEnd()
        => Gen.Frequency((1, Gen.Constant<int?>(null)), (4, Gen.Choose(1, SmallDays).Select(d => (int?)d)));

    private static IReadOnlyList<ExactWindow> Nest((int?, int?)[] ends, int[] confidences)
    {
        var nested = new List<ExactWindow>();
        (int low, int high, int confidence) = (int.MinValue, int.MaxValue, 100);
        for (int i = 0; i < ends.Length; i++)
        {
            int from = Math.Max(low, ends[i].Item1 ?? int.MinValue);
            int to = Math.Min(high, ends[i].Item2 ?? int.MaxValue);
            confidence = Math.Min(confidence, confidences[i]);
            if (from <= to && (from, to) != (low, high) && confidence > 0)
            {
                (low, high) = (from, to);
                nested.Add(new ExactWindow(from, to, confidence));
            }
        }

        return nested;
    }
}
