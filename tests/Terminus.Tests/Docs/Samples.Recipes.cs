using NodaTime;

namespace Terminus.Tests.Docs;

internal static partial class Samples
{
    internal static void NumberToDate(TextWriter Console)
    {
        NumberReading reading = RegisterSet.BuiltIn.Read("US", "utility", "2,474,442");
        Console.WriteLine($"{reading.DocumentId}: {reading.Outer}, at best {reading.Best}");
        foreach (StatedWindow window in reading.Windows)
        {
            Console.WriteLine(window);
        }
    }

    internal static void WornNumber(TextWriter Console)
    {
        NumberReading reading = RegisterSet.BuiltIn.Read("US", "utility", "2,4?4,1?2");
        Console.WriteLine(reading.Outer);
    }

    internal static void ReadInscription(TextWriter Console)
    {
        Inscription inscription = Inscription.Read("PAT. APR. 17-94 / MADE IN OCCUPIED JAPAN / No 12");
        foreach (Mark mark in inscription.Marks)
        {
            string windows = mark.Windows.Count == 0 ? "no date" : string.Join("; ", mark.Windows);
            Console.WriteLine($"{mark.KindName,-12} \"{mark.Text}\": {windows}");
        }

        Console.WriteLine("unread: " + string.Join(" ", inscription.Unread.Select(rest => rest.Text.Trim())));
    }

    internal static void MarksToEvidence(TextWriter Console)
    {
        Inscription read = Inscription.Read("PAT. APR. 17-94 / PAT. PEND. / 1/20 12K G.F.");
        foreach (Evidence item in read.ToEvidence(part: "back"))
        {
            Console.WriteLine($"{item.Kind}: {string.Join("; ", item.StatedWindows(Assumptions.House))}");
        }
    }

    internal static void KindsOfObject(TextWriter Console)
    {
        foreach (QuestionEntry question in ReferenceSet.BuiltIn.Questions)
        {
            Console.WriteLine($"{(question.Objects.Count == 0 ? "anything" : string.Join(", ", question.Objects))}: {question.Text}");
        }
    }

    internal static void StatedDates(TextWriter Console)
    {
        var asOf = new LocalDate(2026, 11, 25);
        foreach (DocumentResult<Piece> read in Piece.ReadAll(File.ReadAllBytes("estate.json"), "estate.json"))
        {
            PieceDating dating = PieceDating.Of(read.OrThrow(), asOf);
            if (dating.Stated is { Verdict: ClaimVerdict.Contradicted } claim)
            {
                Console.WriteLine($"{dating.Piece.Id}: listed as {claim.Stated}. {Statement.Of(dating)}");
            }
        }
    }

    internal static void OwnAssumptions(TextWriter Console)
    {
        Assumptions careful = Assumptions.House with { Name = "careful trade", Version = "1.0.0", PendingWindow = 0.80 };
        var pending = new PatentPending(filed: EvidenceDate.Parse("1956-03-06"), issued: EvidenceDate.Parse("1961-07-11"));
        var asOf = new LocalDate(2026, 11, 25);
        Console.WriteLine(Dating.Of([pending], asOf).Interval(0.9));
        Console.WriteLine(Dating.Of([pending], asOf, careful).Interval(0.9));
    }

    internal static void FromAdverts(TextWriter Console)
    {
        Sighting[] sightings =
        [
            new(DateWindow.InYear(1951), "Quarry House trade list"),
            new(DateWindow.InYear(1953), "Lantern Street catalogue"),
            new(DateWindow.InYear(1953), "Lantern Street catalogue"),
            new(DateWindow.InYear(1954), "Hollin Fair programme"),
            new(DateWindow.InYear(1956), "Ostrell price list"),
            new(DateWindow.InYear(1958), "Quarry House Christmas list"),
        ];
        SightingEstimate estimate = SightingEstimate.Of(sightings, SightingEnd.First, SightingMethod.Gradual);
        Console.WriteLine($"{estimate.Given} sightings, {estimate.Sources} sources; not before {estimate.Bound:uuuu-MM-dd} at {estimate.Confidence}");
        foreach (Reason reason in estimate.Reasons)
        {
            Console.WriteLine(ReasonText.Of(reason));
        }
    }

    internal static void OwnRegister(TextWriter Console)
    {
        var rows = new[] { new RegisterRow(1, 250, DateWindow.InYear(1931), RowOrigin.Source, "Hollin guild book, p. 4") };
        RegisterSet registers = RegisterSet.BuiltIn.With(new Register("QH", "guild-number", rows));
        Console.WriteLine(registers.Read("QH", "guild-number", "117").Outer);
    }
}
