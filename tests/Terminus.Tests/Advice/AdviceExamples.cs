using System.Globalization;
using System.Text.Json;

namespace Terminus.Tests.Advice;

/// <summary>Rows of TestData/advice/worked-examples.json; each has its source and tolerance.</summary>
internal static class AdviceExamples
{
    private static readonly JsonDocument Rows
        = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "TestData", "advice", "worked-examples.json")));

    internal static JsonElement Inputs(string id) => Row(id).GetProperty("inputs");

    internal static JsonElement Expected(string id) => Row(id).GetProperty("expected");

    /// <summary>A number, or the fraction that a text holds.</summary>
    internal static double Number(JsonElement value)
    {
        if (value.ValueKind == JsonValueKind.Number)
        {
            return value.GetDouble();
        }

        string[] parts = value.GetString()!.Split('/');
        double numerator = double.Parse(parts[0], CultureInfo.InvariantCulture);
        return parts.Length == 1 ? numerator : numerator / double.Parse(parts[1], CultureInfo.InvariantCulture);
    }

    internal static double[] Numbers(JsonElement list) => [.. list.EnumerateArray().Select(Number)];

    /// <summary>A density from rows of start, end and mass.</summary>
    internal static StepDensity Density(JsonElement cells)
    {
        double[][] rows = [.. cells.EnumerateArray().Select(Numbers)];
        return new StepDensity(rows.Select(r => r[1] - r[0]), rows.Select(r => r[2]));
    }

    private static JsonElement Row(string id) => Rows.RootElement.EnumerateArray().Single(r => r.GetProperty("id").GetString() == id);
}
