namespace Terminus;

/// <summary>
/// A question that a piece has not answered, with how likely each of its answers is on a piece of each day. At every day the answers,
/// "none of these" among them, sum to one.
/// </summary>
/// <remarks>
/// Numbers here are judgements of this house with no published source. They decide in which order questions are put, never a date.
/// </remarks>
internal abstract class OpenQuestion
{
    /// <summary>The weight of "none of these" beside answers that have weight 1 while they are common.</summary>
    internal const double WeightOfNone = 0.25;

    /// <summary>How often a question that is put to every kind of object has an answer on a piece at all.</summary>
    internal const double GeneralQuestionApplies = 0.5;

    /// <summary>How often a piece bears the date or the number of a patent.</summary>
    internal const double PatentMarked = 0.1;

    private protected OpenQuestion(string id, string? text, string? part)
    {
        Id = id;
        Text = text;
        Part = part;
    }

    internal string Id { get; }

    /// <summary>The question as the reference file puts it, or null for one that the library puts itself.</summary>
    internal string? Text { get; }

    internal string? Part { get; }

    /// <summary>The answers; the last is always "none of these".</summary>
    internal abstract IReadOnlyList<OpenAnswer> Answers { get; }

    /// <summary>The first days of the stretches inside which no probability changes, in any order.</summary>
    internal abstract IEnumerable<int> Breaks { get; }

    /// <summary>How likely each answer is on a piece of a day, in the order of <see cref="Answers"/>; they sum to one.</summary>
    internal abstract double[] Probabilities(int day);

    /// <summary>The piece dated anew as if an answer had been found.</summary>
    internal abstract PieceAnswer Redate(PieceDating dating, OpenAnswer answer);
}

/// <summary>One answer to an open question: its id and name, which are null for "none of these".</summary>
internal sealed record OpenAnswer(string? Id, string? Name);

/// <summary>The answer to a piece dated anew: the two intervals, and the conflict with what was known before.</summary>
internal readonly record struct PieceAnswer(DatedInterval? Interval, DatedInterval? Likely, double Conflict)
{
    internal static PieceAnswer Of(PieceDating dating) => new(dating.Interval, dating.Likely, dating.Dating.Conflict);
}
