namespace Terminus;

public static partial class ReasonText
{
    private static void AddSightings(Dictionary<string, string> all)
    {
        all["sightings.sources"] =
            "{given} {given:sighting|sightings} from {sources} independent {sources:source|sources}; of each source the one nearest to the end counts.";
        all["sightings.windows"] = "Sightings not dated to the day are placed so that the bound is farthest out.";
        all["sightings.even"] = "The sightings are spread evenly enough for an abrupt end; the check is weak with few of them.";
        all["sightings.uneven"] = "The sightings are not spread evenly, so only the gap nearest to the end counts.";
        all["sightings.auto-abrupt"] = "The sightings crowd too near to the end for slow adoption or decline, so the end counts as abrupt.";
        all["sightings.auto-gradual"] =
            "The sightings cannot rule out slow adoption or decline, so the bound is the wide one that holds for both. "
            + "If a law, a patent or a dated change of type made the end abrupt, say so.";
        all["sightings.range"] = "{sources} {sources:source|sources} over {years} years bound the end by their range (Strauss and Sadler 1989).";
        all["sightings.gap"] = "The {years} years between the two sightings nearest to the end bound it (Robson and Whitlock 1964).";
        all["sightings.gradual-gap"] =
            "The {years} years between the two sightings nearest to the end bound it, for sightings that thin out to nothing there.";
        all["sightings.linear"] =
            "The optimal linear estimator on the {used} sightings nearest to the end. It is approximate: "
            + "where sightings thin out, a stated 0.90 was seen to hold 0.7 to 0.8 of the time.";
        all["sightings.none"] = "There are no sightings.";
        all["sightings.few"] = "One independent source says nothing of how long before or after it the end was; two are needed.";
        all["sightings.open-date"] = "The sighting of {date} ({source}) has an open date, so the sightings cannot be put in order.";
        all["sightings.two-features"] = "The sightings are of two features, {first} and {second}; estimate one at a time.";
        all["sightings.certainty"] = "No number of sightings makes a bound certain.";
        all["sightings.no-spread"] = "All sightings fall on one day, so their range says nothing.";
        all["sightings.tie"] = "The two sightings nearest to the end fall on one day, so there is no gap to measure.";
        all["sightings.linear-few"] = "The optimal linear estimator needs {needed} independent sources; there {sources:is|are} {sources}.";
        all["sightings.linear-level"] = "{sources} {sources:source gives|sources give} the optimal linear estimator no finite bound at {confidence}.";
        all["sightings.linear-flat"] = "All sightings but one fall on one day, so the optimal linear estimator finds no shape.";
        all["sightings.no-silence"] = "The search to {searched} does not go beyond the sightings, so there is no silence to judge.";
        all["sightings.beyond-calendar"] = "At this confidence the bound lies outside the calendar, so it says nothing.";
    }
}
