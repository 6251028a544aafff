namespace Terminus;

/// <summary>Makes the reading of one number, whole or in part, in one register.</summary>
internal sealed class RegisterReader(Register register, NumberPattern pattern)
{
    private readonly List<Reason> reasons = [];
    private readonly List<string> sources = [];
    private RowOrigin weakest = RowOrigin.Source;

    internal static NumberReading NotANumber(string office, string right, string text)
        => new(office, right, text, NumberOutcome.Impossible)
        {
            Reasons = [new Reason("registers.not-a-number", "text", text)],
        };

    internal NumberReading Read()
    {
        List<NumberSeries> holding = Holding();
        if (holding.Count == 0)
        {
            return Outside();
        }

        int fits = holding.Sum(s => pattern.CountBetween(s.First, s.Last));
        return fits == 1 ? One(holding[0]) : Several(holding, fits);
    }

    /// <summary>The series in which some number fits, and that belong to the year where one is given.</summary>
    private List<NumberSeries> Holding()
        => [.. Asked().Where(s => pattern.FirstFrom(s.First) is { } fit && fit <= s.Last)];

    private IEnumerable<NumberSeries> Asked()
    {
        string? year = pattern.Year is { } y ? DateText.Digits(y) : null;
        return year is not null && register.Series.Any(s => s.Name == year) ? register.Series.Where(s => s.Name == year) : register.Series;
    }

    private NumberReading One(NumberSeries series)
    {
        int number = pattern.FirstFrom(series.First) ?? series.First;
        Explain(series, number);
        List<StatedWindow> windows = Windows(series, number);
        DateWindow outer = windows[0].Window;
        return Result(NumberOutcome.Found) with
        {
            Windows = windows,
            Best = windows[windows.Count - 1].Window,
            DocumentIds = DocumentNames.Ids(register.Office, register.Right, number, series.Name, outer),
            Writings = DocumentNames.Writings(register.Office, register.Right, number, series.Name, outer),
        };
    }

    private List<StatedWindow> Windows(NumberSeries series, int number)
    {
        DateWindow outer = series.Outer(number);
        var windows = new List<StatedWindow>(6) { new(outer, RegisterShares.Outer(register.IssuesOnTuesdays, weakest)) };
        DateWindow table = series.Table(number);
        Narrow(windows, table, RegisterShares.Table(register.IssuesOnTuesdays, weakest));
        if (register.TryLocate(number, out IssueWeeks weeks) && !IsRough(series, number))
        {
            foreach (WeekShare share in RegisterShares.Weeks(register.Right, weeks.Possible))
            {
                Narrow(windows, weeks.Within(share.Weeks), share.Confidence);
            }

            reasons.Add(new Reason(
                weeks.Possible == 1 ? "registers.issue-day-certain" : "registers.issue-day-estimated",
                "date", DateText.Iso(IssueDay.DayOf(weeks.Likeliest)),
                "first", DateText.Iso(IssueDay.DayOf(weeks.Earliest)),
                "last", DateText.Iso(IssueDay.DayOf(weeks.Latest)),
                "weeks", DateText.Digits(weeks.Possible)));
        }

        return windows;
    }

    // Where the start of a year may be off by months, an estimate to the week would be more than the table knows.
    private static bool IsRough(NumberSeries series, int number)
        => Math.Max(series.LowRow(number).AllowanceDays, series.HighRow(number).AllowanceDays) > 92;

    private static void Narrow(List<StatedWindow> windows, DateWindow next, double confidence)
    {
        StatedWindow last = windows[windows.Count - 1];
        DateWindow? cut = DateWindow.TryBetweenDays(
            Math.Max(last.Window.FirstDay, next.FirstDay), Math.Min(last.Window.LastDay, next.LastDay));
        if (cut is { } window && window != last.Window)
        {
            windows.Add(new StatedWindow(window, Math.Min(confidence, last.Confidence)));
        }
    }

    private NumberReading Several(List<NumberSeries> holding, int fits)
    {
        var spans = new List<DateWindow>();
        foreach (NumberSeries series in holding)
        {
            Spans(series, spans);
        }

        spans.Sort((a, b) => a.FirstDay != b.FirstDay ? a.FirstDay.CompareTo(b.FirstDay) : a.LastDay.CompareTo(b.LastDay));
        List<DateWindow> alternatives = pattern.IsExact ? spans : Merged(spans);
        DateWindow hull = DateWindow.OfDays(spans.Min(s => s.FirstDay), spans.Max(s => s.LastDay));
        reasons.Add(pattern.IsExact
            ? new Reason(
                "registers.counted-anew",
                "number", pattern.Digits,
                "office", register.Office,
                "count", DateText.Digits(holding.Count))
            : new Reason(
                "registers.lost-digits",
                "pattern", pattern.ToString(),
                "count", DateText.Digits(fits),
                "first", DateText.Digits(holding.Min(s => pattern.FirstFrom(s.First) ?? s.First)),
                "last", DateText.Digits(holding.Max(s => pattern.LastUpTo(s.Last) ?? s.Last))));
        reasons.Add(new Reason("registers.span", "from", DateText.Iso(hull.FirstDay), "to", DateText.Iso(hull.LastDay)));
        AddStanding(0);
        return Result(alternatives.Count > 1 ? NumberOutcome.Several : NumberOutcome.Found) with
        {
            Windows = [new StatedWindow(hull, RegisterShares.Outer(register.IssuesOnTuesdays, weakest))],
            Best = alternatives.Count > 1 ? null : hull,
            Alternatives = alternatives.Count > 1 ? alternatives : [],
        };
    }

    /// <summary>The spans of a series in which some number fits: from the first number of each row to the one before the next.</summary>
    private void Spans(NumberSeries series, List<DateWindow> spans)
    {
        IReadOnlyList<RegisterRow> rows = series.Rows;
        for (int i = 0; i < rows.Count; i++)
        {
            int end = i + 1 < rows.Count ? rows[i + 1].First - 1 : series.Last;
            if (pattern.FirstFrom(rows[i].First) is { } first && first <= end && pattern.LastUpTo(end) is { } last)
            {
                DateWindow low = series.Outer(first);
                DateWindow high = series.Outer(last);
                spans.Add(DateWindow.OfDays(low.FirstDay, Math.Max(low.LastDay, high.LastDay)));
                Rest(series.LowRow(first));
                Rest(series.HighRow(last));
            }
        }
    }

    private static List<DateWindow> Merged(List<DateWindow> spans)
    {
        var merged = new List<DateWindow>();
        foreach (DateWindow span in spans)
        {
            DateWindow last = merged.Count == 0 ? default : merged[merged.Count - 1];
            if (merged.Count > 0 && span.FirstDay <= last.LastDay + 1)
            {
                merged[merged.Count - 1] = DateWindow.OfDays(last.FirstDay, Math.Max(last.LastDay, span.LastDay));
            }
            else
            {
                merged.Add(span);
            }
        }

        return merged;
    }

    private void Explain(NumberSeries series, int number)
    {
        RegisterRow low = series.LowRow(number);
        RegisterRow high = series.HighRow(number);
        Rest(low);
        Rest(high);
        DateWindow table = series.Table(number);
        string rule = !ReferenceEquals(low, high) ? "registers.span"
            : low.First == low.Last ? "registers.dated-number"
            : "registers.between-numbers";
        reasons.Add(new Reason(
            rule,
            "number", DateText.Digits(number),
            "first", DateText.Digits(low.First),
            "last", DateText.Digits(high.Last),
            "from", DateText.Iso(table.FirstDay),
            "to", DateText.Iso(table.LastDay)));
        if (register.Series.Count > 1 && series.Name.Length == 4 && char.IsDigit(series.Name[0]))
        {
            reasons.Add(new Reason("registers.application-year", "year", series.Name));
        }

        AddStanding(Math.Max(low.AllowanceDays, high.AllowanceDays));
    }

    private void AddStanding(int allowance)
    {
        if (weakest != RowOrigin.Source)
        {
            reasons.Add(new Reason(weakest == RowOrigin.Memory ? "registers.from-memory" : "registers.from-estimate"));
        }

        if (allowance > 0)
        {
            reasons.Add(new Reason("registers.allowance", "days", DateText.Digits(allowance)));
        }
    }

    private void Rest(RegisterRow row)
    {
        weakest = row.Origin > weakest ? row.Origin : weakest;
        if (row.Origin != RowOrigin.Memory && row.Source.Length > 0 && !sources.Contains(row.Source))
        {
            sources.Add(row.Source);
        }
    }

    private NumberReading Outside()
    {
        List<NumberSeries> asked = [.. Asked()];
        int first = asked.Min(s => s.First);
        int last = asked.Max(s => s.Last);
        NumberSeries ending = asked.First(s => s.Last == last);
        NumberOutcome outcome = pattern.IsExact && pattern.Value == 0 ? NumberOutcome.Impossible
            : pattern.FirstFrom(first) is null ? NumberOutcome.BeforeSeries
            : pattern.LastUpTo(last) is null ? NumberOutcome.BeyondSeries
            : pattern.IsExact ? NumberOutcome.BetweenSeries
            : NumberOutcome.Impossible;
        string rule = outcome switch
        {
            NumberOutcome.BeforeSeries => "registers.before-series",
            NumberOutcome.BeyondSeries => "registers.beyond-series",
            NumberOutcome.BetweenSeries => "registers.between-series",
            _ => "registers.no-fit",
        };
        reasons.Add(new Reason(
            rule,
            "number", pattern.ToString(),
            "office", register.Office,
            "right", register.Right,
            "first", DateText.Digits(first),
            "last", DateText.Digits(last),
            "date", DateText.Iso(ending.Table(last).LastDay)));
        return Result(outcome);
    }

    private NumberReading Result(NumberOutcome outcome)
        => new(register.Office, register.Right, pattern.ToString(), outcome)
        {
            Reasons = reasons,
            Sources = sources,
            Origin = weakest,
        };
}
