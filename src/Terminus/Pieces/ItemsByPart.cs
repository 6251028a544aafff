namespace Terminus;

/// <summary>Which items of a piece speak for the whole, which for each part, and which are left out.</summary>
internal sealed class ItemsByPart
{
    // A list of so few names is searched as fast as a set.
    private const int FewNames = 16;

    private readonly ValueList<Evidence> all;

    // The parts that are said not to be original; null for none, as usual.
    private readonly HashSet<string>? notOriginal;

    internal ItemsByPart(IReadOnlyList<PiecePart> described, ValueList<Evidence> all)
    {
        this.all = all;
        for (int i = 0; i < described.Count; i++)
        {
            if (!described[i].Original)
            {
                (notOriginal ??= new HashSet<string>(StringComparer.Ordinal)).Add(described[i].Part);
            }
        }

        Whole = notOriginal is null ? all : ValueList.Of(all.Where(item => IsOriginal(item.Part)));
        LeftOut = notOriginal is null ? ValueList<Evidence>.Empty : ValueList.Of(all.Where(item => !IsOriginal(item.Part)));
        Parts = NamesOfParts(described);
    }

    /// <summary>The items of all original parts and those of no part.</summary>
    internal ValueList<Evidence> Whole { get; }

    /// <summary>The items of parts that are not original.</summary>
    internal ValueList<Evidence> LeftOut { get; }

    /// <summary>The parts with evidence, in the order described, then in the order met.</summary>
    internal IReadOnlyList<string> Parts { get; }

    internal bool IsOriginal(string? part) => part is null || notOriginal is null || !notOriginal.Contains(part);

    /// <summary>The items of a part and those of no part; <see cref="Whole"/> itself where they are the same.</summary>
    internal ValueList<Evidence> OfPart(string part)
    {
        int count = 0;
        foreach (Evidence item in all.Span)
        {
            count += Speaks(item, part) ? 1 : 0;
        }

        if (count == Whole.Count && IsOriginal(part))
        {
            return Whole;
        }

        var chosen = new Evidence[count];
        int next = 0;
        foreach (Evidence item in all.Span)
        {
            if (Speaks(item, part))
            {
                chosen[next++] = item;
            }
        }

        return ValueList<Evidence>.Owning(chosen);
    }

    private static bool Speaks(Evidence item, string part) => item.Part is null || string.Equals(item.Part, part, StringComparison.Ordinal);

    private List<string> NamesOfParts(IReadOnlyList<PiecePart> described)
    {
        List<string> met = [];
        HashSet<string>? many = null;
        foreach (Evidence item in all.Span)
        {
            if (item.Part is { } part && !(many?.Contains(part) ?? met.Contains(part)))
            {
                met.Add(part);
                many?.Add(part);
                many ??= met.Count == FewNames ? new HashSet<string>(met, StringComparer.Ordinal) : null;
            }
        }

        if (met.Count == 0 || described.Count == 0)
        {
            return met;
        }

        var shown = new HashSet<string>(met, StringComparer.Ordinal);
        return [.. described.Select(p => p.Part).Where(shown.Contains).Concat(met).Distinct(StringComparer.Ordinal)];
    }
}
