namespace Terminus;

public static partial class ReasonText
{
    private static void AddStatement(Dictionary<string, string> all)
    {
        all["statement.qualified"] = "The evidence contradicts itself (conflict {conflict}), so no single date is stated.";
        all["statement.reading"] = "{order} reading, {window}{weight}: {keeps}; it sets aside {setAside}.";
        all["statement.not-before"] = "Not before {year}.";
        all["statement.possible"] = "Not before {from} and not after {until}.";
        all["statement.not-after"] = "Not after {year}.";
        all["statement.interval"] = "{likelihood} {years} ({confidence}).";
        all["statement.interval-and-likely"] = "{likelihood} {years} ({confidence}); {likelyWord} {likely} ({likelyConfidence}).";
        all["statement.open"] = "No {side} date at {confidence}.";
        all["statement.open-and-likely"] = "No {side} date at {confidence}; {likelyWord} {likely} ({likelyConfidence}).";
        all["statement.any-date"] = "Nothing here dates the piece at {confidence}.";
        all["statement.any-date-but-likely"] = "Nothing dates the piece at {confidence}; {likelyWord} {likely} ({likelyConfidence}).";
        all["statement.outside-possible"] = "Firm evidence leaves {possible}, but the rest speaks against that, and at {confidence} the answer is {years}.";
        all["statement.outside-possible-but-likely"] =
            "Firm evidence leaves {possible}, but the rest speaks against that, and at {confidence} the answer is {years}; {likelyWord} {likely} ({likelyConfidence}).";
        all["statement.usage-only"] = "Nothing firm bounds the date: what follows rests on usage alone.";
        all["statement.disagreement"] = "{first} and {second} do not fit ({mass} of the evidence of the two, {level}, {apart} apart): {cause}.";
        all["statement.after-opinion"] = "{first} lies after the day of the opinion ({mass}).";
        all["statement.left-out"] = "The {parts} is not original and is dated apart.";
        all["grounds.start"] = "The earliest date, {date}, is set by {items} ({strength}, stated at {confidence}).";
        all["grounds.end"] = "The latest date, {date}, is set by {items} ({strength}, stated at {confidence}).";
        all["grounds.no-start"] = "Nothing sets an earliest date at {confidence}.";
        all["grounds.no-end"] = "Nothing sets a latest date at {confidence} but the day of the opinion.";
        all["grounds.weak-start"] = "Too weak to set an earliest date at {confidence}: {items}.";
        all["grounds.weak-end"] = "Too weak to set a latest date at {confidence}: {items}.";
        all["grounds.firm"] = "Firm evidence alone leaves {window}; the rest is usage.";
        all["grounds.nothing-firm"] = "Firm evidence alone leaves any date; all of this is usage.";
        all["grounds.set-aside"] = "Set aside, as it does not meet the answer: {items}.";
        all["grounds.silent"] = "Kept, though it says nothing of the date: {items}.";
        all["grounds.without"] = "Without {item} the answer would be: {years}.";
        all["grounds.would-close"] = "A dated record of the piece, or a feature whose end is known, would give a latest date.";
        all["claim.agrees"] = "The evidence leaves {stated} open: it gives {interval}.";
        all["claim.too-narrow"] = "{stated} says more than the evidence does: it gives {interval}.";
        all["claim.contradicted"] = "{stated} is ruled out (plausibility {plausibility}), above all by: {by}";
        all["claim.contradicted-together"] = "{stated} is ruled out (plausibility {plausibility}) by the items together.";
        all["cause.unknown"] = "one of the two may be misread or mistaken";
        all["cause.replaced-part"] = "usually a replaced part";
        all["cause.married-parts"] = "usually two pieces put together";
        all["cause.later-engraving"] = "usually an engraving later than the piece, or one that recalls an older event";
        all["cause.revival"] = "usually an older form made again, or a reproduction";
        all["cause.pending-left-on"] = "usually pending words left on the die after the grant";
        all["cause.old-die"] = "usually a mark left on the die after its time";
        all["cause.misread-mark"] = "usually a misread digit or a mark taken for another";
        all["cause.record-of-another"] = "usually a record of another piece";
        all["cause.maker-dates"] = "the maker's dates may be incomplete, or the name is a retailer's";
        all["cause.old-stock"] = "usually old stock, sold or used up after such forms had gone out";
        all["cause.after-opinion"] = "it lies after the day of the opinion";
    }
}
