namespace Terminus;

public static partial class ReasonText
{
    private static void AddAdvice(Dictionary<string, string> all)
    {
        all["advice.ask"] = "{question}";
        all["advice.ask-patent"] = "Is there the date or the number of a patent anywhere on it?";
        all["advice.answer"] = "{name}";
        all["advice.granted"] = "a patent granted in the {decade}s";
        all["advice.none-of-these"] = "none of these, or it cannot be told";
        all["advice.no-patent"] = "no patent is named";
        all["advice.worth"] =
            "It tells {bits} bits on average. Years in question, now and with the answer: {spread} → {expectedSpread} for most of the spread, "
            + "{interval} → {expectedInterval} for the interval, {likely} → {expectedLikely} for the likely one.";
        all["advice.no-help"] = "No answer to be expected moves the date ({bits} bits).";
        all["advice.look-again"] = "Look again at items {first} and {second} before anything new: they do not fit, and one of them may be misread.";
        all["advice.look-again-one"] = "Look again at item {first} before anything new: it lies after the day of the opinion.";
        all["advice.no-spread"] = "The evidence leaves no date to spread, so no question can be ranked.";
        all["advice.tie"] = "The first {count} tell the same, within what such figures can mean: begin with the one that is easiest to see.";
        all["advice.width-order"] = "By the expected width alone, {question} would come first.";
        all["advice.nothing-open"] = "The reference file has no open question for this piece.";
        all["advice.nothing-helps"] = "No open question of the reference file would move the date.";
        AddUnseen(all);
    }

    private static void AddUnseen(Dictionary<string, string> all)
    {
        all["unseen.patent-issued"] =
            "A patent mark may stay on a die long after the grant, may cover one part only, and shows nothing of when the right lapsed: "
            + "compare the drawing with the piece.";
        all["unseen.patent-pending"] = "Pending words may stay on a die after the grant, and a patent may never have followed.";
        all["unseen.right-registered"] = "A registration is of the shape and its owner, a maker or a seller; goods follow it for years.";
        all["unseen.feature-seen"] =
            "Revivals, reproductions, moulds taken from old pieces and replaced findings show the same features as old work.";
        all["unseen.mark-in-use"] = "Wordings of origin depend on the market sold to, and a mark can be copied with the mould or forged.";
        all["unseen.subject-shown"] = "A subject is shown long after its time: it gives no end.";
        all["unseen.date-inscribed"] = "An engraving can be later than the piece, or recall an older event.";
        all["unseen.known-by"] = "That the record is of this very piece rests on whoever says so.";
        all["unseen.maker-active"] = "A name may be a retailer's or a licensee's, and a firm's dates are seldom complete.";
        all["unseen.model-advertised"] = "Old stock was sold after the last advertisement that is known.";
        all["unseen.opinion"] = "An opinion is as good as what it rests on.";
    }
}
