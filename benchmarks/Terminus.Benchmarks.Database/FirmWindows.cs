using NodaTime;
using Terminus.Tests.Inventories;

namespace Terminus.Benchmarks.Database;

/// <summary>
/// The widest firm windows of generated pieces, a row each, in the order of the pieces; with what the whole dating gives as possible, to
/// compare. The day of the opinion is a window of every piece.
/// </summary>
internal sealed class FirmWindows
{
    private const ulong Seed = 20260101;
    private static readonly LocalDate AsOf = new(2026, 11, 25);

    private readonly List<(int Piece, DateWindow Window)> rows = [];
    private readonly List<DateWindow?> possible = [];

    internal FirmWindows(int pieces)
    {
        var generator = new InventoryGenerator(Seed);
        var options = new InventoryOptions(AsOf, GeneratedReference.Set);
        for (int piece = 0; piece < pieces; piece++)
        {
            Dating dating = Inventory.DateLine(System.Text.Encoding.UTF8.GetBytes(generator.Next()), options)!.Dating!.Dating;
            rows.Add((piece, DateWindow.Until(AsOf)));
            foreach (Evidence item in dating.Evidence)
            {
                if (item.StatedWindows() is [var widest, ..] && widest.Confidence >= Assumptions.House.FirmAt)
                {
                    rows.Add((piece, widest.Window));
                }
            }

            possible.Add(dating.Possible);
        }
    }

    internal IReadOnlyList<(int Piece, DateWindow Window)> Rows => rows;

    /// <summary>What the whole dating of each piece gives, null where firm evidence excludes itself.</summary>
    internal IReadOnlyList<DateWindow?> Possible => possible;

    /// <summary>What the windows of each piece have in common, by the library, in one walk over the rows.</summary>
    internal DateWindow?[] Intersect()
    {
        var common = new DateWindow?[possible.Count];
        int current = -1;
        foreach ((int piece, DateWindow window) in rows)
        {
            common[piece] = piece == current ? common[piece]?.Intersect(window) : window;
            current = piece;
        }

        return common;
    }
}
