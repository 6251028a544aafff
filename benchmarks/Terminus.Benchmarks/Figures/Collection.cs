namespace Terminus.Benchmarks.Figures;

/// <summary>The sizes of the generated collections, as the figures name them.</summary>
internal static class Collection
{
    internal const string HundredThousand = "100000 pieces";
    internal const string Million = "1000000 pieces";

    internal static string[] Sizes { get; } = [HundredThousand, Million];

    internal static string InWords(string size) => size == Million ? "a million pieces" : "100,000 pieces";
}
