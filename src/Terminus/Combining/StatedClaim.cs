namespace Terminus;

/// <summary>What the evidence makes of somebody's date.</summary>
public enum ClaimVerdict
{
    /// <summary>The stated date fits the evidence.</summary>
    Agrees,

    /// <summary>The stated date fits, but says more than the evidence does.</summary>
    TooNarrow,

    /// <summary>The evidence rules the stated date out.</summary>
    Contradicted,
}

/// <summary>Somebody's date for a piece, tested against the evidence.</summary>
public sealed record StatedClaim
{
    /// <summary>Below this upper probability a stated date counts as ruled out.</summary>
    internal const double RuledOutBelow = 0.1;

    private StatedClaim(EdtfDate stated, DateWindow window, ClaimVerdict verdict, int? by, double plausibility)
    {
        Stated = stated;
        Window = window;
        Verdict = verdict;
        By = by;
        Plausibility = plausibility;
    }

    /// <summary>The date as stated.</summary>
    public EdtfDate Stated { get; }

    /// <summary>The days it stands for, widened where it is approximate.</summary>
    public DateWindow Window { get; }

    /// <summary>What the evidence makes of it.</summary>
    public ClaimVerdict Verdict { get; }

    /// <summary>The item that excludes it with the greatest mass, as an index in <see cref="Dating.Evidence"/>; null where none does.</summary>
    public int? By { get; }

    /// <summary>The upper probability of the stated date.</summary>
    public double Plausibility { get; }

    /// <summary>
    /// Contradicted where its plausibility is below 0.1, too narrow where it lies inside the interval without filling it and without being believed
    /// at the interval's level, otherwise it agrees.
    /// </summary>
    internal static StatedClaim Test(Dating dating, EdtfDate stated, DatedInterval? interval)
    {
        EvidenceDate date = EvidenceDate.From(stated);
        DateWindow window = DateWindow.OfDays(date.FirstDay(dating.Assumptions), date.LastDay(dating.Assumptions));
        double plausibility = dating.Plausibility(window);
        int? by = Excluding(dating, window);
        ClaimVerdict verdict = plausibility < RuledOutBelow ? ClaimVerdict.Contradicted
            : interval is not null && interval.Window != window && interval.Window.Contains(window)
                && dating.Belief(window) < interval.Confidence - Combination.Tolerance ? ClaimVerdict.TooNarrow
            : ClaimVerdict.Agrees;
        return new StatedClaim(stated, window, verdict, verdict == ClaimVerdict.Contradicted ? by : null, plausibility);
    }

    private static int? Excluding(Dating dating, DateWindow window)
    {
        int? by = null;
        double most = 0;
        for (int item = 0; item < dating.Evidence.Count; item++)
        {
            foreach (StatedDay stated in dating.Stated[item])
            {
                // Windows are nested, so the mass that excludes is the confidence of the first that does.
                if (!window.Meets(DateWindow.OfBounds(stated.Low, stated.High)))
                {
                    (by, most) = stated.Confidence > most ? (item, stated.Confidence) : (by, most);
                    break;
                }
            }
        }

        return by;
    }
}
