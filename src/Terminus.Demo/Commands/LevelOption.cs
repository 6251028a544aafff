using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace Terminus.Demo.Commands;

/// <summary>The option <c>--confidence LEVEL</c>.</summary>
internal static class LevelOption
{
    internal static Option<double> Create(string description) => new("--confidence")
    {
        Description = description + ", above 0 and at most 1.",
        HelpName = "LEVEL",
        DefaultValueFactory = _ => PieceDating.UsualConfidence,
        CustomParser = Parse,
    };

    private static double Parse(ArgumentResult argument)
    {
        string text = argument.Tokens[0].Value;
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double level) && level is > 0 and <= 1)
        {
            return level;
        }

        argument.AddError($"--confidence is a number above 0 and at most 1, such as 0.9, not \"{text}\".");
        return default;
    }
}
