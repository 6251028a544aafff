namespace Terminus;

/// <summary>
/// Looks for entries that make no sense: dates out of order, numbers of another year, ids that nothing defines. It finds all at
/// once; an entry that it objects to still counts.
/// </summary>
public static class ReferenceCheck
{
    /// <summary>Checks one file, as a layer over what its entries may refer to.</summary>
    /// <param name="file">The file.</param>
    /// <param name="beneath">The layers beneath it; the built-in reference where null.</param>
    /// <param name="registers">The registers that know the years of numbers; the built-in ones where null.</param>
    public static IReadOnlyList<ReferenceFinding> Run(ReferenceFile file, ReferenceSet? beneath = null, RegisterSet? registers = null)
    {
        Guard.NotNull(file, nameof(file));
        var check = new EntryCheck((beneath ?? ReferenceSet.BuiltIn).With(file), registers ?? RegisterSet.BuiltIn);
        var seen = new HashSet<(ReferenceKind, string)>();
        foreach (ReferenceEntry entry in file.Entries)
        {
            if (!seen.Add((entry.Kind, entry.Id)))
            {
                check.Add(entry, ".id", "reference.duplicate-id", "kind", ReferenceWords.One(entry.Kind), "id", entry.Id);
            }

            check.Run(entry);
        }

        return ValueList.Of(check.Findings);
    }

    /// <summary>Checks the entries of a set that count, whichever layer they come from.</summary>
    /// <param name="set">The set.</param>
    /// <param name="registers">The registers that know the years of numbers; the built-in ones where null.</param>
    public static IReadOnlyList<ReferenceFinding> Run(ReferenceSet set, RegisterSet? registers = null)
    {
        Guard.NotNull(set, nameof(set));
        var check = new EntryCheck(set, registers ?? RegisterSet.BuiltIn);
        foreach (ReferenceEntry entry in set.Features.Concat<ReferenceEntry>(set.Questions)
            .Concat(set.Patents).Concat(set.Makers).Concat(set.Adverts).Concat(set.Marks))
        {
            check.Run(entry);
        }

        return ValueList.Of(check.Findings);
    }
}
