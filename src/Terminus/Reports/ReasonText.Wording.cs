namespace Terminus;

public static partial class ReasonText
{
    private static void AddWording(Dictionary<string, string> all)
    {
        all["brief.patent"] = "{patent} granted {granted}";
        all["brief.pending"] = "{patent} applied for {filed}, granted {granted}";
        all["brief.pending-filed"] = "{patent} applied for {filed}";
        all["brief.pending-granted"] = "marked as applied for, {patent} granted {granted}";
        all["brief.pending-words"] = "marked as applied for";
        all["brief.registered"] = "{right} of {registered}";
        all["brief.feature"] = "{feature} ({years})";
        all["brief.mark"] = "marked {wording} ({years})";
        all["brief.subject"] = "shows {subject}, known from {date}";
        all["brief.inscribed"] = "inscribed {date}";
        all["brief.known"] = "{what} of {date}";
        all["brief.maker"] = "{maker}, active {years}";
        all["brief.advertised"] = "model advertised {years}";
        all["brief.opinion"] = "{opinion}";
        all["brief.disputed"] = "the evidence does not all fit";
        all["record.time-span"] =
            "{display} ({window} at confidence {confidence}: belief {belief}, plausibility {plausibility}, conflict {conflict})";
        all["record.time-span-any"] = "{display} (conflict {conflict})";
        all["remark.short-lived"] = "By its entry in the reference file {feature} was made for a short time: introduced {introduced}, gone by {gone}.";
        all["caution.ivory"] =
            "Caution: trade in ivory is restricted by law, and what is allowed hangs on age and kind; this opinion is no proof of either.";
        all["caution.tortoiseshell"] = "Caution: trade in tortoiseshell is restricted by law; this opinion is no proof of age or of material.";
        all["caution.cellulose-nitrate"] =
            "Caution: cellulose nitrate burns fiercely, and gives off acid as it decays. Keep it cool, aired and apart; never test it with a hot pin.";
        all["caution.radium"] = "Caution: old luminous paint may hold radium. Do not open, scrape or take it apart.";
        all["caution.lead"] = "Caution: it may hold lead. Keep it from children and from food.";
        all["caution.precious-metal"] = "A metal's name or mark is a claim, not a test: the metal was not tested here.";
        all["caution.patent-status"] =
            "A patent or registration mark dates; it says nothing of rights in force today. Do not repeat \"patented\" as a present claim.";
        all["caution.over-hundred"] = "That it is over 100 years old is an opinion, and no proof where a law or customs ask for one.";
        all["caution.antique"] = "The evidence does not show that it is over 100 years old, as \"antique\" commonly asks.";
        all["caution.opinion"] = "An opinion on age from what is described: not an appraisal, an authentication or legal advice.";
    }
}
