using System.Globalization;
using System.Text;

namespace Terminus.Tests.Inventories;

/// <summary>
/// The reference file of generated inventories. Every maker, patent, feature and advert in it is invented; the dates are spread over a
/// century so that any true date has evidence that fits.
/// </summary>
internal static class GeneratedReference
{
    internal const int Features = 60;
    internal const int Patents = 40;
    internal const int Subjects = 12;
    internal const int Makers = 16;
    internal const int Models = 12;

    private const string Invented = "\"origin\": \"invented\", \"source\": \"Invented for generated inventories.\"";

    private static readonly string[] MakerNames =
    [
        "Ostrell & Vane", "Pellmoor Novelty Works", "Dunwick Brothers", "Harl & Tansley", "Corvane Company", "Brightlock Works", "Marrable & Sons", "Tolland Clasp",
        "Quenby Fastener", "Aldermere", "Vossen & Pike", "Larkrise Metal", "Ivel Stamping", "Gantry & Holm", "Sorrel Bay", "Wynd & Farrow",
    ];

    /// <summary>The years in which things can be true: a piece is made in 1880 to 1979.</summary>
    internal const int FirstYear = 1880;

    /// <summary>How many years those are.</summary>
    internal const int Years = 100;

    internal static ReferenceSet Set { get; } = ReferenceSet.Empty.With(ReferenceFile.Read(Json()).OrThrow());

    internal static string FeatureId(int index) => Id("inv.feature_", index);

    internal static string SubjectId(int index) => Id("sub.invented_", index);

    internal static string MakerId(int index) => Id("inv-maker-", index);

    internal static string MakerName(int index) => MakerNames[index];

    internal static string Model(int index) => Id("Invented ", index);

    /// <summary>The number of an invented patent; it grows with the years, as numbers do.</summary>
    internal static string PatentNumber(int index) => (250_001 + (PatentYear(index) - FirstYear) * 40_009).ToString(CultureInfo.InvariantCulture);

    internal static string PatentId(int index) => "US utility " + PatentNumber(index);

    internal static int FeatureStart(int index) => FirstYear - 10 + (index * Years / Features);

    internal static int FeatureEnd(int index) => FeatureStart(index) + 18 + (index % 5 * 7);

    internal static int PatentYear(int index) => FirstYear - 5 + (index * Years / Patents);

    /// <summary>A day in May of the year of issue; the first Tuesday would be truer, and says no more to the engine.</summary>
    internal static int PatentDay(int index) => 1 + (index * 7 % 28);

    internal static int SubjectYear(int index) => FirstYear + (index * Years / Subjects) - 6;

    internal static int MakerStart(int index) => FirstYear - 20 + (index * Years / Makers);

    internal static int MakerEnd(int index) => MakerStart(index) + 30 + (index % 4 * 10);

    internal static int ModelYear(int index) => FirstYear + (index * Years / Models);

    internal static string Json()
    {
        var text = new StringBuilder("{ \"format\": 1, \"name\": \"generated\", \"version\": \"1.0.0\",\n");
        List(text, "features", Features + Subjects, i => i < Features ? Feature(i) : Subject(i - Features));
        List(text, "patents", Patents, Patent);
        List(text, "makers", Makers, Maker);
        List(text, "adverts", Models, Advert);
        text.Append("\"questions\": [ { \"id\": \"inv.closing\", \"text\": \"How does it close?\", ").Append(Invented).Append(" } ] }");
        return text.ToString();
    }

    private static void List(StringBuilder text, string name, int count, Func<int, string> entry)
        => text.Append('"').Append(name).Append("\": [\n").AppendJoin(",\n", Enumerable.Range(0, count).Select(entry)).Append("],\n");

    private static string Feature(int i)
    {
        string patent = i % 6 == 0 ? $", \"patents\": [ \"{PatentId(i * Patents / Features)}\" ]" : "";
        string basis = i % 6 == 0 ? "patent" : "trade";
        string grade = (i % 3) switch { 0 => "high", 1 => "medium", _ => "low" };
        string question = i % 10 == 0 ? ", \"question\": \"inv.closing\"" : "";
        return FormattableString.Invariant(
            $"{{ \"id\": \"{FeatureId(i)}\", \"name\": \"invented feature {i}\", \"introduced\": \"{FeatureStart(i)}\", \"common\": \"{FeatureStart(i) + 4}\", \"fading\": \"{FeatureEnd(i) - 6}\", \"gone\": \"{FeatureEnd(i)}\", \"basis\": \"{basis}\", \"grade\": \"{grade}\"{patent}{question}, {Invented} }}");
    }

    private static string Subject(int i) => FormattableString.Invariant(
        $"{{ \"id\": \"{SubjectId(i)}\", \"name\": \"invented subject {i}\", \"introduced\": \"{SubjectYear(i)}-05-12\", \"basis\": \"event\", \"grade\": \"high\", {Invented} }}");

    private static string Patent(int i) => FormattableString.Invariant(
        $"{{ \"id\": \"{PatentId(i)}\", \"filed\": \"{PatentYear(i) - 2}-03-06\", \"issued\": \"{PatentYear(i)}-05-{PatentDay(i):00}\", \"title\": \"Invented fastening {i}\", {Invented} }}");

    private static string Maker(int i) => FormattableString.Invariant(
        $"{{ \"id\": \"{MakerId(i)}\", \"name\": \"{MakerName(i)}\", \"from\": \"{MakerStart(i)}\", \"until\": \"{MakerEnd(i)}\", {Invented} }}");

    private static string Advert(int i) => FormattableString.Invariant(
        $"{{ \"id\": \"inv-advert-{i}\", \"date\": \"{ModelYear(i)}\", \"what\": \"Invented catalogue, p. {10 + i}\", \"model\": \"{Model(i)}\", {Invented} }}");

    private static string Id(string stem, int index) => stem + index.ToString("00", CultureInfo.InvariantCulture);
}
