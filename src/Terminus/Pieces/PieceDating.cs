using NodaTime;

namespace Terminus;

/// <summary>A piece dated: the whole, its parts, the claim it came with, and what was wrong with its description.</summary>
/// <remarks>An opinion on age from what is described: not an appraisal, an authentication or legal advice.</remarks>
public sealed class PieceDating
{
    /// <summary>The level of the interval where none is asked for.</summary>
    public const double UsualConfidence = 0.9;

    private PieceDating(
        Piece piece, Dating whole, IEnumerable<PartDating> parts, IEnumerable<Evidence> leftOut, IEnumerable<DocumentProblem> problems, ReferenceSet reference,
        double confidence)
    {
        Piece = piece;
        Dating = whole;
        Parts = ValueList.Of(parts);
        LeftOut = ValueList.Of(leftOut);
        Problems = ValueList.Of(problems);
        Reference = reference;
        Confidence = confidence;
        Interval = whole.Interval(confidence);
        Likely = whole.Interval(Dating.LikelyLevel, Interval);
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
        (List<Evidence> items, List<DocumentProblem> problems) = PieceEvidence.Of(piece, reference, assumptions);
        problems.InsertRange(0, read.Problems);
        var notOriginal = new HashSet<string>(piece.Parts.Where(p => !p.Original).Select(p => p.Part), StringComparer.Ordinal);
        bool IsLeftOut(Evidence item) => item.Part is not null && notOriginal.Contains(item.Part);

        Dating DateItems(IEnumerable<Evidence> chosen, bool report)
        {
            List<Evidence> merged = OneCause.Merge(chosen, reference, assumptions);
            if (report)
            {
                AddContradictoryAnswers(merged, reference, problems);
                AddTooMany(merged, problems);
            }

            return Dating.Of(merged.Take(WindowEnds.MostItems), asOf, assumptions);
        }

        Dating whole = DateItems(items.Where(item => !IsLeftOut(item)), report: true);

        // A part that shows everything there is has the answer of the whole.
        Dating DatePart(string part)
            => notOriginal.Count == 0 && items.TrueForAll(item => IsOfPart(item, part))
                ? whole
                : DateItems(items.Where(item => IsOfPart(item, part)), report: false);

        List<PartDating> parts =
        [
            .. PartsWithEvidence(piece, items).Select(part => new PartDating(
                part,
                !notOriginal.Contains(part),
                piece.Parts.FirstOrDefault(p => string.Equals(p.Part, part, StringComparison.Ordinal))?.Why,
                DatePart(part),
                confidence)),
        ];
        List<Evidence> leftOut = notOriginal.Count == 0 ? [] : OneCause.Merge(items.Where(IsLeftOut), reference, assumptions);
        return new PieceDating(piece, whole, parts, leftOut, problems, reference, confidence);
    }

    private static bool IsOfPart(Evidence item, string part) => item.Part is null || string.Equals(item.Part, part, StringComparison.Ordinal);

    private static IEnumerable<string> PartsWithEvidence(Piece piece, List<Evidence> items)
    {
        var shown = new HashSet<string>(items.Select(i => i.Part).OfType<string>(), StringComparer.Ordinal);
        return piece.Parts.Select(p => p.Part).Where(shown.Contains).Concat(items.Select(i => i.Part).OfType<string>()).Distinct(StringComparer.Ordinal);
    }

    private static void AddContradictoryAnswers(List<Evidence> merged, ReferenceSet reference, List<DocumentProblem> problems)
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

    private static void AddTooMany(List<Evidence> merged, List<DocumentProblem> problems)
    {
        if (merged.Count > WindowEnds.MostItems)
        {
            problems.Add(new DocumentProblem(
                $"The piece has {merged.Count} items of evidence; the first {WindowEnds.MostItems} were combined."));
        }
    }
}
