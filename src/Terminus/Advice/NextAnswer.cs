namespace Terminus;

/// <summary>One possible answer to a question, how likely it is before one looks, and what it would do to the date.</summary>
public sealed record NextAnswer
{
    internal NextAnswer(Reason answer, string? id, double probability, PieceDating before, PieceAnswer after)
    {
        Answer = answer;
        Id = id;
        Probability = probability;
        Interval = after.Interval;
        Likely = after.Likely;
        Conflict = after.Conflict;
        IntervalMove = new WindowMove(before.Interval?.Window, after.Interval?.Window);
        LikelyMove = new WindowMove(before.Likely?.Window, after.Likely?.Window);
    }

    /// <summary>The answer, as a reason to put into words.</summary>
    public Reason Answer { get; }

    /// <summary>The id of the feature that the answer names, or the first year of a decade of grant; null for "none of these".</summary>
    public string? Id { get; }

    /// <summary>How likely the answer is before one looks, by the spread and the usage of the answers: for advice, never a confidence.</summary>
    public double Probability { get; }

    /// <summary>The interval with the answer added, or null where the conflict would be total.</summary>
    public DatedInterval? Interval { get; }

    /// <summary>The likely interval with the answer added, or null where the conflict would be total.</summary>
    public DatedInterval? Likely { get; }

    /// <summary>The conflict with the answer added, from 0 to 1.</summary>
    public double Conflict { get; }

    /// <summary>How the answer would move the interval.</summary>
    public WindowMove IntervalMove { get; }

    /// <summary>How the answer would move the likely interval.</summary>
    public WindowMove LikelyMove { get; }

    /// <summary>Whether the answer would move either.</summary>
    public bool MovesDate => IntervalMove.IsMove || LikelyMove.IsMove;

    /// <summary>Such as <c>brooch.c_catch (0.16): 1850-01-01/1915-12-31 (0.9)</c>, never in a culture's format.</summary>
    public override string ToString()
        => (Id ?? "none of these") + " (" + Probability.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture) + "): "
            + (Interval?.ToString() ?? "no answer");
}
