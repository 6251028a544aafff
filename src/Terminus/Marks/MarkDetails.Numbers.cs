namespace Terminus;

/// <content>What follows from a number.</content>
internal sealed partial class MarkDetails
{
    private static readonly Reason DesignLetterLeftOff = new("marks.design-letter-left-off");
    private static readonly Reason RegistrationOfDesign = new("marks.registration-of-design");

    private static MarkDetails OfNumber(Mark mark, MarkDraft found, StampedNumber number, RegisterSet registers)
    {
        IReadOnlyList<Reason> reasons = number.Doubtful ? [.. found.Reasons, DateReasons.WornLetters] : found.Reasons;
        if (found.Kind is MarkKind.Pending or MarkKind.Other || found.Office is null || found.Right is null)
        {
            return OfWording(reasons, found.Wording);
        }

        NumberReading reading = registers.Read(found.Office, found.Right, mark.Date is null ? number.Digits : number.Digits + "/" + mark.Date);
        MarkDetails own = OfRegister(reasons, reading);
        own = own.Windows.Count == 0 && found.Wording is not null ? OfWording(own.Reasons, found.Wording) : own;
        return new MarkDetails
        {
            Windows = own.Windows,
            Reasons = own.Reasons,
            WordingId = own.WordingId,
            Alternatives = ValueList.Of(OtherRights(mark, found, number, registers, own.WordingId)),
        };
    }

    /// <summary>
    /// On jewellery the D of a design is often left off, so a number below the last design is read both ways; a registration without
    /// a right can be a mark or a design.
    /// </summary>
    private static IEnumerable<Mark> OtherRights(Mark mark, MarkDraft found, StampedNumber number, RegisterSet registers, string? wordingId)
    {
        if (found.OtherOffice is { } other)
        {
            yield return Read(found.As(found.Kind, other, other == "US" ? "utility" : "patent"), new Reason("marks.other-office", "office", other));
        }

        if (found is { Kind: MarkKind.PatentNumber, Office: "US", Right: "utility" } && number.Digits.Length is 5 or 6)
        {
            yield return Read(found.As(MarkKind.DesignNumber, "US", "design"), DesignLetterLeftOff);
        }

        if (found.Wording?.Id == "mk.registration_number")
        {
            yield return Read(found.As(MarkKind.RegisteredDesign, "GB", "registered-design"), RegistrationOfDesign);
        }

        Mark Read(MarkDraft right, Reason reason)
            => new(mark, right, mark.Date, OfRegister([reason], registers.Read(right.Office!, right.Right!, number.Digits), wordingId));
    }
}
