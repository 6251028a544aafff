using System.Text;
using System.Text.Json;
using nietras.SeparatedValues;
using Terminus.Fuzz.Targets;
using Terminus.Tests.Inventories;

namespace Terminus.Fuzz;

/// <summary>What fuzzing starts from: the repository's own data, cut small.</summary>
internal static class Seeds
{
    private const int Longest = 4096;

    /// <summary>The inputs for a target, none of them long.</summary>
    /// <param name="target">The name of the target.</param>
    /// <param name="root">The folder of the repository.</param>
    internal static IEnumerable<byte[]> Of(string target, string root) => Texts(target)
        .Concat(target switch
        {
            "edtf" => Column(root, "edtf/vectors.csv", "text").Concat(Column(root, "edtf/invalid.csv", "text")),
            "inscription" => Column(root, "marks/inscriptions.csv", "text").Concat(Column(root, "marks/invented.csv", "text")),
            "number" => Numbers(root),
            "piece" or "reports" or "inventory" => Demo(root).Concat(Pieces(100)),
            "reference" => Entries(Path.Combine(root, "data/demo/reference.json"))
                .Concat(Directory.EnumerateFiles(Path.Combine(root, "data/reference"), "*.json").SelectMany(Entries)),
            "changes" => Results(root),
            _ => [],
        })
        .Where(text => text.Length is > 0 and <= Longest)
        .Distinct(StringComparer.Ordinal)
        .Select(Encoding.UTF8.GetBytes);

    private static string[] Texts(string target) => target switch
    {
        "edtf" => ["1956-03-06/1961-07-11", "[1667,1668..1760-12]", "Y-17E7S3"],
        "inscription" => ["PAT. APR. 17-94 / PAT. 2,4?4,1?2", "PATENTED MCH. 3RD 1871 APL'D FOR", "D.R.G.M. 12345 MADE IN OCCUPIED JAPAN 14K GF"],
        "number" => ["US utility 2,4?4,1?2", "GB registered-design 12345", "DE utility-model D.R.G.M. 123456"],
        "assumptions" =>
        [
            """{"name":"ours","version":"1","firmAt":0.8,"circaYears":3,"spreadFrom":1800}""",
            """{"format":1,"name":"ours","version":"2","patentInForce":1,"pendingWording":0,"pendingWordingFromYear":-9998,"boughtNewYears":1000}""",
            """{"name":"ours","version":"3","featureByFact":1e-9,"knownUntil":0.999999999,"qualifiedAbove":0,"makerYears":0}""",
        ],
        "csv" =>
        [
            "id,title,marks,features.back\nA,\"pair, gilt\",PAT. PEND.|STERLING,f1|f2\nB,,,\n",
            "id;stated;records;receipts;adverts;replaced;absent\r\nA;1955~;1963 note;1964 sales receipt;1955-11 catalogue;pin|back;f1\r\n",
            "id\tobject\tpatents\tsubjects\tmakers\tinscriptions\tcommemorations\nA\tbrooch\tUS utility 2999999\tsub.jet\tm1\t1962-06-14 To Q.\t1960\textra\n",
        ],
        "piece" or "reports" or "inventory" =>
        [
            """{"id":"A","stated":"1955~","parts":[{"part":"pin","original":false,"why":"later"}],"marks":[{"text":"PAT. PEND.","patent":"US utility 2999999","part":"pin"}],"features":[{"feature":"f1"},{"feature":"f2"}]}""",
            """{"id":"B","subjects":[{"subject":"sub.jet"}],"inscriptions":[{"date":"1962-06-14","text":"to Q.","of":"presentation"}],"records":[{"date":"1963","what":"receipt","new":true}],"makers":[{"maker":"m1","form":"L. & D."}]}""",
            """{"id":"C","adverts":[{"date":"1955-11","model":"Heron"}],"opinions":[{"windows":[{"notBefore":"1950","notAfter":"1970?","confidence":0.7}],"by":"a colleague","restsOn":["f1"],"label":"style"}]}""",
        ],
        "reference" =>
        [
            """{"format":1,"name":"ours","version":"1","features":[{"id":"x","name":"X","introduced":"1931","common":"1934","fading":"1950","gone":"1961","basis":"patent","patents":["US utility 2999999"],"question":"q","sightings":[{"date":"1934","source":"s"}],"estimate":"both","source":"s"}],"questions":[{"id":"q","text":"?","objects":["brooch"],"source":"s"}]}""",
            """{"name":"ours","version":"1","patents":[{"id":"US utility 2999999","filed":"1956-03-06","issued":"1961-09-12","source":"s","origin":"invented"}],"makers":[{"id":"m","name":"M","from":"1921","until":"1958","forms":[{"name":"M. & D.","from":"1930"}],"addresses":[{"address":"2 Mill Lane","until":"1940"}],"source":"s"}]}""",
            """{"name":"ours","version":"1","adverts":[{"id":"a","date":"1955-11","what":"catalogue","model":"Heron","feature":"f1","maker":"m1","source":"s"}],"marks":[{"id":"k","text":"HERON","office":"US","from":"1933","until":"1949","basis":"law","ended":"lapsed","maker":"m1","source":"s"}]}""",
        ],
        _ => [],
    };

    private static IEnumerable<string> Column(string root, string file, string name)
    {
        using SepReader rows = Sep.New(',').Reader(o => o with { Unescape = true }).FromFile(Path.Combine(root, "tests/Terminus.Tests/TestData", file));
        while (rows.MoveNext())
        {
            yield return rows.Current[name].ToString();
        }
    }

    private static IEnumerable<string> Numbers(string root)
    {
        foreach (string file in Directory.EnumerateFiles(Path.Combine(root, "data/registers"), "*.csv").Order(StringComparer.Ordinal))
        {
            string[] names = Path.GetFileNameWithoutExtension(file).Replace("-dated", "", StringComparison.Ordinal).Split('-', 2);
            string[] cells = File.ReadLines(file).Skip(2).First().Split(',');
            yield return $"{names[0].ToUpperInvariant()} {names[1]} {cells[0]}";
            yield return $"{names[0].ToUpperInvariant()} {names[1]} No. {cells[0]}?/97";
        }
    }

    private static IEnumerable<string> Demo(string root)
    {
        using JsonDocument pieces = JsonDocument.Parse(File.ReadAllText(Path.Combine(root, "data/demo/inventory.json")));
        foreach (JsonElement piece in pieces.RootElement.EnumerateArray())
        {
            yield return JsonSerializer.Serialize(piece);
        }
    }

    private static string[] Pieces(int count) => Encoding.UTF8.GetString(InventoryGenerator.Utf8(seed: 1, count)).Split('\n');

    // Each entry alone, in a file of its own.
    private static IEnumerable<string> Entries(string file)
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(file));
        foreach (JsonProperty list in document.RootElement.EnumerateObject().Where(m => m.Value.ValueKind == JsonValueKind.Array))
        {
            foreach (JsonElement entry in list.Value.EnumerateArray().Take(12))
            {
                yield return $$"""{"name":"ours","version":"1","{{list.Name}}":[{{JsonSerializer.Serialize(entry)}}]}""";
            }
        }
    }

    private static IEnumerable<string> Results(string root)
    {
        var before = new InventoryOptions(FuzzReference.AsOf, FuzzReference.Set);
        var after = new InventoryOptions(FuzzReference.AsOf.PlusDays(1), ReferenceSet.Empty, confidence: 0.8);
        foreach (string piece in Texts("piece").Concat(Demo(root)))
        {
            byte[] line = Encoding.UTF8.GetBytes(piece);
            string first = Inventory.DateLine(line, before)!.ToJson();
            yield return first;
            yield return first + "\n---\n" + Inventory.DateLine(line, after)!.ToJson();
        }
    }
}
