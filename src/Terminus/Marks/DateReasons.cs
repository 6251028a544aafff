namespace Terminus;

/// <summary>Why a stamped date is read as it is.</summary>
internal static class DateReasons
{
    internal static readonly Reason WornLetters = new("marks.worn-letters");

    /// <summary>Adds the reasons of a choice.</summary>
    internal static void Add(List<Reason> reasons, ref DateChoice choice, in StampedDate stamped)
    {
        switch (choice.Kind)
        {
            case DateChoiceKind.NoSuchDay:
                reasons.Add(new Reason("marks.no-such-day", "day", stamped.Day.ToString(), "year", stamped.Year.ToString()));
                break;
            case DateChoiceKind.TooEarly:
                CalendarReading early = choice.AsStamped;
                reasons.Add(new Reason("marks.before-patents", "day", early.ToEdtf(), "weekday", string.Empty));
                reasons.Add(new Reason("marks.worn-century", "stamped", early.ToEdtf(), "meant", DateChoice.Later(early).ToEdtf()));
                break;
            default:
                Explain(reasons, ref choice, stamped);
                break;
        }
    }

    /// <summary>What the weekday of a date says of it as a US issue day.</summary>
    internal static Reason OfWeekday(CalendarReading reading)
    {
        int day = reading.FirstDay;
        string weekday = DayNumber.ToDate(day).DayOfWeek.ToString();
        string rule = IssueDay.KindOf(day) switch
        {
            IssueDayKind.Tuesday => "marks.tuesday",
            IssueDayKind.DoubtfulTuesday => "marks.doubtful-tuesday",
            IssueDayKind.NoFixedWeekday => "marks.before-tuesdays",
            IssueDayKind.BeforePatents => "marks.before-patents",
            _ => "marks.not-tuesday",
        };
        return new Reason(rule, "day", DateText.Words(day), "weekday", weekday);
    }

    private static void Explain(List<Reason> reasons, ref DateChoice choice, in StampedDate stamped)
    {
        CalendarReading best = choice.Best!.Value;
        bool hasIssueDay = choice.IsAmerican && best.Day > 0;
        if (hasIssueDay)
        {
            reasons.Add(OfWeekday(best));
        }

        if (stamped.HasShortYear && choice.IsSettled)
        {
            bool byWeekday = hasIssueDay && IssueDay.IsPossible(best.FirstDay);
            reasons.Add(new Reason(byWeekday ? "marks.century-by-weekday" : "marks.century-likely", "year", DateText.Digits(best.Year)));
        }

        if (best.DayFirst && !stamped.OrderKnown && !stamped.MonthDigits.IsEmpty && choice.HasMonthFirst())
        {
            reasons.Add(new Reason("marks.day-first", "date", best.ToEdtf()));
        }

        if (stamped.HasLosses)
        {
            reasons.Add(new Reason("marks.lost-digits", "count", DateText.Digits(choice.Chosen)));
        }

        if (stamped.Doubtful)
        {
            reasons.Add(WornLetters);
        }
    }
}
