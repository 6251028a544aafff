using System.Text.Json;

namespace Terminus.Tests.Combining;

/// <summary>
/// The examples of TestData/combining/worked-examples.json, with their windows on day numbers. Their windows [l, u] are continuous, so
/// they become the days l + 1 to u: lengths stay u - l, and windows that only touch stay apart. The end of the domain is the day of the
/// opinion; its start is open, and the spread begins there.
/// </summary>
internal sealed class WorkedExamples
{
    // Any origin far enough from the ends of the calendar.
    private const int Origin = 3_000_000;

    private static readonly JsonElement All = JsonDocument.Parse(
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "TestData", "combining", "worked-examples.json"))).RootElement;

    private WorkedExamples(JsonElement example)
    {
        JsonElement inputs = example.GetProperty("inputs");
        Expected = example.GetProperty("expected");
        (DomainStart, DomainEnd) = (Number(inputs.GetProperty("domain")[0]), Number(inputs.GetProperty("domain")[1]));
        foreach (JsonElement window in inputs.GetProperty("windows_l_u_r").EnumerateArray())
        {
            (int low, int high) = Days(Number(window[0]), Number(window[1]));
            Windows.Add((low, high, Fraction(window[2])));
        }
    }

    internal List<(int Low, int High, double Confidence)> Windows { get; } = [];

    internal JsonElement Expected { get; }

    internal int DomainStart { get; }

    internal int DomainEnd { get; }

    internal int AsOf => Origin + DomainEnd;

    internal int SpreadFrom => Origin + DomainStart + 1;

    internal static WorkedExamples Of(string id) => new(Example(id));

    internal static JsonElement Example(string id) => All.EnumerateArray().Single(e => e.GetProperty("id").GetString() == id);

    /// <summary>The ids of the examples of a form: those whose windows and domain are given.</summary>
    internal static IEnumerable<string> WithWindows
        => All.EnumerateArray().Where(e => e.GetProperty("inputs").TryGetProperty("windows_l_u_r", out _)).Select(e => e.GetProperty("id").GetString()!);

    internal Combination Combine() => new(ToDays(Windows), AsOf);

    internal static StatedDays ToDays(IReadOnlyList<(int Low, int High, double Confidence)> windows)
    {
        var days = new StatedDays(windows.Count);
        foreach ((int low, int high, double confidence) in windows)
        {
            days.AddItem([new StatedDay(low, high, confidence)]);
        }

        return days;
    }

    /// <summary>A continuous window as days; both ends at those of the domain stand for any date.</summary>
    internal (int Low, int High) Frame(int from, int to)
        => from == DomainStart && to == DomainEnd ? (int.MinValue, AsOf) : Days(from, to);

    internal static (int Low, int High) Days(int from, int to) => (Origin + from + 1, Origin + to);

    /// <summary>A number or a fraction of the table, such as <c>9/19</c>.</summary>
    internal static double Fraction(JsonElement value)
        => value.ValueKind == JsonValueKind.Number ? value.GetDouble() : Rational.Parse(value.GetString()!).ToDouble();

    private static int Number(JsonElement value) => (int)Fraction(value);
}
