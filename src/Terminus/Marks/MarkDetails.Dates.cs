namespace Terminus;

/// <content>What follows from a date.</content>
internal sealed partial class MarkDetails
{
    // A date is stamped right as often as this, by the house's judgement: no published source.
    private const double DateAsStamped = 0.98;

    // The likelier of several readings, or a stamp put right, is trusted like an uncertain date: the house's judgement.
    private const double DateAsCorrected = 0.70;

    private static readonly Reason YearIsCanadian = new("marks.year-is-canadian");

    private static MarkDetails OfDate(Mark mark, MarkDraft found, in StampedDate date)
    {
        bool ofPatent = found.Kind == MarkKind.PatentDate;
        var choice = new DateChoice(date, found.Office, ofPatent, stackalloc CalendarReading[ReadingList.Usual]);
        var reasons = new List<Reason>(found.Reasons);
        DateReasons.Add(reasons, ref choice, date);
        IReadOnlyList<StatedWindow> windows = ofPatent ? WindowsOf(ref choice) : ValueList<StatedWindow>.Empty;
        var alternatives = new List<Mark>();
        if (found is { IsOfficeAssumed: true, IsOfYear: true } && mark.Date is not null)
        {
            var canadian = new MarkDetails { Windows = windows, Reasons = ValueList.Of([YearIsCanadian]) };
            alternatives.Add(new Mark(mark, found.As(found.Kind, "CA", "patent"), mark.Date, canadian));
        }

        foreach (CalendarReading other in choice.Others())
        {
            alternatives.Add(new Mark(mark, found, other.ToEdtf(), OfReading(other, ofPatent, ofPatent && found.Office is "US")));
        }

        return new MarkDetails { Windows = windows, Reasons = ValueList.Of(reasons), Alternatives = ValueList.Of(alternatives) };
    }

    private static MarkDetails OfReading(CalendarReading reading, bool ofPatent, bool american) => new()
    {
        Windows = ofPatent ? ValueList.Of([new StatedWindow(reading.Window, DateAsStamped)]) : ValueList<StatedWindow>.Empty,
        Reasons = american && reading.Day > 0 ? ValueList.Of([DateReasons.OfWeekday(reading)]) : ValueList<Reason>.Empty,
    };

    private static ValueList<StatedWindow> WindowsOf(ref DateChoice choice)
    {
        DateWindow window = choice.Window();
        if (window.IsAny)
        {
            return ValueList<StatedWindow>.Empty;
        }

        var outer = new StatedWindow(window, choice.IsUncertain ? DateAsCorrected : DateAsStamped);
        return choice is { IsSettled: true, Best: { } best } && best.Window != window
            ? ValueList<StatedWindow>.Owning([outer, new StatedWindow(best.Window, DateAsCorrected)])
            : ValueList<StatedWindow>.Owning([outer]);
    }
}
