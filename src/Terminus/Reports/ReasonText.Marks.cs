namespace Terminus;

/// <content>The English of the reasons of the reader of marks.</content>
public static partial class ReasonText
{
    private static void AddMarks(Dictionary<string, string> all)
    {
        all.Add("marks.tuesday", "{day} was a Tuesday, the day US patents issue.");
        all.Add("marks.doubtful-tuesday", "{day} was a Tuesday, the day US patents issue, in a season in which an issue or two were missed.");
        all.Add("marks.not-tuesday", "{day} was a {weekday}, and US patents issue on Tuesdays: it may be a filing, a foreign patent, a trade mark or a misreading.");
        all.Add("marks.before-tuesdays", "{day} was a {weekday}; before 1848 US patents issued on any day.");
        all.Add("marks.before-patents", "{day} is before the first US patent of 1790.");
        all.Add("marks.worn-century", "{stamped} is most likely {meant} with a worn 8.");
        all.Add("marks.no-such-day", "There is no day {day} in that month of {year}.");
        all.Add("marks.century-by-weekday", "The weekday settles the century: {year}.");
        all.Add("marks.century-likely", "The century is not stamped; {year} is the likelier one.");
        all.Add("marks.day-first", "The day stands before the month: {date} fits, the other order does not.");
        all.Add("marks.lost-digits", "Characters are lost; {count} {count:date fits|dates fit} as well as this one.");
        all.Add("marks.worn-letters", "Characters that look alike were put right.");
        all.Add("marks.office-assumed", "No country is named; English words are taken for American ones.");
        all.Add("marks.office-open", "The thing names {origin} as its origin, and the words name no country.");
        all.Add("marks.office-of-origin", "The thing names {origin} as its origin and no country for the number; {taken} is taken.");
        all.Add("marks.other-office", "The number may be one of {office}.");
        all.Add("marks.several-offices", "Patents of several countries are claimed: {offices}.");
        all.Add("marks.number-of-year", "A number with its year is the British form, for series that began anew each year.");
        all.Add("marks.design-word", "A design patent is claimed, without date or number.");
        all.Add("marks.design-letter-left-off", "On jewellery the D of a design patent is often left off.");
        all.Add("marks.range-of-readings", "The range holds every reading of the number: {readings}.");
        all.Add("marks.registration-of-design", "The words fit a British registered design as well as a trade mark.");
        all.Add("marks.number-of-unknown-right", "The words do not say to which register the number belongs.");
        all.Add("marks.bare-date", "A date without a word is mostly that of a patent.");
        all.Add("marks.bare-number", "Seven digits without a word are mostly the number of a US patent.");
        all.Add("marks.bare-year", "A year alone can be a model, an exhibition or an anniversary.");
        all.Add("marks.date-of-something", "The date of something else than a patent.");
        all.Add("marks.date-of-presentation", "Words of a gift stand before the date: it is most likely that of a presentation.");
        all.Add("marks.year-is-canadian", "A year alone is the form that Canadian law asked for.");
        all.Add("marks.number-and-date-agree", "The number {number} and the date agree, and are one observation.");
        all.Add("marks.since", "A year after such a word is the age of a firm, not of the thing.");
        all.Add("marks.model-number", "A number after No. alone is a model or a pattern.");
        all.Add("marks.wording-legal-from", "The wording is in use by law from {from} ({source}).");
        all.Add("marks.wording-legal-between", "Law confines the wording from {from} to {to} ({source}).");
        all.Add("marks.wording-customary-from", "The wording is in use from about {from} ({source}).");
        all.Add("marks.wording-customary-between", "The wording is in use from about {from} to {to} ({source}).");
        all.Add("marks.wording-undated", "No first date is known for the wording ({source}).");
    }
}
