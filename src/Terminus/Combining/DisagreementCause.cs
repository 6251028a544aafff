namespace Terminus;

/// <summary>What a disagreement between two items usually means. A guess from their kinds, to be looked into, never a finding.</summary>
public enum DisagreementCause
{
    /// <summary>Nothing usual: one of the two is misread, mistaken or misdated.</summary>
    Unknown,

    /// <summary>A part was replaced: two parts show features of different times.</summary>
    ReplacedPart,

    /// <summary>Two pieces were put together: marks on two parts exclude each other.</summary>
    MarriedParts,

    /// <summary>The engraving is later or earlier than the piece, or remembers an older event.</summary>
    LaterEngraving,

    /// <summary>An older form was made again: a revival or a reproduction.</summary>
    Revival,

    /// <summary>The pending words stayed on the die after the patent issued.</summary>
    PendingLeftOn,

    /// <summary>The mark stayed on the die after the right or the rule behind it had ended.</summary>
    OldDie,

    /// <summary>A digit or a letter is misread, or the mark is not what it was taken for.</summary>
    MisreadMark,

    /// <summary>The record is of another piece, or of an older owner's.</summary>
    RecordOfAnother,

    /// <summary>The maker's dates are incomplete, or the mark is a retailer's or a licensee's.</summary>
    MakerDates,

    /// <summary>The item lies after the day of the opinion.</summary>
    AfterOpinion,
}

/// <summary>Chooses the usual cause from the kinds of two items and from which of them is the later.</summary>
internal static class DisagreementCauses
{
    internal static DisagreementCause Of(Evidence one, Evidence? other, bool firstIsLater)
    {
        if (other is null)
        {
            return DisagreementCause.AfterOpinion;
        }

        Evidence later = firstIsLater ? one : other;
        Evidence earlier = firstIsLater ? other : one;
        bool twoParts = one.Part is not null && other.Part is not null && !string.Equals(one.Part, other.Part, StringComparison.Ordinal);
        return (earlier, later) switch
        {
            (KnownBy, _) => DisagreementCause.RecordOfAnother,
            (DateInscribed, _) or (_, DateInscribed) => DisagreementCause.LaterEngraving,
            _ when twoParts && IsMark(one) && IsMark(other) => DisagreementCause.MarriedParts,
            _ when twoParts => DisagreementCause.ReplacedPart,
            (PatentPending, _) => DisagreementCause.PendingLeftOn,
            (MakerActive, _) or (_, MakerActive) => DisagreementCause.MakerDates,
            (PatentIssued or RightRegistered or MarkInUse, FeatureSeen or ModelAdvertised or SubjectShown) => DisagreementCause.OldDie,
            (FeatureSeen or ModelAdvertised, PatentIssued or RightRegistered or MarkInUse or SubjectShown) => DisagreementCause.Revival,
            (FeatureSeen, FeatureSeen) => DisagreementCause.ReplacedPart,
            _ when IsMark(one) && IsMark(other) => DisagreementCause.MisreadMark,
            _ => DisagreementCause.Unknown,
        };
    }

    private static bool IsMark(Evidence evidence) => evidence is PatentIssued or PatentPending or RightRegistered or MarkInUse or MakerActive;
}
