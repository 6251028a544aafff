namespace Terminus;

/// <summary>Which entries differ between two versions of a reference, asked one by one and remembered.</summary>
internal sealed class ChangesEntries(ReferenceSet before, ReferenceSet after)
{
    private readonly Dictionary<string, bool> known = new(StringComparer.Ordinal);

    /// <summary>The same change with only the entries that differ, where any does.</summary>
    internal ChangesPiece Narrow(ChangesPiece change)
        => change.Causes.Count == 0 ? change : change with { Causes = ValueList.Of(change.Causes.Select(Narrow)) };

    private ChangesCause Narrow(ChangesCause cause)
    {
        string[] changed = [.. cause.Entries.Concat(cause.Entries.SelectMany(PatentsOf)).Distinct(StringComparer.Ordinal).Where(Differs)];
        return changed.Length == 0 ? cause : cause with { Entries = changed };
    }

    // A feature counts from the filing of a patent that introduced it, so that patent may be what moved it.
    private IEnumerable<string> PatentsOf(string entry)
        => new[] { before.Feature(entry), after.Feature(entry) }.OfType<FeatureEntry>().SelectMany(f => f.Patents);

    private bool Differs(string id)
    {
        if (!known.TryGetValue(id, out bool differs))
        {
            known[id] = differs = !Equals(before.Feature(id), after.Feature(id))
                || !Equals(before.Patent(id), after.Patent(id))
                || !Equals(before.Maker(id), after.Maker(id))
                || !Equals(before.Advert(id), after.Advert(id))
                || !Equals(before.Mark(id), after.Mark(id));
        }

        return differs;
    }
}
