namespace Terminus;

/// <summary>What kind of statement a mark on a thing makes.</summary>
public enum MarkKind
{
    /// <summary>Words that are a mark and make none of the statements below.</summary>
    Other,

    /// <summary>The date of a patent.</summary>
    PatentDate,

    /// <summary>The number of a patent.</summary>
    PatentNumber,

    /// <summary>A patent applied for and not yet granted.</summary>
    Pending,

    /// <summary>The number of a design patent of the United States.</summary>
    DesignNumber,

    /// <summary>A design patent applied for and not yet granted.</summary>
    DesignPending,

    /// <summary>A registered design, with or without its number.</summary>
    RegisteredDesign,

    /// <summary>The lozenge of the British register of designs, 1842 to 1883.</summary>
    RegistryDiamond,

    /// <summary>A utility model, with or without its number.</summary>
    UtilityModel,

    /// <summary>A trade mark, registered or claimed.</summary>
    TradeMark,

    /// <summary>A claim of copyright.</summary>
    Copyright,

    /// <summary>A country of origin.</summary>
    Origin,

    /// <summary>A metal, its fineness or its plating.</summary>
    Metal,

    /// <summary>Words that claim protection without saying by which right or from when.</summary>
    Protected,

    /// <summary>Just the word patent, in any language.</summary>
    PatentWord,
}

/// <summary>The names of <see cref="MarkKind"/> in documents: lower-case words with hyphens.</summary>
internal static class MarkKindName
{
    private static readonly string[] Names =
    [
        "other", "patent-date", "patent-number", "pending", "design-number", "design-pending", "registered-design", "registry-diamond",
        "utility-model", "trade-mark", "copyright", "origin", "metal", "protected", "patent-word",
    ];

    internal static string Of(MarkKind kind) => Names[(int)kind];

    internal static bool TryParse(string name, out MarkKind kind)
    {
        int index = Array.IndexOf(Names, name);
        kind = index < 0 ? MarkKind.Other : (MarkKind)index;
        return index >= 0;
    }
}
