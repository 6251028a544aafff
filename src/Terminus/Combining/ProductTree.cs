namespace Terminus;

/// <summary>
/// P(start &lt; x, end &gt; y) for a moving x and y: one factor an item, kept in a binary tree of products, so that a change costs the
/// height of the tree, nothing is divided, and a factor of zero is no trouble.
/// </summary>
internal ref struct ProductTree
{
    private readonly StatedDays items;
    private readonly Span<double> products;
    private readonly Span<int> started;
    private readonly Span<int> ended;

    /// <summary>A tree before every closed start and before every end.</summary>
    /// <param name="items">The items.</param>
    /// <param name="products">Space for two numbers an item.</param>
    /// <param name="counters">Space for two counters an item, cleared.</param>
    internal ProductTree(StatedDays items, Span<double> products, Span<int> counters)
    {
        int count = items.Items;
        this.items = items;
        this.products = products.Slice(0, 2 * count);
        started = counters.Slice(0, count);
        ended = counters.Slice(count, count);
        for (int item = 0; item < count; item++)
        {
            ReadOnlySpan<StatedDay> windows = items[item];
            int open = 0;
            while (open < windows.Length && windows[open].Low == int.MinValue)
            {
                open++;
            }

            started[item] = open;
            products[count + item] = Factor(item);
        }

        for (int node = count - 1; node > 0; node--)
        {
            products[node] = products[2 * node] * products[(2 * node) + 1];
        }
    }

    /// <summary>The product of all factors, 1 where there is no item.</summary>
    internal readonly double Value => products.Length == 0 ? 1 : products[1];

    /// <summary>One more window of the item has started.</summary>
    internal readonly void Start(int item)
    {
        started[item]++;
        Update(item);
    }

    /// <summary>One more window of the item has ended.</summary>
    internal readonly void End(int item)
    {
        ended[item]++;
        Update(item);
    }

    private readonly void Update(int item)
    {
        int node = started.Length + item;
        products[node] = Factor(item);
        for (node >>= 1; node > 0; node >>= 1)
        {
            products[node] = products[2 * node] * products[(2 * node) + 1];
        }
    }

    // The windows are nested, widest first: those that have started and not ended are the first so many.
    private readonly double Factor(int item)
    {
        ReadOnlySpan<StatedDay> windows = items[item];
        int open = Math.Min(started[item], windows.Length - ended[item]);
        return open == windows.Length ? 1 : 1 - windows[open].Confidence;
    }
}
