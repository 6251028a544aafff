namespace Terminus;

/// <summary>One thing to look at: the question, what it would tell, and its possible answers.</summary>
/// <remarks>All widths are in days. Where an interval has no start it is counted from the year from which the spread is drawn.</remarks>
public sealed record NextStep
{
    // Below these a question tells nothing worth a look, or the answers that move the date are too unlikely together.
    private const double LeastBits = 0.01;
    private const double LeastProbability = 0.01;

    internal NextStep(Reason question, string id, string? part, double bits, IEnumerable<NextAnswer> answers)
    {
        Question = question;
        Id = id;
        Part = part;
        Bits = bits;
        Answers = ValueList.Of(answers);
    }

    /// <summary>The question, as a reason to put into words.</summary>
    public Reason Question { get; }

    /// <summary>The id of the question in the reference file; <c>mark.patent</c> for the date or number of a patent.</summary>
    public string Id { get; }

    /// <summary>The part to look at, or null for the whole piece.</summary>
    public string? Part { get; }

    /// <summary>
    /// What the answer would tell on average: the expected fall of the entropy of <see cref="Dating.Spread"/>, in bits. One bit halves the
    /// time in question. Never below 0.
    /// </summary>
    public double Bits { get; }

    /// <summary>The shortest stretch that holds the asked share of the spread, in days.</summary>
    public double SpreadWidth { get; internal init; }

    /// <summary>That width with the answer known, on average over the answers.</summary>
    public double ExpectedSpreadWidth { get; internal init; }

    /// <summary>The width of the interval now, in days.</summary>
    public double Width { get; internal init; }

    /// <summary>The width of the interval with the answer added, on average over the answers. It may be wider than now.</summary>
    public double ExpectedWidth { get; internal init; }

    /// <summary>The width of the likely interval now, in days.</summary>
    public double LikelyWidth { get; internal init; }

    /// <summary>The width of the likely interval with the answer added, on average over the answers. It may be wider than now.</summary>
    public double ExpectedLikelyWidth { get; internal init; }

    /// <summary>The possible answers, the most likely first; "none of these" last.</summary>
    public IReadOnlyList<NextAnswer> Answers { get; }

    /// <summary>Whether it is worth a look: it tells something, and answers to be expected would move the date.</summary>
    public bool Helps => Bits >= LeastBits && Answers.Where(a => a.MovesDate).Sum(a => a.Probability) >= LeastProbability;

    /// <summary>Whether it tells as much as the best, within what such a figure can mean.</summary>
    public bool IsTiedWithBest { get; internal init; }

    /// <summary>Why it stands where it stands, with the figures.</summary>
    public Reason Why => new(
        Helps ? "advice.worth" : "advice.no-help",
        "bits", Number(Bits, "0.##"),
        "spread", Years(SpreadWidth),
        "expectedSpread", Years(ExpectedSpreadWidth),
        "interval", Years(Width),
        "expectedInterval", Years(ExpectedWidth),
        "likely", Years(LikelyWidth),
        "expectedLikely", Years(ExpectedLikelyWidth));

    /// <summary>Such as <c>brooch.catch [catch]: 0.43 bits</c>, never in a culture's format.</summary>
    public override string ToString() => Id + (Part is null ? "" : " [" + Part + "]") + ": " + Number(Bits, "0.##") + " bits";

    private static string Years(double days) => Number(days / DaysOfYear, "0");

    private static string Number(double value, string format) => value.ToString(format, System.Globalization.CultureInfo.InvariantCulture);

    // The mean year of the Gregorian calendar.
    private const double DaysOfYear = 365.2425;
}
