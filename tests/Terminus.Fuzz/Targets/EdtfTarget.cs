namespace Terminus.Fuzz.Targets;

/// <summary>EDTF texts: what is valid reads back, what is not says why and where.</summary>
internal sealed class EdtfTarget() : FuzzTarget<(string Text, EdtfDate? Date, string? Error, int Position)>(new AllocationLimits(8 * 1024, 128))
{
    protected override (string Text, EdtfDate? Date, string? Error, int Position) Answer(byte[] input)
    {
        string text = FuzzText.Of(input);
        return EdtfDate.TryParse(text, out EdtfDate? date, out EdtfError? error) ? (text, date, null, 0) : (text, null, error.Reason, error.Position);
    }

    protected override void Judge((string Text, EdtfDate? Date, string? Error, int Position) answer)
    {
        (string text, EdtfDate? date, string? error, int position) = answer;
        if (date is null)
        {
            Demand.That(!string.IsNullOrEmpty(error), "A text that is not EDTF says why.");
            Demand.That(position >= 0 && position <= text.Length, "An error stands in the text.");
            return;
        }

        Demand.That(text.Length <= 1000, "A valid text has at most 1,000 characters.");
        Demand.That(date.ToString() == text && EdtfDate.Parse(date.ToString()) == date, "A valid text reads back.");
        Demand.That(date.Level is >= 0 and <= 2, "There are three levels.");
        (EdtfBound from, EdtfBound to) = (date.Earliest, date.Latest);
        bool known = from.Kind == EdtfBoundKind.Known && to.Kind == EdtfBoundKind.Known;
        Demand.That(!known || !to.IsBefore(from), "No date ends before it begins.");
        Demand.That(date.Window is null == (from.IsBeyondCalendar || to.IsBeyondCalendar), "A date has a window where the calendar has its ends.");
        if (date.Window is { } window)
        {
            Demand.That(window.IsAny || EdtfDate.From(window)!.Window == window, "A window reads back from its EDTF.");
            Demand.Nested(EvidenceDate.From(date).Windows);
        }
    }
}
