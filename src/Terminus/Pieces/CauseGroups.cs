namespace Terminus;

/// <summary>Items that share a cause, put together by what they have in common.</summary>
internal static class CauseGroups
{
    // Among so few, the first of a key is found by looking at each.
    private const int Few = 16;

    /// <summary>The items with each group of one key replaced by one item, in the place of its first; the same list where there is no group.</summary>
    internal static List<Evidence> Merge(
        List<Evidence> items, Func<Evidence, CauseKey?> keyOf, KeptEvidence kept, Func<List<Evidence>, Evidence> merge)
    {
        var result = new List<Evidence>(items.Count);
        Dictionary<CauseKey, int>? places = items.Count > Few ? [] : null;
        Dictionary<int, List<Evidence>>? groups = null;
        foreach (Evidence item in items)
        {
            if (keyOf(item) is not { } key)
            {
                result.Add(item);
            }
            else if (PlaceOf(key, keyOf, result, places) is var place && place == result.Count)
            {
                places?.Add(key, place);
                result.Add(item);
            }
            else if ((groups ??= []).TryGetValue(place, out List<Evidence>? members))
            {
                members.Add(item);
            }
            else
            {
                groups.Add(place, [result[place], item]);
            }
        }

        if (groups is null)
        {
            return items;
        }

        foreach (KeyValuePair<int, List<Evidence>> group in groups)
        {
            result[group.Key] = kept.Merged(group.Value, merge);
        }

        return result;
    }

    // The place of the first item of a key, or the place of the next item where there is none yet.
    private static int PlaceOf(CauseKey key, Func<Evidence, CauseKey?> keyOf, List<Evidence> items, Dictionary<CauseKey, int>? places)
    {
        if (places is not null)
        {
            return places.TryGetValue(key, out int place) ? place : items.Count;
        }

        int first = 0;
        while (first < items.Count && keyOf(items[first]) != key)
        {
            first++;
        }

        return first;
    }
}
