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

    /// <summary>Old stock: the piece was sold, or its parts were used up, after such forms had gone out.</summary>
    OldStock,
}

/// <summary>Chooses the usual cause from the kinds and parts of two items, from which of them is the later, and by how much.</summary>
/// <remarks>
/// The order of the rules is a judgement of this house. An item that is the earlier has an end: a patent or a registration only that of its
/// term, which a mark on a die outlives.
/// </remarks>
internal static class DisagreementCauses
{
    /// <summary>A mark that speaks of so long before is more often misread, or of another right, than left on a die.</summary>
    internal const int LongestDieYears = 50;

    private const int LongestDieDays = LongestDieYears * 366;

    internal static DisagreementCause Of(Evidence one, Evidence? other, bool firstIsLater, int daysApart)
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
            (Opinion, _) or (_, Opinion) => DisagreementCause.Unknown,
            (PatentPending, PatentIssued) => DisagreementCause.PendingLeftOn,
            _ when twoParts && IsMark(one) && IsMark(other) => DisagreementCause.MarriedParts,
            (MakerActive, _) or (_, MakerActive) => DisagreementCause.MakerDates,
            (KnownBy, PatentIssued or RightRegistered) => DisagreementCause.MisreadMark,
            (KnownBy or DateInscribed, FeatureSeen { Part: not null }) when later.Part != earlier.Part => DisagreementCause.ReplacedPart,
            (KnownBy, _) => DisagreementCause.RecordOfAnother,
            (DateInscribed, _) or (_, DateInscribed) => DisagreementCause.LaterEngraving,
            (PatentIssued or RightRegistered, _) when daysApart > LongestDieDays => DisagreementCause.MisreadMark,
            (FeatureSeen or ModelAdvertised, KnownBy) => DisagreementCause.OldStock,
            (FeatureSeen or ModelAdvertised, SubjectShown) => DisagreementCause.Revival,
            (PatentPending, _) when !twoParts => DisagreementCause.PendingLeftOn,
            _ when twoParts => DisagreementCause.ReplacedPart,
            (PatentIssued or RightRegistered or MarkInUse, _) => DisagreementCause.OldDie,
            (FeatureSeen, FeatureSeen) when earlier.Part is null || later.Part is null => DisagreementCause.ReplacedPart,
            (FeatureSeen or ModelAdvertised, _) => DisagreementCause.Revival,
            _ => DisagreementCause.Unknown,
        };
    }

    private static bool IsMark(Evidence evidence) => evidence is PatentIssued or PatentPending or RightRegistered or MarkInUse or MakerActive;
}
