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
            "It tells {bits} bits on average: the span that holds most of the spread falls from {spread} to {expectedSpread} years, "
            + "the interval from {interval} to {expectedInterval}, the likely one from {likely} to {expectedLikely}.";
        all["advice.no-help"] = "No answer to be expected moves the date ({bits} bits).";
        all["advice.look-again"] = "Look again at items {first} and {second} before anything new: they do not fit, and one of them may be misread.";
        all["advice.look-again-one"] = "Look again at item {first} before anything new: it lies after the day of the opinion.";
        all["advice.no-spread"] = "The evidence leaves no date to spread, so no question can be ranked.";
        all["advice.tie"] = "The first {count} tell the same, within what such figures can mean: begin with the one that is easiest to see.";
        all["advice.width-order"] = "By the expected width alone, {question} would come first.";
        all["advice.nothing-open"] = "The reference file has no open question for this piece.";
        all["advice.nothing-helps"] = "No open question of the reference file would move the date.";
    }
}
