using System.Text.RegularExpressions;
using Terminus.Fuzz.Targets;
using Terminus.Tests.Docs;

namespace Terminus.Tests.Fuzzing;

/// <summary>The table of docs/limits.md against the limits that are checked.</summary>
public sealed partial class LimitsPageTest
{
    public static TheoryData<string> Targets => CorpusReplayTest.Targets;

    [Theory]
    [MemberData(nameof(Targets))]
    public void EveryTargetStandsOnThePageWithItsLimits(string name)
    {
        AllocationLimits limits = FuzzTarget.All[name]().Limits;

        Match row = Assert.Single(Row().Matches(DocPage.Named("docs/limits.md").Text), m => m.Groups["name"].Value == name);
        Assert.Equal((limits.Fixed, limits.PerByte), (Bytes(row.Groups["fixed"].Value), Bytes(row.Groups["each"].Value)));
    }

    private static long Bytes(string amount)
    {
        string[] words = amount.Split(' ');
        return long.Parse(words[0], System.Globalization.CultureInfo.InvariantCulture)
            * words[1] switch { "bytes" => 1, "KiB" => 1024, "MiB" => 1024 * 1024, _ => throw new FormatException(amount) };
    }

    [GeneratedRegex(@"^\| (?<name>[a-z]+) \| .* \| (?<fixed>\d+ \w+) \| (?<each>\d+ \w+) \|$", RegexOptions.Multiline)]
    private static partial Regex Row();
}
