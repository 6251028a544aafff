namespace Terminus;

public static partial class ReasonText
{
    private static void AddReference(Dictionary<string, string> all)
    {
        all["reference.duplicate-id"] = "The {kind} \"{id}\" stands twice in this file; only the first counts.";
        all["reference.unknown-id"] = "No {kind} has the id \"{id}\", here or in a layer beneath.";
        all["reference.order"] = "The date \"{second}\", {later}, lies before \"{first}\", {earlier}.";
        all["reference.fades-after-gone"] =
            "It is said to fade only in {fading}, but to be gone by {gone}, which counts to {last}; let it fade earlier or be gone later.";
        all["reference.filed-after-issued"] = "It is filed {filed}, after it is issued {issued}.";
        all["reference.issue-day"] = "US patents issue on Tuesdays, and {date} is no such day.";
        all["reference.number-year"] = "By the register number {number} belongs to {register}, not to {issued}.";
        all["reference.mark-before-maker"] = "The mark is used from {mark}, before its maker {maker} began, {began}.";
        all["reference.patent-after-common"] =
            "It rests on {patent}, issued {issued}, but is said to be common from {common}; it may be an older thing that the patent improved.";
    }
}
