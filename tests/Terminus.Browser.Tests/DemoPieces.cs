using NodaTime;

namespace Terminus.Browser.Tests;

/// <summary>The invented demo inventory, dated.</summary>
internal static class DemoPieces
{
    internal static IReadOnlyList<PieceDating> All { get; } = Date();

    /// <summary>A piece with several parts, items and an answer that is closed on both sides.</summary>
    internal static PieceDating One { get; } = All.Single(d => d.Piece.Id == "QH-014");

    /// <summary>The piece with the weightiest disagreement.</summary>
    internal static PieceDating Disputed { get; } = All.MaxBy(d => d.Dating.Disagreements.Count == 0 ? 0 : d.Dating.Disagreements[0].Mass)!;

    private static List<PieceDating> Date()
    {
        ReferenceSet reference = ReferenceSet.BuiltIn.With(ReferenceFile.Read(Bytes("reference.json"), "reference.json").OrThrow());
        return [.. Piece.ReadAll(Bytes("inventory.json"), "inventory.json").Select(read => PieceDating.Of(read, new LocalDate(2026, 11, 25), reference)!)];
    }

    private static byte[] Bytes(string name) => File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "demo", name));
}
