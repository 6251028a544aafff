#if !LIBRARY_NETSTANDARD
using System.Text;
using System.Text.RegularExpressions;
using Terminus.Demo;

namespace Terminus.Tests.Docs;

/// <summary>Runs the commands of a console block in this process, in a folder of their own that holds the files of the pages.</summary>
internal sealed partial class ConsoleSession : IDisposable
{
    private const string Prompt = "$ terminus-demo";

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("terminus-docs-");

    /// <summary>The block as it should stand: each command with what it answers, then what it complains of.</summary>
    internal string Replay(DocBlock block)
    {
        var text = new StringBuilder();
        foreach (string line in block.Lines.Where(l => l.StartsWith("$ ", StringComparison.Ordinal)))
        {
            text.Append(line).Append('\n').Append(Run(line));
        }

        return text.ToString();
    }

    public void Dispose() => folder.Delete(recursive: true);

    private string Run(string line)
    {
        Assert.StartsWith(Prompt, line, StringComparison.Ordinal);
        List<string> words = [.. Word().Matches(line[Prompt.Length..]).Select(m => m.Value.Trim('"'))];
        byte[] input = TakeAfter(words, "<") is { } source ? File.ReadAllBytes(PathOf(source)) : [];
        string? target = TakeAfter(words, ">");
        using var output = new MemoryStream();
        using var errors = new StringWriter { NewLine = "\n" };
        _ = new DemoConsole(new MemoryStream(input), output, errors).Run([.. words.Select(w => w.EndsWith(".json", StringComparison.Ordinal)
            || w.EndsWith(".jsonl", StringComparison.Ordinal) || w.EndsWith(".csv", StringComparison.Ordinal) ? PathOf(w) : w)]);
        if (target is not null)
        {
            File.WriteAllBytes(Path.Combine(folder.FullName, target), output.ToArray());
            output.SetLength(0);
        }

        // Blank lines at the end of an answer are not shown.
        string answer = (Encoding.UTF8.GetString(output.ToArray()).TrimEnd('\n') + "\n" + errors).Trim('\n');
        return answer.Length == 0 ? "" : answer.Replace(folder.FullName + Path.DirectorySeparatorChar, "", StringComparison.Ordinal) + "\n";
    }

    // The file, written there first where it is one that the pages show.
    private string PathOf(string name)
    {
        string path = Path.Combine(folder.FullName, name);
        if (!File.Exists(path))
        {
            File.WriteAllText(path, DocPage.FileText(name));
        }

        return path;
    }

    private static string? TakeAfter(List<string> words, string sign)
    {
        int at = words.IndexOf(sign);
        if (at < 0)
        {
            return null;
        }

        string name = words[at + 1];
        words.RemoveRange(at, 2);
        return name;
    }

    [GeneratedRegex("""
        "[^"]*"|[^ ]+
        """)]
    private static partial Regex Word();
}
#endif
