namespace Terminus;

/// <summary>A mark as the grammar finds it, before registers and wordings give it windows.</summary>
internal sealed class MarkDraft
{
    private List<Reason>? reasons;

    internal MarkDraft(MarkKind kind, int start, int end)
    {
        Kind = kind;
        Start = start;
        End = end;
    }

    internal MarkKind Kind { get; set; }

    /// <summary>The position of the first character.</summary>
    internal int Start { get; }

    /// <summary>The position behind the last character.</summary>
    internal int End { get; set; }

    internal string? Office { get; set; }

    /// <summary>Whether the office is taken from the language alone.</summary>
    internal bool IsOfficeAssumed { get; set; }

    /// <summary>Another office that comes into question.</summary>
    internal string? OtherOffice { get; set; }

    internal string? Right { get; set; }

    internal StampedNumber? Number { get; set; }

    internal StampedDate? Date { get; set; }

    internal Wording? Wording { get; set; }

    /// <summary>The corners of a registry diamond, as far as they are described.</summary>
    internal RegistryDiamond? Diamond { get; set; }

    internal int Group { get; set; }

    internal bool IsUncertain { get; set; }

    /// <summary>Why the grammar took it so, in the order of the reading.</summary>
    internal IReadOnlyList<Reason> Reasons => reasons ?? (IReadOnlyList<Reason>)[];

    /// <summary>Whether the reading rests on a correction, a loss or an assumption, whatever the calendar says.</summary>
    internal bool IsInDoubt => IsUncertain || Number is { Doubtful: true } || Date is { Doubtful: true };

    /// <summary>Whether the date of a patent is a year alone.</summary>
    internal bool IsOfYear => Kind == MarkKind.PatentDate && Date is { IsOfYear: true };

    internal void Because(Reason reason) => (reasons ??= []).Add(reason);

    internal void NameOffice(string office, string? right)
    {
        Office = office;
        Right = right;
        IsOfficeAssumed = false;
    }

    /// <summary>The same stamp read as another right.</summary>
    internal MarkDraft As(MarkKind kind, string? office, string? right)
    {
        var other = (MarkDraft)MemberwiseClone();
        (other.Kind, other.Office, other.Right) = (kind, office, right);
        return other;
    }
}
