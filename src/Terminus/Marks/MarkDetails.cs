namespace Terminus;

/// <summary>What follows from a mark in the registers and the table of wordings: windows, reasons and other readings.</summary>
internal sealed partial class MarkDetails
{
    internal IReadOnlyList<StatedWindow> Windows { get; private init; } = ValueList<StatedWindow>.Empty;

    internal IReadOnlyList<Reason> Reasons { get; private init; } = ValueList<Reason>.Empty;

    internal IReadOnlyList<Mark> Alternatives { get; private init; } = ValueList<Mark>.Empty;

    /// <summary>The id of the wording that gave the windows, or null.</summary>
    internal string? WordingId { get; private init; }

    internal static MarkDetails Of(Mark mark, MarkDraft found, RegisterSet registers)
        => found.Diamond is { } diamond ? OfDiamond(found, diamond)
            : found.Date is { } date ? OfDate(mark, found, date)
            : found.Number is { } number ? OfNumber(mark, found, number, registers)
            : OfWording(found.Reasons, found.Wording ?? WordingOfClaim(found));

    private static Wording? WordingOfClaim(MarkDraft found)
        => found is { Kind: MarkKind.PatentWord, Office: "US" } ? Lexicon.BuiltIn[found.Right == "reissue" ? "mk.us_reissue" : "mk.us_patent_number"] : null;

    private static MarkDetails OfWording(IReadOnlyList<Reason> reasons, Wording? wording) => wording is null
        ? new MarkDetails { Reasons = ValueList.Of(reasons) }
        : new MarkDetails
        {
            Windows = wording.Statement.Windows,
            Reasons = ValueList<Reason>.Owning([.. reasons, wording.Statement.Reason]),
            WordingId = wording.Id,
        };

    private static MarkDetails OfDiamond(MarkDraft found, RegistryDiamond diamond)
    {
        NumberReading reading = diamond.Read();
        return reading.Windows.Count == 0 ? OfWording(found.Reasons, found.Wording) : OfRegister(found.Reasons, reading);
    }

    private static MarkDetails OfRegister(IReadOnlyList<Reason> reasons, NumberReading reading, string? wordingId = null)
        => new() { Windows = reading.Windows, Reasons = ValueList<Reason>.Owning([.. reasons, .. reading.Reasons]), WordingId = wordingId };
}
