namespace Terminus;

/// <summary>How far the reading of what follows from a claim has come.</summary>
internal struct ClaimState
{
    internal ClaimState(int first, in Claim claim)
    {
        Claim = claim;
        First = first;
        At = claim.End;
        End = claim.End;
        Lead = -1;
    }

    /// <summary>The words of the claim, to which words between its dates and numbers add.</summary>
    internal Claim Claim;

    /// <summary>The index of the claim's first mark.</summary>
    internal int First { get; }

    /// <summary>The token to read next.</summary>
    internal int At { get; set; }

    /// <summary>The token behind what belongs to the claim for certain.</summary>
    internal int End { get; set; }

    /// <summary>Whether the claim has no mark yet.</summary>
    internal bool IsOpen { get; set; }

    /// <summary>The first of the words before the next mark (<c>No.</c>, a country), or -1.</summary>
    internal int Lead { get; set; }

    /// <summary>Whether a number word stands before what is read next.</summary>
    internal bool IsExplicitNumber { get; set; }

    /// <summary>Whether another country was just named, whose year follows.</summary>
    internal bool IsOfNewOffice { get; set; }

    /// <summary>A date that waits for the year of the next one, or null.</summary>
    internal StampedDate? Shared { get; set; }

    /// <summary>The token with which that date starts.</summary>
    internal int SharedFrom { get; set; }

    /// <summary>The token with which a mark starts whose own first token is <paramref name="next"/>.</summary>
    internal readonly int StartOf(int next) => IsOpen ? Claim.Start : Lead >= 0 ? Lead : next;

    /// <summary>A mark was made that ends before a token.</summary>
    internal void Wrote(int behind)
    {
        At = behind;
        End = behind;
        Lead = -1;
        IsExplicitNumber = false;
        IsOfNewOffice = false;
    }
}
