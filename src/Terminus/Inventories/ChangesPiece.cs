namespace Terminus;

/// <summary>One piece in two runs: how its dates moved, and what moved them.</summary>
public sealed record ChangesPiece
{
    internal ChangesPiece(ChangesRecord? before, ChangesRecord? after)
    {
        Before = before;
        After = after;
        Possible = new WindowMove(before?.Possible, after?.Possible);
        Interval = new WindowMove(before?.Interval, after?.Interval);
        Likely = new WindowMove(before?.Likely, after?.Likely);
        Causes = before is null || after is null || !HasMoved ? ValueList<ChangesCause>.Empty : ValueList.Of(ChangesSearch.Causes(before, after));
    }

    /// <summary>The id of the piece.</summary>
    public string Id => (After ?? Before)!.Id;

    /// <summary>What the first run says of it, or null where it has no such piece.</summary>
    public ChangesRecord? Before { get; }

    /// <summary>What the second run says of it, or null where it has no such piece.</summary>
    public ChangesRecord? After { get; }

    /// <summary>How what is possible moved.</summary>
    public WindowMove Possible { get; }

    /// <summary>How the interval moved.</summary>
    public WindowMove Interval { get; }

    /// <summary>How the likely interval moved.</summary>
    public WindowMove Likely { get; }

    /// <summary>Whether the piece is in both runs.</summary>
    public bool IsInBoth => Before is not null && After is not null;

    /// <summary>Whether the piece is in both runs and any of its dates moved.</summary>
    public bool HasMoved => IsInBoth && (Possible.IsMove || Interval.IsMove || Likely.IsMove);

    /// <summary>Whether the two runs have different days of opinion, which can move a date of itself.</summary>
    public bool OtherDay => IsInBoth && Before!.AsOf != After!.AsOf;

    /// <summary>Whether the two runs asked for different levels or used different assumptions, which move dates with no entry changed.</summary>
    public bool OtherTerms => IsInBoth && (!Before!.Confidence.Equals(After!.Confidence) || !string.Equals(Before.Assumptions, After.Assumptions, StringComparison.Ordinal));

    /// <summary>The items that moved its dates, those that do so alone first; empty where nothing moved.</summary>
    public IReadOnlyList<ChangesCause> Causes { get; internal init => field = ValueList.Of(value); }
}
