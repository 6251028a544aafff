namespace Terminus;

/// <summary>Items of evidence in order, identical ones once.</summary>
internal static class DistinctItems
{
    // Hashing an item costs more than comparing it with a few others.
    private const int Few = 16;

    internal static ValueList<Evidence> Of(ValueList<Evidence> items)
        => items.Count <= Few && !HasTwice(items.Span) ? items : ValueList.Of(items.Distinct());

    private static bool HasTwice(ReadOnlySpan<Evidence> items)
    {
        for (int i = 1; i < items.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (items[i].Equals(items[j]))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
