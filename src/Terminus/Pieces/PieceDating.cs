using NodaTime;

namespace Terminus;

/// <summary>A piece dated: the whole, its parts, the claim it came with, and what was wrong with its description.</summary>
/// <remarks>An opinion on age from what is described: not an appraisal, an authentication or legal advice.</remarks>
public sealed class PieceDating
{
    /// <summary>The level of the interval where none is asked for.</summary>
    public const double UsualConfidence = 0.9;

    // What nobody means well with stays cheap: so many observations are looked at, and so many parts are dated.
    private const int MostObserved = 1024;
    private const int MostParts = 256;

    private PieceDating(
        Piece piece, Answer whole, ValueList<PartDating> parts, ValueList<Evidence> leftOut, ValueList<DocumentProblem> problems, ReferenceSet reference,
        double confidence)
    {
        Piece = piece;
        (Dating, Interval, Likely) = (whole.Dating, whole.Interval, whole.Likely);
        Parts = parts;
        LeftOut = leftOut;
        Problems = problems;
        Reference = reference;
        Confidence = confidence;
    }

    /// <summary>The piece as described.</summary>
    public Piece Piece { get; }

    /// <summary>The dating of the whole: the items of all original parts and those of no part.</summary>
    public Dating Dating { get; }

    /// <summary>The level asked for.</summary>
    public double Confidence { get; }

    /// <summary>The interval at the level asked for, or null where the conflict is total.</summary>
    public DatedInterval? Interval { get; }

    /// <summary>The likely interval, at <see cref="Dating.LikelyLevel"/> inside the interval; null where the conflict is total.</summary>
    public DatedInterval? Likely { get; }

    /// <summary>Each part with evidence, in the order described, then in the order met.</summary>
    public IReadOnlyList<PartDating> Parts { get; }

    /// <summary>The items of parts that are not original, which are left out of the whole.</summary>
    public IReadOnlyList<Evidence> LeftOut { get; }

    /// <summary>What was wrong with the description, each with the path of the member. The rest was dated all the same.</summary>
    public IReadOnlyList<DocumentProblem> Problems { get; }

    /// <summary>The reference file that was used.</summary>
    public ReferenceSet Reference { get; }

    /// <summary>Whether the stated date agrees, or null where none was stated.</summary>
    public StatedClaim? Stated => field ??= Piece.Stated is { } stated ? StatedClaim.Test(Dating, stated, Interval) : null;

    /// <summary>Whether the piece is over a hundred years old on the day of the opinion.</summary>
    public AgeAnswer OverHundredYears => field ??= AgeAnswer.Of(Dating, 100, Confidence);

    /// <summary>Dates a piece.</summary>
    /// <param name="piece">The piece as described.</param>
    /// <param name="asOf">The day of the opinion.</param>
    /// <param name="reference">The reference file, or null for the built-in one.</param>
    /// <param name="assumptions">The house defaults, or null for <see cref="Assumptions.House"/>.</param>
    /// <param name="confidence">The level of the interval, above 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level lies outside (0, 1].</exception>
    public static PieceDating Of(
        Piece piece, LocalDate asOf, ReferenceSet? reference = null, Assumptions? assumptions = null, double confidence = UsualConfidence)
        => Of(new DocumentResult<Piece>(Guard.NotNull(piece, nameof(piece)), []), asOf, reference, assumptions, confidence)!;

    /// <summary>Dates a piece that was read from a document, and keeps the problems of the document.</summary>
    /// <param name="read">What was read.</param>
    /// <param name="asOf">The day of the opinion.</param>
    /// <param name="reference">The reference file, or null for the built-in one.</param>
    /// <param name="assumptions">The house defaults, or null for <see cref="Assumptions.House"/>.</param>
    /// <param name="confidence">The level of the interval, above 0 and at most 1.</param>
    /// <returns>The dated piece, or null where no piece could be read.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level lies outside (0, 1].</exception>
    public static PieceDating? Of(
        DocumentResult<Piece> read, LocalDate asOf, ReferenceSet? reference = null, Assumptions? assumptions = null, double confidence = UsualConfidence)
    {
        Guard.NotNull(read, nameof(read));
        Guard.Level(confidence, nameof(confidence));
        if (read.Value is not { } piece)
        {
            return null;
        }

        reference ??= ReferenceSet.BuiltIn;
        assumptions ??= Assumptions.House;
        (List<Evidence> found, List<DocumentProblem>? problems) = PieceEvidence.Of(piece, reference, assumptions);
        if (found.Count > MostObserved)
        {
            AddLimit(problems ??= [], found.Count, "items of evidence", MostObserved, "looked at");
            found.RemoveRange(MostObserved, found.Count - MostObserved);
        }

        var items = new ItemsByPart(piece.Parts, ValueList.Of(found));
        if (items.Parts.Count > MostParts)
        {
            AddLimit(problems ??= [], items.Parts.Count, "parts with evidence", MostParts, "dated");
        }

        ValueList<Evidence> merged = OneCause.Merge(items.Whole, reference, assumptions);
        if (!ReferenceEquals(merged, items.Whole) || merged.Count > WindowEnds.MostItems)
        {
            AddContradictoryAnswers(merged, reference, problems ??= []);
            if (merged.Count > WindowEnds.MostItems)
            {
                AddLimit(problems, merged.Count, "items of evidence", WindowEnds.MostItems, "combined");
            }
        }

        int today = DayNumber.Of(asOf);
        Answer whole = Answer.Of(merged, today, assumptions, confidence);
        var parts = new PartDating[Math.Min(items.Parts.Count, MostParts)];
        for (int i = 0; i < parts.Length; i++)
        {
            string part = items.Parts[i];
            ValueList<Evidence> ofPart = items.OfPart(part);
            // A part that shows everything there is has the answer of the whole.
            Answer answer = ReferenceEquals(ofPart, items.Whole)
                ? whole
                : Answer.Of(OneCause.Merge(ofPart, reference, assumptions), today, assumptions, confidence);
            parts[i] = new PartDating(part, items.IsOriginal(part), WhyNot(piece, part), answer.Dating, answer.Interval, answer.Likely);
        }

        return new PieceDating(
            piece,
            whole,
            ValueList<PartDating>.Owning(parts),
            OneCause.Merge(items.LeftOut, reference, assumptions),
            problems is null ? ValueList.Of(read.Problems) : ValueList.Of(read.Problems.Concat(problems)),
            reference,
            confidence);
    }

    private static string? WhyNot(Piece piece, string part)
    {
        for (int i = 0; i < piece.Parts.Count; i++)
        {
            if (string.Equals(piece.Parts[i].Part, part, StringComparison.Ordinal))
            {
                return piece.Parts[i].Why;
            }
        }

        return null;
    }

    private static void AddContradictoryAnswers(ValueList<Evidence> merged, ReferenceSet reference, List<DocumentProblem> problems)
    {
        foreach (Evidence item in merged.Where(i => i.Reasons.Any(r => r.Rule == "pieces.two-answers")))
        {
            string question = reference.Question(reference.Feature(item.Entries[0])?.Question)?.Text ?? "one question";
            string answers = string.Join(" and ", item.Entries.Select(id => "\"" + id + "\""));
            problems.Add(new DocumentProblem(
                $"\"{question}\" has two answers{(item.Part is null ? "" : " for the " + item.Part)}: {answers}. They exclude each other, so the item is as wide as both.",
                "$.features"));
        }
    }

    private static void AddLimit(List<DocumentProblem> problems, int count, string what, int most, string done)
        => problems.Add(new DocumentProblem($"The piece has {DateText.Digits(count)} {what}; the first {DateText.Digits(most)} were {done}."));

    /// <summary>A dating with the two answers that are always given.</summary>
    private readonly struct Answer
    {
        private Answer(Dating dating, double confidence)
        {
            Dating = dating;
            Interval = dating.Interval(confidence);
            Likely = dating.Interval(Dating.LikelyLevel, Interval);
        }

        internal Dating Dating { get; }

        internal DatedInterval? Interval { get; }

        internal DatedInterval? Likely { get; }

        // No more are combined than the engine takes.
        internal static Answer Of(ValueList<Evidence> merged, int today, Assumptions assumptions, double confidence)
            => new(
                Dating.OfDistinct(merged.Count > WindowEnds.MostItems ? ValueList.Of(merged.Take(WindowEnds.MostItems)) : merged, today, assumptions),
                confidence);
    }
}
