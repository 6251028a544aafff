using System.IO.Pipelines;
using System.Text;
using Terminus.Demo.Csv;

namespace Terminus.Fuzz.Targets;

/// <summary>A collection in CSV as the console reads it: pieces, one a line of JSON, or the statement that it is no such collection.</summary>
internal sealed class CsvTarget() : FuzzTarget<(string Lines, string? Refused)>(new AllocationLimits(512 * 1024, 1024))
{
    private static readonly InventoryOptions Options = new(FuzzReference.AsOf, FuzzReference.Set);

    protected override (string Lines, string? Refused) Answer(byte[] input)
    {
        // The pipe holds everything, so the rows are written on this thread, where what they allocate is counted.
        var pipe = new Pipe(new PipeOptions(pauseWriterThreshold: 0));
        Task filled = CsvPieces.FillAsync(new MemoryStream(input), pipe.Writer, static _ => { }, CancellationToken.None);
        Demand.That(filled.IsCompletedSuccessfully, "A collection is read to its end.");
        using var lines = new StreamReader(pipe.Reader.AsStream(), new UTF8Encoding(false));
        try
        {
            return (lines.ReadToEnd(), null);
        }
        catch (InvalidDataException wrong)
        {
            return ("", wrong.Message);
        }
    }

    protected override void Judge((string Lines, string? Refused) answer)
    {
        foreach (string line in answer.Lines.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            Demand.JsonLine(line);
            Demand.JsonLine(Inventory.DateLine(Encoding.UTF8.GetBytes(line), Options)!.ToJson());
        }
    }
}
