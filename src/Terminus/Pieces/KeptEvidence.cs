using System.Runtime.CompilerServices;

namespace Terminus;

/// <summary>
/// What entries and texts say, made once for a reference and house defaults: the same features, patents and stamps come again and again in
/// a collection. Bounded, and safe on any thread.
/// </summary>
internal sealed class KeptEvidence
{
    private const int MostItems = 4096;
    private const int MostStamps = 2048;
    private const int LongestText = 80;
    private const int MostDefaults = 4;

    private static readonly ConditionalWeakTable<ReferenceSet, StrongBox<KeptEvidence[]?>> ByReference = new();

    private readonly Assumptions house;
    private readonly Kept<Key, Evidence> items = new(MostItems);
    private readonly Kept<Key, StampEvidence> stamps = new(MostStamps);
    private readonly Kept<Pair, Evidence> merged = new(MostItems);

    private KeptEvidence(Assumptions house) => this.house = house;

    private enum Saying
    {
        Feature,
        Absent,
        Subject,
        Maker,
        Issued,
        Pending,
        Stamp,
    }

    /// <summary>What is kept for a reference and house defaults. Of several defaults in turn, that of the last few is.</summary>
    internal static KeptEvidence Of(ReferenceSet reference, Assumptions house)
    {
        StrongBox<KeptEvidence[]?> box = ByReference.GetValue(reference, static _ => new StrongBox<KeptEvidence[]?>());
        KeptEvidence[] all = Volatile.Read(ref box.Value) ?? [];
        foreach (KeptEvidence kept in all)
        {
            if (ReferenceEquals(kept.house, house))
            {
                return kept;
            }
        }

        return OfOthers(box, all, house);
    }

    // Equal defaults say the same, whoever made them.
    private static KeptEvidence OfOthers(StrongBox<KeptEvidence[]?> box, KeptEvidence[] all, Assumptions house)
    {
        if (Array.Find(all, kept => kept.house.Equals(house)) is { } known)
        {
            return known;
        }

        var added = new KeptEvidence(house);
        Volatile.Write(ref box.Value, [added, .. all.Take(MostDefaults - 1)]);
        return added;
    }

    internal Evidence Feature(FeatureEntry entry, string? part, ReferenceSet reference)
        => items.Get(new Key(Saying.Feature, entry, part), (reference, house), static (key, with)
            => EntryEvidence.OfFeature((FeatureEntry)key.What, key.Part, with.reference, with.house));

    internal Evidence Absent(FeatureEntry entry, string? part)
        => items.Get(new Key(Saying.Absent, entry, part), entry, static (key, entry) => EntryEvidence.OfAbsent(entry.Id, entry.Name, key.Part, entry.Source));

    /// <summary>What a subject with a date says.</summary>
    internal Evidence Subject(FeatureEntry entry, string? part)
        => items.Get(new Key(Saying.Subject, entry, part), entry, static (key, entry) => EntryEvidence.OfSubject(entry, key.Part)!);

    internal Evidence Maker(MakerEntry entry, string? part)
        => items.Get(new Key(Saying.Maker, entry, part), entry, static (key, entry) => EntryEvidence.OfMaker(entry, entry.From, entry.Until, key.Part));

    /// <summary>What a mark says of a patent that it names, pending or with an issue date.</summary>
    internal Evidence Patent(PatentEntry entry, string? part, bool pending)
        => items.Get(new Key(pending ? Saying.Pending : Saying.Issued, entry, part), entry, static (key, entry)
            => EntryEvidence.OfPatent(entry, key.Part, key.Says == Saying.Pending)!);

    internal StampEvidence Stamp(string text, string? part, ReferenceSet reference)
        => text.Length > LongestText
            ? StampEvidence.Of(text, part, reference)
            : stamps.Get(new Key(Saying.Stamp, text, part), reference, static (key, reference) => StampEvidence.Of((string)key.What, key.Part, reference));

    /// <summary>The item that stands for several of one cause; two items, which are kept themselves, come together again and again.</summary>
    internal Evidence Merged(List<Evidence> members, Func<List<Evidence>, Evidence> merge)
        => members.Count == 2
            ? merged.Get(new Pair(members[0], members[1]), (members, merge), static (_, with) => with.merge(with.members))
            : merge(members);

    /// <summary>Two items by themselves, not by what they say.</summary>
    private readonly struct Pair(Evidence first, Evidence second) : IEquatable<Pair>
    {
        private readonly Evidence first = first;
        private readonly Evidence second = second;

        public bool Equals(Pair other) => ReferenceEquals(first, other.first) && ReferenceEquals(second, other.second);

        public override bool Equals(object? obj) => obj is Pair other && Equals(other);

        public override int GetHashCode() => unchecked((RuntimeHelpers.GetHashCode(first) * 31) + RuntimeHelpers.GetHashCode(second));
    }

    /// <summary>An entry by itself or a text by its characters, on a part, and how it speaks.</summary>
    private readonly struct Key(Saying says, object what, string? part) : IEquatable<Key>
    {
        internal Saying Says { get; } = says;

        internal object What { get; } = what;

        internal string? Part { get; } = part;

        public bool Equals(Key other)
            => Says == other.Says
                && (ReferenceEquals(What, other.What) || (What is string text && text.Equals(other.What as string, StringComparison.Ordinal)))
                && string.Equals(Part, other.Part, StringComparison.Ordinal);

        public override bool Equals(object? obj) => obj is Key other && Equals(other);

        public override int GetHashCode()
        {
            int of = What is string text ? StringComparer.Ordinal.GetHashCode(text) : RuntimeHelpers.GetHashCode(What);
            int on = Part is null ? 0 : StringComparer.Ordinal.GetHashCode(Part);
            return unchecked((((of * 31) + on) * 31) + (int)Says);
        }
    }
}
