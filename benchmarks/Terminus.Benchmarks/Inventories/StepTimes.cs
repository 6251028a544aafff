using System.Buffers;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Terminus.Tests.Inventories;

namespace Terminus.Benchmarks.Inventories;

/// <summary>Where the time of an inventory goes: each step alone over the same pieces on one thread, the fastest of several passes.</summary>
internal sealed class StepTimes
{
    private const int Pieces = 20_000;
    private const int Passes = 12;

    private readonly InventoryOptions options = new(new NodaTime.LocalDate(2026, 11, 25), GeneratedReference.Set);
    private readonly byte[][] lines;
    private readonly Piece[] pieces;
    private readonly PieceDating[] datings;
    private readonly byte[] all;
    private readonly Floor floor;

    private StepTimes()
    {
        all = InventoryGenerator.Utf8(20260101, Pieces);
        lines = [.. SplitLines(all)];
        pieces = [.. lines.Select(line => Read(line)!)];
        datings = [.. pieces.Select(Date)];
        using var answers = new MemoryStream();
        Inventory.WriteAsync(new MemoryStream(all), answers, options).GetAwaiter().GetResult();
        floor = new Floor(answers.ToArray());
    }

    /// <summary>Prints microseconds and bytes a piece for each step.</summary>
    internal static void Print()
    {
        var steps = new StepTimes();
        Console.WriteLine("| step | µs a piece | bytes a piece | ratio |");
        Console.WriteLine("|---|---|---|---|");
        double unit = steps.Time("floor, read and write", double.NaN, () => steps.floor.Run(new MemoryStream(steps.all), Stream.Null));
        steps.Time("read a line into a piece", unit, () => Array.ForEach(steps.lines, line => Read(line)));
        steps.Time("piece to evidence", unit, () => Array.ForEach(steps.pieces, p => PieceEvidence.Of(p, steps.options.Reference, steps.options.Assumptions)));
        steps.Time("of which inscriptions", unit, () => Array.ForEach(steps.pieces, ReadMarks));
        steps.Time("dating, evidence and all", unit, () => Array.ForEach(steps.pieces, p => steps.Date(p)));
        steps.Time("write the result", unit, () => steps.WriteAll());
        steps.Time("of which the statement in words", unit, () => Array.ForEach(steps.datings, d => Statement.Of(d)));
        steps.Time(
            "line to answer",
            unit,
            () => Inventory.WriteAsync(new MemoryStream(steps.all), Stream.Null, steps.options with { BatchesAtOnce = 1 }).GetAwaiter().GetResult());
    }

    private static IEnumerable<byte[]> SplitLines(byte[] text)
    {
        int start = 0;
        for (int end; (end = Array.IndexOf(text, (byte)'\n', start)) >= 0; start = end + 1)
        {
            yield return text[start..end];
        }
    }

    private static Piece? Read(byte[] line)
    {
        var reader = new DocumentReader(line);
        Piece? piece = PieceReader.ReadPiece(ref reader);
        reader.Finish();
        return piece;
    }

    private static void ReadMarks(Piece piece)
    {
        foreach (PieceMark mark in piece.Marks.Where(m => m.Text is not null))
        {
            Inscription.Read(mark.Text!);
        }
    }

    // With what a result also asks of a dating: it is worked out when first asked for.
    private PieceDating Date(Piece piece)
    {
        PieceDating dating = PieceDating.Of(piece, options.AsOf, options.Reference, options.Assumptions, options.Confidence);
        _ = (dating.Dating.Disagreements, dating.OverHundredYears, dating.Stated);
        return dating;
    }

    private void WriteAll()
    {
        var buffer = new ArrayBufferWriter<byte>(1 << 17);
        using var json = new Utf8JsonWriter(buffer, DocumentWriting.Compact);
        using var ready = new ReadyEvidence();
        var writer = new ResultWriter(json, ready);
        foreach (PieceDating dating in datings)
        {
            writer.Write(dating, steps: false);
            json.Flush();
            json.Reset();
            buffer.ResetWrittenCount();
        }
    }

    private double Time(string name, double unit, Action pass)
    {
        double best = double.MaxValue;
        long bytes = 0;
        for (int i = 0; i < Passes; i++)
        {
            GC.Collect();
            long before = GC.GetTotalAllocatedBytes(precise: true);
            long start = Stopwatch.GetTimestamp();
            pass();
            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalMicroseconds / Pieces);
            bytes = (GC.GetTotalAllocatedBytes(precise: true) - before) / Pieces;
        }

        string ratio = double.IsNaN(unit) ? "1.0" : (best / unit).ToString("0.00", CultureInfo.InvariantCulture);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {name} | {best:0.00} | {bytes:N0} | {ratio} |"));
        return best;
    }
}
