using System.Globalization;
using System.Text.Json;

namespace Terminus.Tests.Sightings;

/// <summary>A row of TestData/sightings/worked-examples.json; the row has its source and tolerance.</summary>
internal sealed class WorkedExample
{
    private static readonly string Place = Path.Combine(AppContext.BaseDirectory, "TestData", "sightings", "worked-examples.json");

    private static readonly JsonDocument Rows = JsonDocument.Parse(File.ReadAllText(Place));

    private readonly JsonElement row;

    private WorkedExample(JsonElement row) => this.row = row;

    internal static IEnumerable<string> Ids => Rows.RootElement.EnumerateArray().Select(r => r.GetProperty("id").GetString()!);

    internal static WorkedExample Of(string id)
        => new(Rows.RootElement.EnumerateArray().Single(r => r.GetProperty("id").GetString() == id));

    /// <summary>An input, as a number or as the fraction that a text holds.</summary>
    internal double Input(string name) => Number(row.GetProperty("inputs").GetProperty(name));

    internal double[] Inputs(string name) => [.. row.GetProperty("inputs").GetProperty(name).EnumerateArray().Select(Number)];

    internal double Expected(string name) => Number(row.GetProperty("expected").GetProperty(name));

    internal double[] ExpectedAll(string name) => [.. row.GetProperty("expected").GetProperty(name).EnumerateArray().Select(Number)];

    internal double Published(string name) => Number(row.GetProperty("expected").GetProperty("published").GetProperty(name));

    private static double Number(JsonElement value)
    {
        if (value.ValueKind == JsonValueKind.Number)
        {
            return value.GetDouble();
        }

        string[] parts = value.GetString()!.Split('/');
        double numerator = double.Parse(parts[0], CultureInfo.InvariantCulture);
        return parts.Length == 1 ? numerator : numerator / double.Parse(parts[1], CultureInfo.InvariantCulture);
    }
}
