using System.Text;
using System.Text.RegularExpressions;
using Terminus.Tests.Architecture;

namespace Terminus.Tests.Reports;

/// <summary>Every rule has one approved text, and every rule that the code can give has one.</summary>
public partial class ReasonTextTest
{
    private static readonly string[] Approved = ["tests", "Terminus.Tests", "Reports", "Approved", "reasons.txt"];

    // One example value for each name of a parameter, and others where a rule asks for another kind of value.
    private static readonly Dictionary<string, string> Examples = new()
    {
        ["brief.pending/filed"] = "1956",
        ["brief.pending-filed/filed"] = "1956",
        ["brief.inscribed/date"] = "1962",
        ["brief.known/date"] = "1963",
        ["brief.registered/registered"] = "1907",
        ["brief.registered/right"] = "registered design",
        ["brief.subject/date"] = "1949",
        ["brief.opinion/opinion"] = "the opinion of a valuer",
        ["evidence.patent-issued/right"] = "US utility patent 2999999",
        ["evidence.patent-pending/right"] = "US utility patent 2999999",
        ["evidence.right-registered/right"] = "GB registered design 493421",
        ["evidence.subject-shown/date"] = "1949",
        ["evidence.since/date"] = "1889",
        ["evidence.opinion/window"] = "1 January 1950 to 31 December 1970",
        ["evidence.model-advertised/what"] = "trade catalogue, p. 14",
        ["claim.contradicted/by"] = "the patent mark 2999999. Bears US utility patent 2999999, issued 11 July 1961.",
        ["pieces.from-filing-year/patent"] = "US utility 2999999",
        ["pieces.older-on-part/what"] = "US utility patent 1480977",
        ["pieces.older-on-part/date"] = "1924-01-15",
        ["pieces.feature-of-patent/what"] = "bar that locks crosswise",
        ["pieces.same-entry/what"] = "tumbler back",
        ["pieces.two-answers/what"] = "tumbler back",
        ["pieces.opinion-same-cause/cause"] = "cuff.tumbler",
        ["record.time-span/window"] = "6 March 1956 to 11 July 1961",
        ["record.time-span/plausibility"] = "1",
        ["record.time-span/conflict"] = "0",
        ["statement.interval-and-likely/likely"] = "1956–1958",
        ["statement.any-date/confidence"] = "0.66",
        ["statement.qualified/conflict"] = "0.97",
        ["statement.reading/window"] = "1961 or later",
        ["grounds.weak-start/items"] = "the feature tumbler back (from 1 January 1930, 0.85)",
        ["grounds.weak-end/items"] = "the feature tumbler back (until 31 December 1941, 0.8)",
        ["statement.outside-possible/years"] = "1887 or later",
        ["statement.outside-possible-but-likely/years"] = "1887 or later",
        ["statement.outside-possible-but-likely/likely"] = "1961 or later",
        ["statement.open/side"] = "latest",
        ["statement.open-and-likely/side"] = "earliest",
        ["reference.fades-after-gone/fading"] = "191X",
        ["reference.fades-after-gone/gone"] = "1910~",
        ["reference.fades-after-gone/last"] = "31 December 1915",
        ["bits"] = "0.81",
        ["decade"] = "192",
        ["expectedInterval"] = "14",
        ["expectedLikely"] = "8",
        ["expectedSpread"] = "20",
        ["name"] = "tumbler back",
        ["question"] = "How does it close?",
        ["spread"] = "60",
        ["taken"] = "DE",
        ["advice.look-again/first"] = "1",
        ["advice.look-again/second"] = "3",
        ["advice.look-again-one/first"] = "2",
        ["advice.granted/decade"] = "1920",
        ["advice.worth/interval"] = "28",
        ["advice.worth/likely"] = "19",
        ["apart"] = "26 years",
        ["basis"] = "a patent",
        ["began"] = "1946",
        ["belief"] = "0.948",
        ["by"] = "law",
        ["cause"] = "usually a replaced part",
        ["class"] = "1",
        ["common"] = "1948",
        ["confidence"] = "0.9",
        ["conflict"] = "0.12",
        ["count"] = "3",
        ["date"] = "11 July 1961",
        ["day"] = "1876-05-03",
        ["days"] = "6",
        ["display"] = "1956–1961",
        ["earlier"] = "1961",
        ["feature"] = "tumbler back",
        ["filed"] = "6 March 1956",
        ["first"] = "the feature tumbler back",
        ["from"] = "1956",
        ["given"] = "7",
        ["gone"] = "1941",
        ["granted"] = "1961",
        ["id"] = "cuff.tumbler",
        ["interval"] = "1956–1961",
        ["introduced"] = "1930",
        ["issued"] = "11 July 1961",
        ["item"] = "the patent mark 2999999",
        ["items"] = "the pending mark 2999999 on the back",
        ["keeps"] = "the feature rocker back",
        ["kind"] = "feature",
        ["known"] = "US, GB",
        ["last"] = "the feature rocker back",
        ["later"] = "1956",
        ["letter"] = "X",
        ["level"] = "in usage only",
        ["likelihood"] = "Very likely",
        ["likely"] = "1956–1960",
        ["likelyConfidence"] = "0.66",
        ["likelyWord"] = "likely",
        ["maker"] = "Ostrell-Vane",
        ["mark"] = "1930",
        ["mass"] = "0.63",
        ["material"] = "metal",
        ["meant"] = "1881",
        ["needed"] = "5",
        ["number"] = "2999999",
        ["office"] = "US",
        ["offices"] = "US, GB",
        ["opinion"] = "The unsigned opinion for 1950–1970",
        ["order"] = "First",
        ["origin"] = "Germany",
        ["part"] = "box",
        ["parts"] = "box",
        ["patent"] = "cuff fastening patent",
        ["pattern"] = "2?99999",
        ["period"] = "from 1946 to 1968",
        ["periods"] = "introduced 1930, gone by 1941",
        ["plausibility"] = "0.08",
        ["possible"] = "1961 or later",
        ["readings"] = "US utility patent 123456 (1872), US design patent 123456 (1939–1941)",
        ["register"] = "1961-01-03/1961-12-26",
        ["registered"] = "4 March 1907",
        ["right"] = "utility",
        ["searched"] = "1975-12-31",
        ["second"] = "the feature rocker back",
        ["setAside"] = "the feature tumbler back",
        ["source"] = "trade catalogue",
        ["sources"] = "5",
        ["stamped"] = "1831",
        ["stated"] = "1950–1960",
        ["strength"] = "firm",
        ["subject"] = "an airliner",
        ["text"] = "12A4",
        ["to"] = "1961",
        ["until"] = "1961",
        ["used"] = "6",
        ["weekday"] = "Wednesday",
        ["weight"] = " (weight 0.62)",
        ["what"] = "sales receipt",
        ["window"] = "11 July 1961 or later",
        ["wording"] = "\"MADE IN\"",
        ["year"] = "1956",
        ["years"] = "1956–1961",
    };

    [Fact]
    public void Templates_EveryRule_HasItsApprovedText()
    {
        var text = new StringBuilder();
        foreach (string rule in ReasonText.Rules)
        {
            text.Append(rule).Append("\n  ").Append(ReasonText.TemplateOf(rule)).Append("\n  = ").Append(ReasonText.Of(Example(rule))).Append('\n');
        }

        ApprovedText.Check(text.ToString(), Approved);
    }

    [Fact]
    public void Templates_EveryRuleOfTheCode_HasExactlyOne()
    {
        string[] rules = [.. ReasonText.Rules];
        string[] defined = [.. SourceTree.Library.Where(IsTable).SelectMany(f => Definition().Matches(f.Text)).Select(m => m.Groups["rule"].Value)];
        Assert.Equal(rules, defined.OrderBy(r => r, StringComparer.Ordinal));

        string[] used = [.. SourceTree.Library.Where(f => !IsTable(f)).SelectMany(f => Literal().Matches(f.Text)).Select(m => m.Groups["rule"].Value)
            .Concat(Enum.GetValues<DisagreementCause>().Select(c => "cause." + Words.Kebab(c))).Distinct()];
        Assert.DoesNotContain(rules, rule => !used.Any(u => rule == u || (IsStem(u) && rule.StartsWith(u, StringComparison.Ordinal))));

        HashSet<string> families = [.. rules.Select(rule => rule.Split('.')[0])];
        Assert.DoesNotContain(used, u => families.Contains(u.Split('.')[0]) && !IsStem(u) && !rules.Contains(u));
    }

    [Fact]
    public void Of_ARuleWithoutText_ShowsTheRuleItself()
        => Assert.Equal("no.such-rule(a=1)", ReasonText.Of(new Reason("no.such-rule", "a", "1")));

    [Fact]
    public void Of_AParameterWithBraces_IsNotFilledAgain()
        => Assert.Equal("Bears the wording {by}, in use from 1946 to 1968 by law.", ReasonText.Of(
            new Reason("evidence.mark-in-use", "wording", "{by}", "period", "from 1946 to 1968", "by", "law")));

    private static Reason Example(string rule)
        => new(rule, [.. Parameter().Matches(ReasonText.TemplateOf(rule)).Select(m => m.Groups[1].Value).Distinct().SelectMany(name => new[] { name, ExampleOf(rule, name) })]);

    private static string ExampleOf(string rule, string name) => Examples.TryGetValue(rule + "/" + name, out string? own) ? own : Examples[name];

    // A rule id whose end is put on by the code, such as "unseen." with the kind.
    private static bool IsStem(string literal) => literal[^1] is '-' or '.';

    private static bool IsTable(SourceFile file) => file.Name.StartsWith("ReasonText", StringComparison.Ordinal);

    [GeneratedRegex("""all(?:\["(?<rule>[^"]+)"\]|\.Add\("(?<rule>[^"]+)")""")]
    private static partial Regex Definition();

    [GeneratedRegex("""
        "(?<rule>[a-z]+\.[a-z0-9-]*)"
        """)]
    private static partial Regex Literal();

    [GeneratedRegex(@"\{(\w+)(?::[^}]*)?\}")]
    private static partial Regex Parameter();
}
