namespace Terminus;

public static partial class ReasonText
{
    private static void AddEvidence(Dictionary<string, string> all)
    {
        all["evidence.patent-issued"] = "Bears {right}, issued {issued}: a piece that bears a patent is not older than its issue.";
        all["evidence.patent-pending"] = "Marked as applied for: {right}, filed {filed}, issued {issued}. The words fit the time between the two.";
        all["evidence.pending-wording"] = "Marked as applied for, with no patent known: the words carry no date of their own.";
        all["evidence.right-registered"] = "Bears {right}, registered {registered}: not older than its registration.";
        all["evidence.feature-seen"] = "Shows {feature}: {periods}; by {basis}.";
        all["evidence.feature-undated"] = "{feature}: no date is known for it, so it says nothing.";
        all["evidence.mark-in-use"] = "Bears the wording {wording}, in use {period} by {by}.";
        all["evidence.subject-shown"] = "Depicts {subject}, which first existed {date}: not older than that.";
        all["evidence.presented"] = "Carries the date of a presentation, {date}: made by then, and seldom long before.";
        all["evidence.commemorates"] = "Carries the date of an event, {date}: usually made by then, though old dates are put on new pieces.";
        all["evidence.since"] = "\"Since {date}\" is a firm's age and says nothing of the piece.";
        all["evidence.known-by"] = "Known by {what} of {date}: made by then.";
        all["evidence.bought-new"] = "Known by {what} of {date}, when it was sold as new: made in the years before.";
        all["evidence.maker-active"] = "Names {maker}, active {period}.";
        all["evidence.model-advertised"] = "The same model is advertised {period} ({what}).";
        all["evidence.opinion"] = "{opinion}: {window}.";
        all["evidence.opinion-silent"] = "{opinion}, with no window of its own left.";
        all["evidence.other"] = "Evidence of kind {kind}.";
    }

    private static void AddPieces(Dictionary<string, string> all)
    {
        all["pieces.feature-absent"] = "Looked for and not there: {feature}. Absence is kept and says nothing of the date.";
        all["pieces.from-filing-year"] = "Counted from {year}, when {patent} was filed: pieces marked pending may show it before the issue.";
        all["pieces.reference-beats-register"] = "The date is that of {patent} in the reference file, which beats the register's estimate.";
        all["pieces.older-on-part"] = "The same part also bears {what} ({date}); the newest governs, as all sit on one die.";
        all["pieces.feature-of-patent"] = "The mark speaks of the patent behind {what}, so the two are one observation and the mark's dates stand.";
        all["pieces.same-entry"] = "{what} is seen more than once and rests on one entry, so it counts once.";
        all["pieces.two-answers"] = "Given as an answer: {what}. The answers exclude each other, so this item is as wide as all of them.";
        all["pieces.adverts-merged"] = "{count} advertisements of one model count as one item, first to last.";
        all["pieces.opinion-same-cause"] = "It rests on {cause}, which is already in evidence, so it is not a second witness.";
        all["pieces.part-not-original"] = "The {part} is not original, so this is left out of the whole.";
    }
}
