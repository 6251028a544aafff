namespace Terminus;

/// <summary>Decides what a stamped date means: the century, the order of day and month, and what a lost digit was.</summary>
internal static class DateChooser
{
    // Alternatives beyond these say no more than the window that holds them all.
    private const int MostAlternatives = 6;

    // Two-digit years below this are rather of the twentieth century: dates of patents were stamped until 1927 (44 Stat. 1058).
    private const int TurnOfCentury = 28;

    /// <summary>What the date means.</summary>
    /// <param name="stamped">The date as stamped.</param>
    /// <param name="office">The office whose right is dated, or null for none in particular.</param>
    /// <param name="ofPatent">Whether it is the date of a patent.</param>
    internal static DatedReading Choose(StampedDate stamped, string? office, bool ofPatent)
    {
        List<CalendarReading> readings = stamped.Readings();
        var reasons = new List<Reason>();
        if (readings.Count == 0)
        {
            return NoSuchDay(stamped);
        }

        bool american = ofPatent && office is null or "US";
        if (ofPatent && stamped is { HasShortYear: false, HasLosses: false } && readings[0].Year < 1790)
        {
            return TooEarly(readings, reasons);
        }

        int best = readings.Max(r => Score(r, stamped, office, ofPatent));
        List<CalendarReading> chosen = [.. readings.Where(r => Score(r, stamped, office, ofPatent) == best)];
        List<CalendarReading> set = [.. readings.Where(r => Score(r, stamped, office, ofPatent) < best)];
        Explain(stamped, chosen, set, american, reasons);
        return new DatedReading(chosen[0], reasons)
        {
            IsSettled = chosen.Count == 1,
            Others = [.. chosen.Skip(1).Concat(set.OrderByDescending(r => Score(r, stamped, office, ofPatent))).Take(MostAlternatives)],
            Fitting = [.. readings.Where(r => Score(r, stamped, office, ofPatent) >= best - 10)],
        };
    }

    /// <summary>How likely a reading is beside the others; what the calendar settles counts most.</summary>
    private static int Score(CalendarReading reading, StampedDate stamped, string? office, bool ofPatent)
    {
        int score = 0;
        bool american = ofPatent && office is null or "US";
        if (american && reading.Day > 0)
        {
            score = IssueDay.KindOf(reading.Window.FirstDay) switch
            {
                IssueDayKind.Tuesday or IssueDayKind.DoubtfulTuesday => 40,
                IssueDayKind.NoFixedWeekday => stamped.HasShortYear ? 0 : 20,
                _ => 0,
            };
            score -= reading.Year >= 1900 + TurnOfCentury && stamped.HasLosses ? 3 : 0;
        }

        if (stamped.HasShortYear)
        {
            int century = reading.Year / 100;
            bool later = !ofPatent || reading.Year % 100 < TurnOfCentury;
            score -= century == 20 ? 30 : 0;
            score += (century == 19) == later ? 10 : 0;
        }

        // Two lists of figures with a point or a stroke between: month first in the United States, day first elsewhere.
        bool dayFirst = office is not (null or "US" or "CA" or "JP");
        return score + (stamped.MonthDigits.Length > 0 && !stamped.OrderKnown && reading.DayFirst != dayFirst ? -5 : 0);
    }

    private static void Explain(
        StampedDate stamped, List<CalendarReading> chosen, List<CalendarReading> set, bool american, List<Reason> reasons)
    {
        CalendarReading first = chosen[0];
        if (american && first.Day > 0)
        {
            reasons.Add(WeekdayReason(first));
        }

        if (stamped.HasShortYear && chosen.Count == 1)
        {
            bool byWeekday = american && first.Day > 0 && IssueDay.IsPossible(first.Window.FirstDay);
            reasons.Add(new Reason(byWeekday ? "marks.century-by-weekday" : "marks.century-likely", "year", DateText.Digits(first.Year)));
        }

        if (first.DayFirst && !stamped.OrderKnown && stamped.MonthDigits.Length > 0 && set.Any(r => !r.DayFirst))
        {
            reasons.Add(new Reason("marks.day-first", "date", first.ToEdtf()));
        }

        if (stamped.HasLosses)
        {
            reasons.Add(new Reason("marks.lost-digits", "count", DateText.Digits(chosen.Count)));
        }

        if (stamped.Doubtful)
        {
            reasons.Add(new Reason("marks.worn-letters"));
        }
    }

    /// <summary>What the weekday of a date says of it as a US issue day.</summary>
    internal static Reason WeekdayReason(CalendarReading reading)
    {
        int day = reading.Window.FirstDay;
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

    /// <summary>A patent stamped with 17xx is most likely one of 18xx with a worn 8.</summary>
    private static DatedReading TooEarly(List<CalendarReading> readings, List<Reason> reasons)
    {
        CalendarReading stamped = readings[0];
        CalendarReading meant = stamped with { Year = stamped.Year + 100 };
        reasons.Add(new Reason("marks.before-patents", "day", stamped.ToEdtf(), "weekday", string.Empty));
        reasons.Add(new Reason("marks.worn-century", "stamped", stamped.ToEdtf(), "meant", meant.ToEdtf()));
        return new DatedReading(meant.Exists ? meant : meant with { Day = 0 }, reasons) { Others = [stamped], Fitting = [meant], IsUncertain = true };
    }

    private static DatedReading NoSuchDay(StampedDate stamped)
    {
        var reasons = new List<Reason> { new("marks.no-such-day", "day", stamped.Day, "year", stamped.Year) };
        StampedDate without = stamped with { Day = string.Empty, MonthDigits = string.Empty };
        List<CalendarReading> readings = stamped.HasShortYear ? [] : without.Readings();
        return new DatedReading(null, reasons) { Others = [.. readings.Take(1)], Fitting = [.. readings.Take(1)], IsUncertain = true };
    }
}

/// <summary>What a stamped date means.</summary>
/// <param name="Best">The likeliest date, or null where the calendar has none.</param>
/// <param name="Reasons">Why.</param>
internal sealed record DatedReading(CalendarReading? Best, IReadOnlyList<Reason> Reasons)
{
    /// <summary>Whether only the best reading is left.</summary>
    internal bool IsSettled { get; init; }

    /// <summary>Whether it rests on a correction of what is stamped.</summary>
    internal bool IsUncertain { get; init; }

    /// <summary>The other readings, likeliest first.</summary>
    internal IReadOnlyList<CalendarReading> Others { get; init; } = [];

    /// <summary>The readings that are as good as the best, with it.</summary>
    internal IReadOnlyList<CalendarReading> Fitting { get; init; } = [];

    /// <summary>The window that holds every reading as good as the best; any date where there is none.</summary>
    internal DateWindow Window
    {
        get
        {
            DateWindow window = Fitting.Count == 0 ? DateWindow.Any : Fitting[0].Window;
            foreach (CalendarReading reading in Fitting)
            {
                window = window.Hull(reading.Window);
            }

            return window;
        }
    }
}
