namespace Terminus;

/// <summary>The entries of one kind by id, in the order in which the layers brought them; a replacement keeps the place.</summary>
internal sealed class EntryTable<T>
    where T : ReferenceEntry
{
    internal static readonly EntryTable<T> Empty = new([], new Dictionary<string, int>(StringComparer.Ordinal));

    private readonly T[] entries;
    private readonly Dictionary<string, int> places;

    private EntryTable(T[] entries, Dictionary<string, int> places)
    {
        this.entries = entries;
        this.places = places;
        All = ValueList.Of(entries);
    }

    internal IReadOnlyList<T> All { get; }

    internal T? Find(string? id) => id is not null && places.TryGetValue(id, out int place) ? entries[place] : null;

    /// <summary>This table with a layer over it. Within one layer the first entry of an id counts.</summary>
    /// <param name="layer">The entries of the layer.</param>
    /// <param name="replaced">Called for each entry that is replaced, with the old one and the new.</param>
    internal EntryTable<T> With(IReadOnlyList<T> layer, Action<ReferenceEntry, ReferenceEntry> replaced)
    {
        if (layer.Count == 0)
        {
            return this;
        }

        var all = new List<T>(entries.Length + layer.Count);
        all.AddRange(entries);
        var index = new Dictionary<string, int>(places, StringComparer.Ordinal);
        var inLayer = new HashSet<string>(StringComparer.Ordinal);
        foreach (T entry in layer)
        {
            if (!inLayer.Add(entry.Id))
            {
                continue;
            }

            if (index.TryGetValue(entry.Id, out int place))
            {
                replaced(all[place], entry);
                all[place] = entry;
            }
            else
            {
                index.Add(entry.Id, all.Count);
                all.Add(entry);
            }
        }

        return new EntryTable<T>([.. all], index);
    }
}
