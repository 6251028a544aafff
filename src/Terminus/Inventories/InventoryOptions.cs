using NodaTime;

namespace Terminus;

/// <summary>How an inventory is dated. The same options and the same lines give the same answers, however many are in work at once.</summary>
public sealed record InventoryOptions
{
    /// <summary>How many batches of lines are in work at once where nothing is said.</summary>
    public const int UsualBatchesAtOnce = 16;

    /// <summary>Says how an inventory is dated.</summary>
    /// <param name="asOf">The day of the opinion.</param>
    /// <param name="reference">The reference file, or null for the built-in one.</param>
    /// <param name="assumptions">The house defaults, or null for <see cref="Terminus.Assumptions.House"/>.</param>
    /// <param name="confidence">The level of the intervals, above 0 and at most 1.</param>
    /// <param name="steps">Whether written results have the answers at all levels.</param>
    /// <param name="batchesAtOnce">How many batches of lines are in work at once, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level lies outside (0, 1], or the number of batches below 1.</exception>
    public InventoryOptions(
        LocalDate asOf,
        ReferenceSet? reference = null,
        Assumptions? assumptions = null,
        double confidence = PieceDating.UsualConfidence,
        bool steps = false,
        int batchesAtOnce = UsualBatchesAtOnce)
    {
        AsOf = asOf;
        Reference = reference ?? ReferenceSet.BuiltIn;
        Assumptions = assumptions ?? Assumptions.House;
        Confidence = confidence;
        Steps = steps;
        BatchesAtOnce = batchesAtOnce;
    }

    /// <summary>The day of the opinion.</summary>
    public LocalDate AsOf { get; init; }

    /// <summary>The reference file.</summary>
    public ReferenceSet Reference { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The house defaults.</summary>
    public Assumptions Assumptions { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The level of the intervals, above 0 and at most 1.</summary>
    public double Confidence { get; init => field = Guard.Level(value, nameof(value)); }

    /// <summary>Whether written results have the answers at all levels.</summary>
    public bool Steps { get; init; }

    /// <summary>
    /// How many batches of lines are in work at once. The thread pool gives them the cores there are; the number bounds the memory, and
    /// 1 keeps to one core.
    /// </summary>
    public int BatchesAtOnce
    {
        get;
        init => field = value >= 1 ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "At least one batch is in work.");
    }
}
