using System.Text;
using System.Text.Json.Nodes;
using Terminus.Tests.Reference;
using Terminus.Tests.Reports;

namespace Terminus.Tests.Documents;

/// <summary>
/// What is said of every single fault in a whole document, against an approved text: each value is replaced by a number, a word and an empty
/// object in turn, each member is left out, and each object is given one that nobody knows.
/// </summary>
public class FaultsTest
{
    private static readonly JsonNode[] Others = [JsonValue.Create(-7.5), JsonValue.Create("invented"), new JsonObject(), new JsonArray()];

    [Fact]
    public void Read_PieceWithOneFault_SaysTheApprovedText()
        => Check("piece-faults.txt", SchemaTest.WholePiece, json => Piece.Read(json).Problems);

    [Fact]
    public void Read_ReferenceWithOneFault_SaysTheApprovedText()
        => Check("reference-faults.txt", ReferenceFileTest.Whole, json => ReferenceFile.Read(json).Problems);

    private static void Check(string name, string whole, Func<byte[], IReadOnlyList<DocumentProblem>> read)
    {
        var text = new StringBuilder();
        JsonNode root = JsonNode.Parse(whole)!;
        foreach (string path in PathsUnder(root).ToList())
        {
            foreach ((string change, JsonNode faulty) in Faults(root, path))
            {
                text.Append("== ").Append(path).Append(' ').Append(change).Append('\n');
                foreach (DocumentProblem problem in read(Encoding.UTF8.GetBytes(faulty.ToJsonString())))
                {
                    text.Append("  ").Append(problem.Path).Append(": ").Append(problem.Message).Append('\n');
                }
            }
        }

        ApprovedText.Check(text.ToString(), "tests", "Terminus.Tests", "Documents", "Approved", name);
    }

    private static IEnumerable<(string Change, JsonNode Faulty)> Faults(JsonNode root, string path)
    {
        foreach (JsonNode other in Others)
        {
            yield return ("is " + other.ToJsonString(), Changed(root, path, node => node.ReplaceWith(other.DeepClone())));
        }

        yield return ("is left out", Changed(root, path, node =>
        {
            if (node.Parent is JsonArray list)
            {
                list.Remove(node);
            }
            else
            {
                node.Parent!.AsObject().Remove(node.GetPropertyName());
            }
        }));
        if (At(root, path) is JsonObject)
        {
            yield return ("has another member", Changed(root, path, node => node.AsObject().Add("invented", 1)));
        }
    }

    private static JsonNode Changed(JsonNode root, string path, Action<JsonNode> change)
    {
        JsonNode copy = root.DeepClone();
        change(At(copy, path));
        return copy;
    }

    private static JsonNode At(JsonNode root, string path) => PathsAndNodes(root).First(pair => pair.Node.GetPath() == path).Node;

    private static IEnumerable<string> PathsUnder(JsonNode root) => PathsAndNodes(root).Select(pair => pair.Path).Skip(1);

    private static IEnumerable<(string Path, JsonNode Node)> PathsAndNodes(JsonNode node)
        => new[] { (node.GetPath(), node) }.Concat(Children(node).SelectMany(PathsAndNodes));

    private static IEnumerable<JsonNode> Children(JsonNode node) => node switch
    {
        JsonObject members => members.Select(member => member.Value!),
        JsonArray items => items.Select(item => item!),
        _ => [],
    };
}
