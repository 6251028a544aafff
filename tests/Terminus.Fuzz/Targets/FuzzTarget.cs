namespace Terminus.Fuzz.Targets;

/// <summary>One way into the library: what it makes of an input, and what must hold of that for every input there is.</summary>
internal abstract class FuzzTarget
{
    /// <summary>All of them, by the names that the command line knows.</summary>
    internal static IReadOnlyDictionary<string, Func<FuzzTarget>> All { get; } = new SortedDictionary<string, Func<FuzzTarget>>(StringComparer.Ordinal)
    {
        ["assumptions"] = () => new AssumptionsTarget(),
        ["changes"] = () => new ChangesTarget(),
#if !LIBRARY_NETSTANDARD
        ["csv"] = () => new CsvTarget(),
#endif
        ["edtf"] = () => new EdtfTarget(),
        ["inscription"] = () => new InscriptionTarget(),
        ["inventory"] = () => new InventoryTarget(),
        ["number"] = () => new NumberTarget(),
        ["piece"] = () => new PieceTarget(),
        ["reference"] = () => new ReferenceTarget(),
        ["reports"] = () => new ReportsTarget(),
    };

    /// <summary>How much an answer may allocate.</summary>
    internal abstract AllocationLimits Limits { get; }

    /// <summary>Answers an input and judges the answer.</summary>
    /// <exception cref="BrokenLawException">Something does not hold that must.</exception>
    internal abstract Allocation Check(byte[] input);
}

/// <summary>A target with the type of its answers.</summary>
/// <typeparam name="T">What the library makes of an input.</typeparam>
/// <param name="limits">How much an answer may allocate.</param>
internal abstract class FuzzTarget<T>(AllocationLimits limits) : FuzzTarget
{
    /// <inheritdoc/>
    internal sealed override AllocationLimits Limits { get; } = limits;

    /// <inheritdoc/>
    internal sealed override Allocation Check(byte[] input)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        T first = Answer(input);
        long between = GC.GetAllocatedBytesForCurrentThread();
        T second = Answer(input);
        var allocation = new Allocation(between - before, GC.GetAllocatedBytesForCurrentThread() - between, input.Length);

        Demand.That(AreSame(first, second), "The same input gives the same answer.");
        Judge(first);
        Limits.Demand(allocation);
        return allocation;
    }

    /// <summary>The work that is measured.</summary>
    protected abstract T Answer(byte[] input);

    /// <summary>Whether two answers are one.</summary>
    protected virtual bool AreSame(T first, T second) => EqualityComparer<T>.Default.Equals(first, second);

    /// <summary>What must hold of an answer.</summary>
    protected abstract void Judge(T answer);
}
