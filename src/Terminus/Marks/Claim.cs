namespace Terminus;

/// <summary>What the words around "patent" say before a date or a number follows: whose patent, of which kind.</summary>
internal struct Claim
{
    private List<string>? moreOffices;

    /// <summary>The first token.</summary>
    internal int Start { get; init; }

    /// <summary>The token behind the words.</summary>
    internal int End { get; set; }

    /// <summary>The office that is named first, or null.</summary>
    internal string? Office { get; private set; }

    internal bool IsDesign { get; set; }

    internal bool IsReissue { get; set; }

    internal bool IsPlant { get; private set; }

    internal bool IsProvisional { get; private set; }

    /// <summary>Whether the word patent stands in it; otherwise the words only go on from a claim before.</summary>
    internal bool HasPatent { get; set; }

    /// <summary>The offices that are named, where they are several; otherwise null.</summary>
    internal readonly IReadOnlyList<string>? SeveralOffices => moreOffices is null ? null : [Office!, .. moreOffices];

    /// <summary>Whether an office is named that is not of the United States.</summary>
    internal readonly bool IsAbroad => Office is not (null or "US") || moreOffices is not null;

    internal readonly bool Names(string office) => Office == office || moreOffices?.Contains(office) == true;

    internal void Add(string office)
    {
        if (Office is null)
        {
            Office = office;
        }
        else if (!Names(office))
        {
            // A claim may be copied while it is read, so the list is not added to.
            moreOffices = [.. moreOffices ?? [], office];
        }
    }

    /// <summary>Forgets the offices but for one.</summary>
    internal void NameOnly(string office)
    {
        Office = office;
        moreOffices = null;
    }

    /// <summary>Takes what words of a claim say of the right.</summary>
    internal void Add(Terms terms)
    {
        IsDesign |= (terms & Terms.Design) != 0;
        IsPlant |= (terms & Terms.Plant) != 0;
        IsReissue |= (terms & Terms.Reissue) != 0;
        IsProvisional |= (terms & Terms.Provisional) != 0;
    }

    internal readonly string Right(string? office) => IsReissue ? "reissue"
        : IsPlant ? "plant"
        : IsDesign ? (office is null or "US" ? "design" : "registered-design")
        : office is null or "US" ? "utility"
        : "patent";
}
