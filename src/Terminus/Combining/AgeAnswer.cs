namespace Terminus;

/// <summary>A question of age answered.</summary>
public enum AgeVerdict
{
    /// <summary>The evidence leaves both open, or contradicts itself so that no answer is given.</summary>
    CannotTell,

    /// <summary>The belief that it is older reaches the level.</summary>
    Yes,

    /// <summary>The belief that it is not older reaches the level.</summary>
    No,
}

/// <summary>
/// Whether a piece is over a number of years old on the day of the opinion. An opinion, and no proof where age decides a matter of law.
/// </summary>
public sealed record AgeAnswer
{
    private AgeAnswer(int years, AgeVerdict verdict, double belief, double plausibility)
    {
        Years = years;
        Verdict = verdict;
        Belief = belief;
        Plausibility = plausibility;
    }

    /// <summary>The number of years asked for.</summary>
    public int Years { get; }

    /// <summary>The answer at the level asked for.</summary>
    public AgeVerdict Verdict { get; }

    /// <summary>The lower probability that it is older.</summary>
    public double Belief { get; }

    /// <summary>The upper probability that it is older.</summary>
    public double Plausibility { get; }

    /// <summary>Asks whether everything was made more than so many years before the day of the opinion.</summary>
    internal static AgeAnswer Of(Dating dating, int years, double level)
    {
        DateWindow older = DateWindow.OfDays(DayNumber.Open, Math.Max(DayNumber.First, DayNumber.PlusYears(dating.AsOfDay, -years) - 1));
        double belief = dating.Belief(older);
        double plausibility = dating.Plausibility(older);
        AgeVerdict verdict = dating.Qualified ? AgeVerdict.CannotTell
            : belief >= level - Combination.Tolerance ? AgeVerdict.Yes
            : 1 - plausibility >= level - Combination.Tolerance ? AgeVerdict.No
            : AgeVerdict.CannotTell;
        return new AgeAnswer(years, verdict, belief, plausibility);
    }
}
