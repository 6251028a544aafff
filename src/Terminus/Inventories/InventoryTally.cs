namespace Terminus;

/// <summary>The counts of an <see cref="InventorySummary"/>.</summary>
internal record struct InventoryTally
{
    internal int Lines { get; private set; }

    internal int Dated { get; private set; }

    internal int OpenEnded { get; private set; }

    internal int Undatable { get; private set; }

    internal int Refused { get; private set; }

    internal int Disagreeing { get; private set; }

    internal int WithProblems { get; private set; }

    internal void Add(InventoryResult result)
    {
        Lines++;
        if (result.Dating is not { } dating)
        {
            Refused++;
            return;
        }

        if (dating.Interval is null or { IsAnyDate: true })
        {
            Undatable++;
        }
        else if (dating.Interval is { EndsToday: true } or { EarliestYear: null })
        {
            OpenEnded++;
        }
        else
        {
            Dated++;
        }

        Disagreeing += dating.Dating.Qualified || Statement.SaysDisagreement(dating.Dating) ? 1 : 0;
        WithProblems += dating.Problems.Count > 0 ? 1 : 0;
    }

    internal void Add(InventoryTally other)
    {
        Lines += other.Lines;
        Dated += other.Dated;
        OpenEnded += other.OpenEnded;
        Undatable += other.Undatable;
        Refused += other.Refused;
        Disagreeing += other.Disagreeing;
        WithProblems += other.WithProblems;
    }
}
