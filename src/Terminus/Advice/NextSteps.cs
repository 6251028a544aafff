namespace Terminus;

/// <summary>
/// What to look at next: the questions that a piece leaves open, ranked by what their answers would tell of its date.
/// </summary>
/// <remarks>
/// <para>The rank is the expected fall of the entropy of <see cref="Dating.Spread"/> (Lindley 1956), exact on its steps; questions that tell the same are
/// ranked by the expected width of the spread, then by id. How likely an answer is on a piece of a day comes from the usage that the reference file gives
/// for it, and at every day the answers sum to one. Each answer is then added to the evidence and the piece dated anew.</para>
/// <para>The rank says where to look, not what will be found: it rests on the spread, which is no confidence, and on house figures for "none
/// of these" that have no source.</para>
/// </remarks>
public sealed class NextSteps
{
    private const int MostShown = 3;

    // A tie: the figures rest on usage known to the decade.
    private const double TiedShare = 0.95;

    private NextSteps(PieceDating dating, IEnumerable<NextStep> ranked, double entropy, IEnumerable<Reason> notes)
    {
        Dating = dating;
        All = ValueList.Of(ranked);
        Best = ValueList.Of(All.Where(s => s.Helps).Take(MostShown));
        NotHelpful = ValueList.Of(All.Where(s => !s.Helps));
        Entropy = entropy;
        Notes = ValueList.Of(notes);
        Unseen = ValueList.Of(Terminus.Unseen.Of(dating));
    }

    /// <summary>The dated piece that the advice is for.</summary>
    public PieceDating Dating { get; }

    /// <summary>The two or three questions that tell most, the best first; none where nothing open would help.</summary>
    public IReadOnlyList<NextStep> Best { get; }

    /// <summary>All open questions, the best first.</summary>
    public IReadOnlyList<NextStep> All { get; }

    /// <summary>The open questions whose answers would not move the date.</summary>
    public IReadOnlyList<NextStep> NotHelpful { get; }

    /// <summary>The entropy of the spread now, in bits: the logarithm to base 2 of the days of an even spread as uncertain.</summary>
    public double Entropy { get; }

    /// <summary>What is to be known of the order: contradictions to clear up first, ties, another order by width, nothing to ask.</summary>
    public IReadOnlyList<Reason> Notes { get; }

    /// <summary>For each kind of evidence that the piece has, what evidence of that kind cannot show, such as an old die or a copy.</summary>
    public IReadOnlyList<Reason> Unseen { get; }

    /// <summary>Ranks the questions that a dated piece leaves open.</summary>
    /// <param name="dating">The dated piece.</param>
    public static NextSteps Of(PieceDating dating)
    {
        Guard.NotNull(dating, nameof(dating));
        var notes = new List<Reason>();
        if (dating.Dating.Disagreements.FirstOrDefault(d => d.Mass >= dating.Dating.Assumptions.SaidFrom) is { } disagreement)
        {
            notes.Add(new Reason(
                disagreement.Second is null ? "advice.look-again-one" : "advice.look-again",
                "first", DateText.Digits(disagreement.First + 1),
                "second", disagreement.Second is { } second ? DateText.Digits(second + 1) : ""));
        }

        IReadOnlyList<SpreadCell> cells = dating.Dating.Spread.Cells;
        if (!cells.Any(c => c.Mass > 0))
        {
            notes.Add(new Reason("advice.no-spread"));
            return new NextSteps(dating, [], 0, notes);
        }

        var worth = new QuestionWorth(dating);
        List<NextStep> ranked =
        [
            .. OpenQuestions.Of(dating).Select(worth.Of)
                .OrderByDescending(s => s.Helps)
                .ThenByDescending(s => Math.Round(s.Bits, 9))
                .ThenBy(s => Math.Round(s.ExpectedSpreadWidth, 6))
                .ThenBy(s => s.Id, StringComparer.Ordinal)
                .ThenBy(s => s.Part, StringComparer.Ordinal),
        ];
        MarkTies(ranked);
        AddNotes(notes, ranked);
        return new NextSteps(dating, ranked, worth.Entropy, notes);
    }

    private static void MarkTies(List<NextStep> ranked)
    {
        for (int i = 1; i < ranked.Count && ranked[i].Helps && ranked[i].Bits >= ranked[0].Bits * TiedShare; i++)
        {
            ranked[i] = ranked[i] with { IsTiedWithBest = true };
            ranked[0] = ranked[0] with { IsTiedWithBest = true };
        }
    }

    private static void AddNotes(List<Reason> notes, List<NextStep> ranked)
    {
        List<NextStep> helpful = [.. ranked.Where(s => s.Helps)];
        if (helpful.Count == 0)
        {
            notes.Add(new Reason(ranked.Count == 0 ? "advice.nothing-open" : "advice.nothing-helps"));
            return;
        }

        int tied = helpful.Count(s => s.IsTiedWithBest);
        if (tied > 1)
        {
            notes.Add(new Reason("advice.tie", "count", DateText.Digits(tied)));
        }

        NextStep narrowest = helpful.OrderBy(s => s.ExpectedSpreadWidth).First();
        if (narrowest.ExpectedSpreadWidth < helpful[0].ExpectedSpreadWidth * TiedShare)
        {
            notes.Add(new Reason("advice.width-order", "question", narrowest.Id));
        }
    }
}
