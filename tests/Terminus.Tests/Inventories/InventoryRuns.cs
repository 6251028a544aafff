using System.Text;
using NodaTime;

namespace Terminus.Tests.Inventories;

/// <summary>Runs of generated inventories, and what each line alone comes to.</summary>
internal static class InventoryRuns
{
    internal static InventoryOptions Options { get; } = new(new LocalDate(2026, 11, 25), GeneratedReference.Set);

    /// <summary>The answers to lines dated one by one, each with its line feed.</summary>
    internal static string OneByOne(string lines)
    {
        var answers = new StringBuilder();
        foreach (string line in lines.Split('\n'))
        {
            if (Inventory.DateLine(Encoding.UTF8.GetBytes(line), Options) is { } result)
            {
                answers.Append(result.ToJson()).Append('\n');
            }
        }

        return answers.ToString();
    }

    internal static async Task<string> WriteAsync(Stream lines, InventoryOptions? options = null)
    {
        using var results = new MemoryStream();
        await Inventory.WriteAsync(lines, results, options ?? Options);
        return Encoding.UTF8.GetString(results.ToArray());
    }

    internal static Task<string> WriteAsync(string lines, InventoryOptions? options = null)
        => WriteAsync(new MemoryStream(Encoding.UTF8.GetBytes(lines)), options);

    internal static async Task<List<InventoryResult>> DateAsync(byte[] lines)
    {
        var results = new List<InventoryResult>();
        await foreach (InventoryResult result in Inventory.DateAsync(new MemoryStream(lines), Options))
        {
            results.Add(result);
        }

        return results;
    }

    internal static InventoryError Refused(byte[] line)
        => Inventory.DateLine(line, Options)!.Error ?? throw new InvalidOperationException("The line was dated.");

    internal static InventoryError Refused(string line) => Refused(Encoding.UTF8.GetBytes(line));
}
