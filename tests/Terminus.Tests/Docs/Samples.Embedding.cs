using NodaTime;

namespace Terminus.Tests.Docs;

internal static partial class Samples
{
    internal static void Problems(TextWriter Console)
    {
        DocumentResult<Piece> read = Piece.Read("""
            { "id": "QH-102",
              "marks":    [ { "txt": "PAT. PEND." } ],
              "records":  [ { "date": "1963-02-30", "what": "sales receipt" } ],
              "subjects": [ { "subject": "sub.jet" } ] }
            """, "qh-102.json");
        PieceDating? dating = PieceDating.Of(read, asOf: new LocalDate(2026, 11, 25));
        foreach (DocumentProblem problem in dating!.Problems)
        {
            Console.WriteLine(problem);
        }

        Console.WriteLine(dating.Interval);
    }

    internal static void Layers(TextWriter Console)
    {
        ReferenceFile file = ReferenceFile.Read(File.ReadAllBytes("quarry.reference.json"), "quarry.reference.json").OrThrow();
        ReferenceSet reference = ReferenceSet.BuiltIn.With(file);
        Console.WriteLine(string.Join(", ", reference.Layers.Select(l => $"{l.Name} {l.Version}")));
        foreach (ReferenceReplacement replaced in reference.Replacements)
        {
            Console.WriteLine($"{replaced.Layer.Name} replaces {replaced.Id}");
        }
    }

    internal static void ManyThreads(TextWriter Console)
    {
        Piece[] pieces = [.. Piece.ReadAll(File.ReadAllBytes("estate.json"), "estate.json").Select(read => read.OrThrow())];
        var asOf = new LocalDate(2026, 11, 25);
        string[] answers = [.. pieces.AsParallel().AsOrdered().Select(p => $"{p.Id}  {PieceDating.Of(p, asOf).Interval}")];
        foreach (string answer in answers)
        {
            Console.WriteLine(answer);
        }
    }

    internal static async Task WholeCollection(TextWriter Console)
    {
        using var lines = new MemoryStream(File.ReadAllBytes("estate.jsonl"));
        var options = new InventoryOptions(asOf: new LocalDate(2026, 11, 25));
        await foreach (InventoryResult result in Inventory.DateAsync(lines, options))
        {
            Console.WriteLine(result.Dating is { } dating ? $"{dating.Piece.Id}  {dating.Interval}" : $"no piece: {result.Error!.Message}");
        }
    }

    internal static void Fields(TextWriter Console)
    {
        Piece piece = Piece.Read(File.ReadAllBytes("qh-101.json")).OrThrow();
        PieceDating dating = PieceDating.Of(piece, asOf: new LocalDate(2026, 11, 25));
        DatedInterval? interval = dating.Interval;
        Console.WriteLine($"display    {Phrasing.MuseumDate(dating).Display}");
        Console.WriteLine($"earliest   {interval?.EarliestYear}");
        Console.WriteLine($"latest     {interval?.LatestYear}");
        Console.WriteLine($"edtf       {interval?.ToEdtf()}");
        Console.WriteLine($"confidence {interval?.Confidence}");
    }

    internal static void ReasonsAsData(TextWriter Console)
    {
        Piece piece = Piece.Read(File.ReadAllBytes("qh-101.json")).OrThrow();
        PieceDating dating = PieceDating.Of(piece, asOf: new LocalDate(2026, 11, 25));
        foreach (Reason reason in Statement.Reasons(dating))
        {
            Console.WriteLine($"{reason.Rule}: {string.Join(", ", reason.Parameters.Select(p => $"{p.Key}={p.Value}"))}");
            Console.WriteLine("  " + ReasonText.Of(reason));
        }
    }
}
