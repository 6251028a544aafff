using NodaTime;

namespace Terminus.Benchmarks.Combining;

/// <summary>
/// Evidence of a given size: makers, advertised models, inscriptions and purchases of an invented trade, two nested windows each, with
/// ends of their own that all enclose the years 1951 to 1957.
/// </summary>
internal sealed class CombinationCase
{
    /// <summary>The usual period of a spread, 1700 to the day of the opinion, to the year.</summary>
    internal const int PeriodYears = 327;

    private const int Draws = 100_000;

    internal CombinationCase(int items)
    {
        Evidence = [.. Enumerable.Range(0, items).Select(Item)];
        AsOf = new LocalDate(2026, 11, 25);
        AsOfDay = DayNumber.Of(AsOf);
        Days = new StatedDays(items);
        foreach (Evidence item in Evidence)
        {
            item.StateInto(Days, Assumptions.House);
        }
    }

    internal IReadOnlyList<Evidence> Evidence { get; }

    internal LocalDate AsOf { get; }

    internal int AsOfDay { get; }

    internal StatedDays Days { get; }

    /// <summary>A grid of the days of so many years up to the day of the opinion.</summary>
    internal DayGrid Grid(int years) => new(Days, DayNumber.PlusYears(AsOfDay, -years), AsOfDay);

    /// <summary>100,000 draws, the same each time.</summary>
    internal MonteCarlo Sampling() => new(Days, AsOfDay, Draws);

    private static Evidence Item(int index)
    {
        EvidenceDate start = EvidenceDate.On(new LocalDate(1950, 12, 31).PlusDays(-13 * index));
        EvidenceDate end = EvidenceDate.On(new LocalDate(1958, 1, 1).PlusDays(11 * index));
        return (index % 4) switch
        {
            0 => new MakerActive("invented " + index, start, end),
            1 => new ModelAdvertised(start, end, "invented " + index),
            2 => new DateInscribed(end, text: "invented " + index),
            _ => new KnownBy(end, "invented " + index, boughtNew: true),
        };
    }
}
