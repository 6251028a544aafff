using System.Text;

namespace Terminus.Fuzz.Targets;

/// <summary>Lines of an inventory: each that is not blank gets one line of JSON, whatever stands in it.</summary>
internal sealed class InventoryTarget() : FuzzTarget<string>(new AllocationLimits(2 * 1024 * 1024, 4 * 1024))
{
    private static readonly InventoryOptions Options = new(FuzzReference.AsOf, FuzzReference.Set);

    protected override string Answer(byte[] input)
    {
        var answers = new StringBuilder();
        foreach (ReadOnlyMemory<byte> line in Lines(input))
        {
            if (Inventory.DateLine(line.Span, Options) is { } result)
            {
                answers.Append(result.ToJson()).Append('\n');
            }
        }

        return answers.ToString();
    }

    protected override void Judge(string answer)
    {
        foreach (string line in answer.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            Demand.JsonLine(line);
        }
    }

    private static IEnumerable<ReadOnlyMemory<byte>> Lines(byte[] input)
    {
        int start = 0;
        for (int i = 0; i <= input.Length; i++)
        {
            if (i == input.Length || input[i] == '\n')
            {
                yield return input.AsMemory(start, i - start);
                start = i + 1;
            }
        }
    }
}
