using NodaTime;

namespace Terminus;

/// <summary>
/// What changed between two runs over the same pieces: whose dates moved, by how much, and which entry of the reference file moved them.
/// </summary>
/// <remarks>
/// Pieces are joined by id; of those with one id the first is compared with the first, and so on. Everything streams: where both runs are in the same
/// order, no more is held than what stands between the two places of one piece.
/// </remarks>
public static class Changes
{
    /// <summary>Compares two runs, piece by piece, those that did not move included.</summary>
    /// <param name="before">The results of the first run.</param>
    /// <param name="after">The results of the second.</param>
    /// <returns>Each piece as soon as both of its results are known; pieces of one run alone at the end, those of the first run first.</returns>
    public static IEnumerable<ChangesPiece> Between(IEnumerable<ChangesRecord> before, IEnumerable<ChangesRecord> after)
        => Join(Guard.NotNull(before, nameof(before)), Guard.NotNull(after, nameof(after)));

    /// <summary>Compares two runs, piece by piece, those that did not move included.</summary>
    /// <param name="before">The dated pieces of the first run.</param>
    /// <param name="after">The dated pieces of the second.</param>
    /// <returns>Each piece as soon as both of its results are known; pieces of one run alone at the end, those of the first run first.</returns>
    public static IEnumerable<ChangesPiece> Between(IEnumerable<PieceDating> before, IEnumerable<PieceDating> after)
        => Join(Guard.NotNull(before, nameof(before)).Select(ChangesRecord.Of), Guard.NotNull(after, nameof(after)).Select(ChangesRecord.Of));

    /// <summary>
    /// Dates an inventory under two versions of a reference and compares them. Of the entries on which an item rests only those that differ between the
    /// two versions are named, and with a feature the patents it rests on.
    /// </summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="asOf">The day of the opinion.</param>
    /// <param name="before">The reference before.</param>
    /// <param name="after">The reference after.</param>
    /// <param name="assumptions">The house defaults, or null for <see cref="Assumptions.House"/>.</param>
    /// <param name="confidence">The level of the interval, above 0 and at most 1.</param>
    /// <returns>Each piece in the order given.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level lies outside (0, 1].</exception>
    public static IEnumerable<ChangesPiece> UnderReferences(
        IEnumerable<Piece> pieces,
        LocalDate asOf,
        ReferenceSet before,
        ReferenceSet after,
        Assumptions? assumptions = null,
        double confidence = PieceDating.UsualConfidence)
    {
        Guard.NotNull(pieces, nameof(pieces));
        Guard.Level(confidence, nameof(confidence));
        var entries = new ChangesEntries(Guard.NotNull(before, nameof(before)), Guard.NotNull(after, nameof(after)));
        return pieces.Select(piece => entries.Narrow(new ChangesPiece(
            ChangesRecord.Of(PieceDating.Of(piece, asOf, before, assumptions, confidence)),
            ChangesRecord.Of(PieceDating.Of(piece, asOf, after, assumptions, confidence)))));
    }

    private static IEnumerable<ChangesPiece> Join(IEnumerable<ChangesRecord> before, IEnumerable<ChangesRecord> after)
    {
        var waitingBefore = new Waiting();
        var waitingAfter = new Waiting();
        using IEnumerator<ChangesRecord> first = before.GetEnumerator();
        using IEnumerator<ChangesRecord> second = after.GetEnumerator();
        bool moreBefore = true;
        bool moreAfter = true;
        while (moreBefore || moreAfter)
        {
            moreBefore = moreBefore && first.MoveNext();
            if (moreBefore)
            {
                waitingBefore.Add(first.Current);
            }

            moreAfter = moreAfter && second.MoveNext();
            if (moreAfter)
            {
                waitingAfter.Add(second.Current);
            }

            if (moreBefore && Pair(first.Current.Id, waitingBefore, waitingAfter) is { } one)
            {
                yield return one;
            }

            if (moreAfter && Pair(second.Current.Id, waitingBefore, waitingAfter) is { } other)
            {
                yield return other;
            }
        }

        foreach (ChangesRecord alone in waitingBefore.Rest())
        {
            yield return new ChangesPiece(alone, null);
        }

        foreach (ChangesRecord alone in waitingAfter.Rest())
        {
            yield return new ChangesPiece(null, alone);
        }
    }

    private static ChangesPiece? Pair(string id, Waiting before, Waiting after)
        => before.Has(id) && after.Has(id) ? new ChangesPiece(before.Take(id), after.Take(id)) : null;

    /// <summary>Results of one run whose partner has not come yet.</summary>
    private sealed class Waiting
    {
        private readonly Dictionary<string, Queue<(long Order, ChangesRecord Record)>> byId = new(StringComparer.Ordinal);
        private long order;

        internal void Add(ChangesRecord record)
        {
            if (!byId.TryGetValue(record.Id, out Queue<(long, ChangesRecord)>? queue))
            {
                byId[record.Id] = queue = new Queue<(long, ChangesRecord)>(1);
            }

            queue.Enqueue((order++, record));
        }

        internal bool Has(string id) => byId.ContainsKey(id);

        internal ChangesRecord Take(string id)
        {
            Queue<(long Order, ChangesRecord Record)> queue = byId[id];
            ChangesRecord record = queue.Dequeue().Record;
            if (queue.Count == 0)
            {
                byId.Remove(id);
            }

            return record;
        }

        internal IEnumerable<ChangesRecord> Rest() => byId.Values.SelectMany(q => q).OrderBy(r => r.Order).Select(r => r.Record);
    }
}
