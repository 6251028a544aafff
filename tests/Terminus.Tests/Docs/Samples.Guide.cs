using NodaTime;

namespace Terminus.Tests.Docs;

internal static partial class Samples
{
    internal static void Readme(TextWriter Console)
    {
        Piece piece = Piece.Read("""
            { "id": "QH-101", "title": "collar button",
              "marks":        [ { "text": "PAT. APR. 17-94" } ],
              "inscriptions": [ { "date": "1906-05-12", "of": "presentation" } ] }
            """).OrThrow();

        PieceDating dating = PieceDating.Of(piece, asOf: new LocalDate(2026, 11, 25));
        Console.WriteLine(Statement.Of(dating));
        Console.WriteLine(Phrasing.ListingLine(dating));
        Console.WriteLine(dating.Interval);
    }

    internal static void Typed(TextWriter Console)
    {
        Evidence[] evidence =
        [
            new PatentIssued(EvidenceDate.Parse("1961-07-11"), office: "US", right: "utility", number: "2999999"),
            new KnownBy(EvidenceDate.Parse("1968"), what: "sales receipt", boughtNew: true),
        ];
        Dating dating = Dating.Of(evidence, asOf: new LocalDate(2026, 11, 25));
        Console.WriteLine($"possible   {dating.Possible}");
        Console.WriteLine($"at 0.9     {dating.Interval(0.9)}");
        Console.WriteLine($"at 0.99    {dating.Interval(0.99)}, inside possible: {dating.Interval(0.99)?.InsidePossible}");
        Console.WriteLine(dating.InfluenceOf(1, 0.9));
    }

    internal static void BeliefAndPlausibility(TextWriter Console)
    {
        Dating dating = Dating.Of([new Opinion(DateWindow.BetweenYears(1883, 1891), 0.9)], asOf: new LocalDate(2026, 11, 25));
        DateWindow inside = DateWindow.BetweenYears(1883, 1891);
        DateWindow later = DateWindow.BetweenYears(1892, 2026);
        Console.WriteLine($"1883 to 1891: belief {dating.Belief(inside):0.00}, plausibility {dating.Plausibility(inside):0.00}");
        Console.WriteLine($"1892 to 2026: belief {dating.Belief(later):0.00}, plausibility {dating.Plausibility(later):0.00}");
    }

    internal static void OneCause(TextWriter Console)
    {
        // One catalogue is right six times in ten. Three pages on the web copied it.
        DateWindow window = DateWindow.BetweenYears(1948, 1954);
        Opinion[] copies = [new(window, 0.6, by: "page A"), new(window, 0.6, by: "page B"), new(window, 0.6, by: "page C")];
        var asOf = new LocalDate(2026, 11, 25);
        Console.WriteLine($"as three witnesses: {Dating.Of(copies, asOf).Belief(window):0.000}");
        Console.WriteLine($"as one:             {Dating.Of(copies.Take(1), asOf).Belief(window):0.000}");
    }

    internal static void Contradiction(TextWriter Console)
    {
        Dating dating = Dating.Of(
            [
                new PatentIssued(EvidenceDate.Parse("1924-01-15"), office: "US", right: "utility"),
                new KnownBy(EvidenceDate.Parse("1899"), what: "probate list"),
            ],
            asOf: new LocalDate(2026, 11, 25));
        Console.WriteLine($"possible: {dating.Possible?.ToString() ?? "nothing"}; conflict {dating.Conflict:0.000}; qualified: {dating.Qualified}");
        Console.WriteLine(dating.Disagreements[0]);
        foreach (Reading reading in dating.Readings.Take(2))
        {
            Console.WriteLine(reading);
        }
    }
}
