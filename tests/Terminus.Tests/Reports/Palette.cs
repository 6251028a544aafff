using System.Globalization;
using System.Text.RegularExpressions;

namespace Terminus.Tests.Reports;

/// <summary>The colours that a picture's own style gives to text and to shapes, read from the picture.</summary>
internal sealed partial class Palette
{
    private readonly Dictionary<string, string> colours;

    private Palette(string svg, string block)
    {
        colours = Property().Matches(block).ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value);
        List<(string Class, string Colour, bool IsText)> used = [];
        foreach (Match rule in Rule().Matches(svg))
        {
            string name = rule.Groups[1].Value;
            bool isText = name is "text" or ".quiet" or ".head" or ".warn";
            used.AddRange(Use().Matches(rule.Groups[2].Value).Select(m => (name, m.Groups[1].Value, isText)));
        }

        Texts = [.. used.Where(u => u.IsText).Select(u => u.Colour).Distinct()];
        Shapes = [.. used.Where(u => !u.IsText && u.Class is not (".paper" or ".halo")).Select(u => u.Colour).Distinct()];
    }

    internal IReadOnlyList<string> Texts { get; }

    internal IReadOnlyList<string> Shapes { get; }

    internal static Palette Light(string svg) => new(svg, Blocks().Matches(svg)[0].Value);

    internal static Palette Dark(string svg) => new(svg, Blocks().Matches(svg)[1].Value);

    /// <summary>The contrast of a colour with the ground, from 1 to 21.</summary>
    /// <remarks>Source: WCAG 2.2, relative luminance and contrast ratio.</remarks>
    internal double Contrast(string colour)
    {
        double one = Luminance(colours[colour]);
        double other = Luminance(colours["ground"]);
        return (Math.Max(one, other) + 0.05) / (Math.Min(one, other) + 0.05);
    }

    internal static double Luminance(string hex)
    {
        double Channel(int at)
        {
            double value = int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Channel(1)) + (0.7152 * Channel(3)) + (0.0722 * Channel(5));
    }

    [GeneratedRegex(@"--(\w+):(#[0-9a-f]{6})")]
    private static partial Regex Property();

    [GeneratedRegex(@"svg\.terminus\{--[^}]*\}")]
    private static partial Regex Blocks();

    [GeneratedRegex(@"svg\.terminus (\.?\w+)\{([^}]*)\}")]
    private static partial Regex Rule();

    [GeneratedRegex(@"(?:fill|stroke):var\(--(\w+)\)")]
    private static partial Regex Use();
}
