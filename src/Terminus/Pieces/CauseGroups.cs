namespace Terminus;

/// <summary>Items that share a cause, put together by what they have in common.</summary>
internal static class CauseGroups
{
    /// <summary>The items with each group of one key replaced by one item, in the place of its first; the same list where there is no group.</summary>
    internal static List<Evidence> Merge(
        List<Evidence> items, Func<Evidence, CauseKey?> keyOf, KeptEvidence kept, Func<List<Evidence>, Evidence> merge)
    {
        var result = new List<Evidence>(items.Count);
        var places = new Dictionary<CauseKey, int>();
        Dictionary<int, List<Evidence>>? groups = null;
        foreach (Evidence item in items)
        {
            if (keyOf(item) is not { } key)
            {
                result.Add(item);
            }
            else if (!places.TryGetValue(key, out int place))
            {
                places.Add(key, result.Count);
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
}
