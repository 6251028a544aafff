namespace Terminus;

/// <summary>The question for a piece without marks: does it bear the date or the number of a patent?</summary>
/// <remarks>
/// A steady share of pieces made from 1850 bear one, granted in the decade of the piece or in the one before it, as often the one as
/// the other: goods bear a patent for about its term of 17 to 20 years. The answers are the decades of the grant. House
/// judgements with no source, but for the term.
/// </remarks>
internal sealed class PatentQuestion : OpenQuestion
{
    /// <summary>The id under which the question appears.</summary>
    internal const string QuestionId = "mark.patent";

    private const int FirstDecade = 1850;

    private readonly int[] decades;

    internal PatentQuestion(int asOf)
        : base(QuestionId, text: null, part: null)
    {
        int last = DayNumber.Year(asOf) / 10 * 10;
        decades = [.. Enumerable.Range(0, Math.Max(0, ((last - FirstDecade) / 10) + 1)).Select(i => FirstDecade + (10 * i))];
        Answers = [.. decades.Select(d => new OpenAnswer(DateText.Digits(d), null)), new OpenAnswer(null, null)];
    }

    internal override IReadOnlyList<OpenAnswer> Answers { get; }

    internal override IEnumerable<int> Breaks => decades.Select(d => DayNumber.Of(d, 1, 1));

    internal override double[] Probabilities(int day)
    {
        var probabilities = new double[Answers.Count];
        int decade = (DayNumber.Year(day) - FirstDecade) / 10;
        if (day < DayNumber.Of(FirstDecade, 1, 1) || decade >= decades.Length)
        {
            probabilities[decades.Length] = 1;
            return probabilities;
        }

        probabilities[decade] += PatentMarked / 2;
        probabilities[Math.Max(0, decade - 1)] += PatentMarked / 2;
        probabilities[decades.Length] = 1 - PatentMarked;
        return probabilities;
    }

    internal override PieceAnswer Redate(PieceDating dating, OpenAnswer answer)
    {
        if (answer.Id is null)
        {
            return PieceAnswer.Of(dating);
        }

        int decade = int.Parse(answer.Id, System.Globalization.CultureInfo.InvariantCulture);
        var patent = new PatentIssued(EvidenceDate.In(DateWindow.BetweenYears(decade, decade + 9)));
        Dating with = Dating.Of(dating.Dating.Evidence.Take(WindowEnds.MostItems - 1).Append(patent), dating.Dating.AsOf, dating.Dating.Assumptions);
        DatedInterval? interval = with.Interval(dating.Confidence);
        return new PieceAnswer(interval, with.Interval(Dating.LikelyLevel, interval), with.Conflict);
    }
}
