namespace Terminus;

public static partial class ReasonText
{
    /// <summary>The words for what registers and the calendar of issue days say.</summary>
    private static void AddRegisters(Dictionary<string, string> all)
    {
        all["registers.allowance"] = "The figures may be off by {days} {days:day|days} on either side, so the widest window reaches as far.";
        all["registers.application-year"] = "The office counted anew each year, and the year {year} is that of the application.";
        all["registers.before-series"] = "Number {number} lies before the series: {office} {right} starts at {first}.";
        all["registers.between-numbers"] = "Number {number} lies between {first} and {last}, the numbers from {from} to {to}.";
        all["registers.between-series"] = "Number {number} lies between two series of {office} {right}, so it was not given.";
        all["registers.beyond-series"] =
            "Number {number} lies beyond the series as known: {office} {right} is known up to {last}, by {date}.";
        all["registers.counted-anew"] =
            "The office {office} counted anew, so number {number} alone fits {count} series; a year beside it settles which.";
        all["registers.dated-number"] = "Number {number} is itself in the table, dated from {from} to {to}.";
        all["registers.diamond-corner"] = "A {what} in the top corner: the registry mark is of the cycle {from} to {to}.";
        all["registers.diamond-class"] = "Class {class} is {material}.";
        all["registers.diamond-exception"] = "A published exception of the registry applies: {what}.";
        all["registers.diamond-letter"] = "The letter {letter} stands for {what}.";
        all["registers.diamond-no-such"] = "The registry used no such mark: {what}.";
        all["registers.diamond-registered"] =
            "A registry diamond gives the day of registration; the piece can be later by the years of protection and more.";
        all["registers.from-estimate"] = "The figures are placed between known ones, not published.";
        all["registers.from-memory"] = "The figures are recalled, not published, so the confidence is lower.";
        all["registers.issue-day-any"] = "{date} was a {weekday}; before 1848 US patents issued on any day.";
        all["registers.issue-day-before-patents"] = "{date} lies before the first US patent of 31 July 1790.";
        all["registers.issue-day-certain"] = "Known numbers before and after it issued on {date}, so this one did too.";
        all["registers.issue-day-doubtful"] =
            "{date} was a Tuesday, the day US patents issue, though an issue or two of that season were missed.";
        all["registers.issue-day-estimated"] =
            "From known numbers around it the likeliest issue day is {date}; they leave {first} to {last}.";
        all["registers.issue-day-not-tuesday"] =
            "{date} was a {weekday}, and US patents issue on Tuesdays: it may be a filing or foreign date, a trade mark, or misread.";
        all["registers.issue-day-tuesday"] = "{date} was a Tuesday, the day US patents issue.";
        all["registers.lost-digits"] = "{count} {count:number fits|numbers fit} {pattern}, from {first} to {last}.";
        all["registers.no-fit"] = "No number of {office} {right} fits {number}: it is known from {first} to {last}.";
        all["registers.not-a-number"] = "This is not a number: {text}.";
        all["registers.span"] = "The register dates it from {from} to {to}.";
        all["registers.unknown-office"] = "There is no register of the office {office}; known are {known}.";
        all["registers.unknown-right"] = "The office {office} has no register of {right} here; known are {known}.";
    }
}
