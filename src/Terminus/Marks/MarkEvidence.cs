namespace Terminus;

/// <summary>Turns the marks of one inscription into items of evidence, one for each observation.</summary>
/// <remarks>
/// A number and a date of one stamp that agree are one item, with the date. Readings that the calendar does not settle make the window
/// that holds them all. What says nothing of a date gives no item.
/// </remarks>
internal static class MarkEvidence
{
    // A US copyright of the act of 4 March 1909 ran for 28 years before it had to be renewed (recalled).
    private const int CopyrightYears = 28;

    internal static IReadOnlyList<Evidence> Of(Inscription inscription, string? part, string? source)
    {
        var items = new List<Evidence>();
        foreach (Mark mark in inscription.Marks)
        {
            if (IsRight(mark) && AgreeingDate(mark, inscription.Marks) is null && mark.Windows.Count > 0)
            {
                items.Add(OfRight(mark, AgreeingNumber(mark, inscription.Marks), part, source));
            }
            else if (!IsRight(mark) && OfWording(mark, part, source) is { } item)
            {
                items.Add(item);
            }
        }

        return ValueList.Of(items.Distinct());
    }

    private static bool IsRight(Mark mark)
        => mark.Kind is MarkKind.PatentDate or MarkKind.PatentNumber or MarkKind.DesignNumber
            || (mark.WordingId is null && mark.Kind is MarkKind.RegisteredDesign or MarkKind.UtilityModel or MarkKind.TradeMark or MarkKind.RegistryDiamond);

    private static bool Agree(Mark number, Mark date)
        => number.Group == date.Group && number.Number is not null && number.Kind != MarkKind.Pending && date.Kind == MarkKind.PatentDate && date.Number is null
            && number.Windows.Count > 0 && date.Windows.Count > 0 && number.Windows[0].Window.Meets(date.Windows[0].Window);

    private static Mark? AgreeingDate(Mark number, IReadOnlyList<Mark> marks) => marks.FirstOrDefault(m => Agree(number, m));

    private static Mark? AgreeingNumber(Mark date, IReadOnlyList<Mark> marks) => marks.FirstOrDefault(m => Agree(m, date));

    private static Evidence OfRight(Mark mark, Mark? number, string? part, string? source)
    {
        List<Mark> others = OtherReadings(mark);
        var date = new EvidenceDate(
            others.Count == 0 ? mark.Windows : [Hull(mark, others)], isUncertain: mark.IsUncertain || mark.Reasons.Any(r => r.Rule == "marks.not-tuesday"));
        string? digits = number?.Number ?? mark.Number;
        string? right = number?.Right ?? mark.Right;
        IEnumerable<Reason> reasons = number is not null ? [.. mark.Reasons, new Reason("marks.number-and-date-agree", "number", number.Number!)]
            : others.Count > 0 ? [.. mark.Reasons, ReadingsReason([mark, .. others])]
            : mark.Reasons;
        return mark.Kind is MarkKind.PatentDate or MarkKind.PatentNumber or MarkKind.DesignNumber
            ? new PatentIssued(date, mark.Office, right, digits, part: part, source: source, reasons: reasons)
            : new RightRegistered(date, mark.Office, right, digits, part: part, source: source, reasons: reasons);
    }

    /// <summary>The readings of a number in other registers that its own window does not hold.</summary>
    private static List<Mark> OtherReadings(Mark mark)
    {
        var others = new List<Mark>();
        if (mark.Number is not null)
        {
            DateWindow hull = mark.Windows[0].Window;
            foreach (Mark other in mark.Alternatives)
            {
                if (other.Windows.Count > 0 && !hull.Contains(other.Windows[0].Window))
                {
                    hull = hull.Hull(other.Windows[0].Window);
                    others.Add(other);
                }
            }
        }

        return others;
    }

    private static StatedWindow Hull(Mark mark, List<Mark> others)
        => new(others.Aggregate(mark.Windows[0].Window, (hull, other) => hull.Hull(other.Windows[0].Window)), mark.Windows[0].Confidence);

    /// <summary>What the range is of, such as "US utility patent 123456 (1872), US design patent 123456 (1939–1941)".</summary>
    private static Reason ReadingsReason(IEnumerable<Mark> readings) => new(
        "marks.range-of-readings",
        "readings",
        string.Join(", ", readings.Select(m => RightName.Of(m.Office, m.Right, m.Number) + " (" + DateText.Years(m.Windows[0].Window) + ")")));

    private static Evidence? OfWording(Mark mark, string? part, string? source)
    {
        if (mark.Kind == MarkKind.Pending || mark.Kind == MarkKind.DesignPending)
        {
            return new PatentPending(
                mark.Date is { } filed ? EvidenceDate.Parse(filed) : null, null, mark.Office, mark.Right, null, part, source, reasons: mark.Reasons);
        }

        if (mark.Kind == MarkKind.Copyright && mark.Date is { } year)
        {
            return new RightRegistered(EvidenceDate.Parse(year), mark.Office, "copyright", null, CopyrightYears, part, source, reasons: mark.Reasons);
        }

        if (mark.Kind == MarkKind.Other && mark.Date is { } inscribed && PurposeOf(mark) is { } purpose)
        {
            return new DateInscribed(EvidenceDate.Parse(inscribed), purpose, mark.Text, part, source, reasons: mark.Reasons);
        }

        if (mark.WordingId is not { } id || Lexicon.BuiltIn[id] is not { Period.IsAny: false } wording)
        {
            return null;
        }

        return wording.ToEvidence(part, source ?? (wording.Source.Length == 0 ? null : wording.Source), mark.Reasons);
    }

    private static InscriptionPurpose? PurposeOf(Mark mark)
        => mark.Reasons.Any(r => r.Rule == "marks.date-of-presentation") ? InscriptionPurpose.Presentation
            : mark.Reasons.Any(r => r.Rule == "marks.date-of-something") ? InscriptionPurpose.Commemorative
            : null;
}
