namespace Terminus;

/// <summary>Decides what a stamped date means: the century, the order of day and month, and what a lost digit was.</summary>
internal ref struct DateChoice
{
    // Two-digit years below this are rather of the twentieth century: dates of patents were stamped until 1927 (44 Stat. 1058).
    private const int TurnOfCentury = 28;

    // The readings that are nearly as good as the best stay in the window.
    private const int Near = 10;

    private readonly StampedDate stamped;
    private readonly string? office;
    private readonly bool ofPatent;
    private ReadingList readings;
    private readonly int bestScore;

    /// <param name="stamped">The date as stamped.</param>
    /// <param name="office">The office whose right is dated, or null for none in particular.</param>
    /// <param name="ofPatent">Whether it is the date of a patent.</param>
    /// <param name="room">Room for the usual number of readings.</param>
    internal DateChoice(in StampedDate stamped, string? office, bool ofPatent, Span<CalendarReading> room)
    {
        this.stamped = stamped;
        this.office = office;
        this.ofPatent = ofPatent;
        readings = new ReadingList(room);
        stamped.AddReadings(ref readings);
        if (readings.Count == 0)
        {
            Kind = DateChoiceKind.NoSuchDay;
            if (!stamped.HasShortYear)
            {
                stamped.WithoutDay().AddReadings(ref readings);
            }
        }
        else if (ofPatent && stamped is { HasShortYear: false, HasLosses: false } && readings[0].Year < FirstPatentYear)
        {
            Kind = DateChoiceKind.TooEarly;
            CalendarReading meant = Later(readings[0]);
            Best = meant.Exists ? meant : meant with { Day = 0 };
        }
        else
        {
            (int chosen, int best) = (0, int.MinValue);
            int at = 0;
            for (int i = 0; i < readings.Count; i++)
            {
                int score = readings.Count == 1 ? 0 : Score(readings[i]);
                chosen = score > best ? 1 : score == best ? chosen + 1 : chosen;
                at = score > best ? i : at;
                best = Math.Max(best, score);
            }

            bestScore = best;
            Best = readings[at];
            IsSettled = chosen == 1;
            Chosen = chosen;
        }
    }

    // No patent of the United States is older (act of 10 April 1790).
    private const int FirstPatentYear = 1790;

    /// <summary>Whether the calendar and the law allow the date as it is stamped.</summary>
    internal DateChoiceKind Kind { get; }

    /// <summary>The likeliest date, or null where the calendar has none.</summary>
    internal CalendarReading? Best { get; }

    /// <summary>Whether only the best reading is left.</summary>
    internal bool IsSettled { get; }

    /// <summary>How many readings are as good as the best, with it.</summary>
    internal int Chosen { get; }

    /// <summary>Whether it is the date of a US patent, for all that is known.</summary>
    internal readonly bool IsAmerican => ofPatent && office is null or "US";

    /// <summary>Whether it rests on a correction of what is stamped.</summary>
    internal readonly bool IsUncertain => Kind != DateChoiceKind.Fits;

    /// <summary>The likeliest date as EDTF, with <c>X</c> for what the likeliest ones differ in; null where the calendar has none.</summary>
    internal string? ToEdtf() => IsSettled || Best is null || !stamped.HasLosses ? Best?.ToEdtf() : Masked();

    /// <summary>The window that holds every reading as good as the best; any date where there is none.</summary>
    internal DateWindow Window()
    {
        DateWindow? window = null;
        for (int i = 0; i < readings.Count; i++)
        {
            if (IsNear(i))
            {
                DateWindow own = Kind == DateChoiceKind.TooEarly ? Later(readings[i]).Window : readings[i].Window;
                window = window?.Hull(own) ?? own;
            }
        }

        return window ?? DateWindow.Any;
    }

    /// <summary>The other readings, likeliest first, as far as they are not too many.</summary>
    internal List<CalendarReading> Others()
    {
        // Alternatives beyond these say no more than the window that holds them all.
        const int most = 6;
        if (Kind != DateChoiceKind.Fits)
        {
            return readings.Count == 0 ? [] : [readings[0]];
        }

        var others = new List<CalendarReading>();
        int passed = 0;
        for (int score = bestScore; others.Count < most && score > int.MinValue; score = Below(score))
        {
            for (int i = 0; i < readings.Count && others.Count < most; i++)
            {
                // The first of the likeliest is the best.
                if (ScoreOf(i) == score && passed++ > 0)
                {
                    others.Add(readings[i]);
                }
            }
        }

        return others;
    }

    /// <summary>Whether a reading with the month first was passed over.</summary>
    internal bool HasMonthFirst()
    {
        for (int i = 0; i < readings.Count; i++)
        {
            if (!readings[i].DayFirst && ScoreOf(i) < bestScore)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The first reading of a date that no patent can have: as stamped.</summary>
    internal readonly CalendarReading AsStamped => readings[0];

    /// <summary>A patent stamped with 17xx is most likely one of 18xx with a worn 8.</summary>
    internal static CalendarReading Later(CalendarReading reading) => reading with { Year = reading.Year + 100 };

    // The readings that the window holds: of a date that cannot be, the first.
    private readonly bool IsNear(int index) => Kind == DateChoiceKind.Fits ? ScoreOf(index) >= bestScore - Near : index == 0;

    private readonly int ScoreOf(int index) => readings.Count == 1 ? bestScore : Score(readings[index]);

    // The next lower score, or the lowest number where there is none.
    private readonly int Below(int score)
    {
        int below = int.MinValue;
        for (int i = 0; i < readings.Count; i++)
        {
            int own = ScoreOf(i);
            below = own < score ? Math.Max(below, own) : below;
        }

        return below;
    }

    /// <summary>How likely a reading is beside the others; what the calendar settles counts most.</summary>
    private readonly int Score(CalendarReading reading)
    {
        int score = 0;
        if (IsAmerican && reading.Day > 0)
        {
            score = IssueDay.KindOf(reading.FirstDay) switch
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
        return score + (!stamped.MonthDigits.IsEmpty && !stamped.OrderKnown && reading.DayFirst != dayFirst ? -5 : 0);
    }

    /// <summary>Several readings as one EDTF date with <c>X</c> for what they differ in, from the right; the first where they differ more.</summary>
    private string Masked()
    {
        char[]? mask = null;
        for (int i = 0; i < readings.Count; i++)
        {
            if (!IsNear(i))
            {
                continue;
            }

            string edtf = readings[i].ToEdtf();
            mask ??= edtf.ToCharArray();
            for (int at = 0; at < mask.Length; at++)
            {
                mask[at] = at < edtf.Length && edtf[at] == mask[at] ? mask[at] : 'X';
            }
        }

        return new string(mask);
    }
}

/// <summary>How a stamped date stands to the calendar and the law.</summary>
internal enum DateChoiceKind
{
    /// <summary>The calendar has it.</summary>
    Fits,

    /// <summary>There is no such day.</summary>
    NoSuchDay,

    /// <summary>It is a patent's, and no patent is so old.</summary>
    TooEarly,
}
