namespace Terminus;

/// <summary>What the words around "patent" say before a date or a number follows: whose patent, of which kind.</summary>
internal sealed class Claim
{
    /// <summary>The first token.</summary>
    internal int Start { get; set; }

    /// <summary>The token behind the words.</summary>
    internal int End { get; set; }

    /// <summary>The offices that are named, in order.</summary>
    internal List<string> Offices { get; } = [];

    internal bool IsDesign { get; set; }

    internal bool IsReissue { get; set; }

    internal bool IsPlant { get; set; }

    internal bool IsProvisional { get; set; }

    /// <summary>Whether the word patent stands in it; otherwise the words only go on from a claim before.</summary>
    internal bool HasPatent { get; set; }

    internal bool HasOther { get; set; }

    internal string? Office => Offices.Count > 0 ? Offices[0] : null;

    internal string? Right(string? office) => IsReissue ? "reissue"
        : IsPlant ? "plant"
        : IsDesign ? (office is null or "US" ? "design" : "registered-design")
        : office is null or "US" ? "utility"
        : "patent";
}
