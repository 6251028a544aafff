using System.Text;
using Terminus.Tests.Architecture;

namespace Terminus.Tests.Docs;

/// <summary>A page of the documentation with its fenced blocks.</summary>
internal sealed class DocPage
{
    private const string Fence = "```";

    private readonly string[] lines;

    private DocPage(string name, string text)
    {
        Name = name;
        Text = text;
        lines = text.Split('\n');
        Blocks = [.. ReadBlocks()];
    }

    /// <summary>All pages, by their path from the top of the repository.</summary>
    internal static IReadOnlyList<DocPage> All { get; } =
    [
        .. Directory.EnumerateFiles(Path.Combine(SourceTree.Root, "docs"), "*.md")
            .Append(Path.Combine(SourceTree.Root, "README.md"))
            .Append(Path.Combine(SourceTree.Root, "DEVELOPERS.md"))
            .Order(StringComparer.Ordinal)
            .Select(path => new DocPage(
                Path.GetRelativePath(SourceTree.Root, path).Replace('\\', '/'), File.ReadAllText(path).ReplaceLineEndings("\n"))),
    ];

    internal string Name { get; }

    internal string Text { get; }

    internal IReadOnlyList<DocBlock> Blocks { get; }

    internal static DocPage Named(string name) => All.Single(p => p.Name == name);

    /// <summary>The text of a file that a page shows, or of one that stands in docs/samples.</summary>
    internal static string FileText(string name)
        => All.SelectMany(p => p.Blocks).FirstOrDefault(b => b.IsFile && b.Value == name)?.Text
            ?? File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "samples", name));

    /// <summary>The page with the texts of some blocks replaced; null keeps a block.</summary>
    internal string With(Func<DocBlock, string?> replacement)
    {
        var text = new StringBuilder();
        int line = 0;
        foreach (DocBlock block in Blocks)
        {
            while (line <= block.Line)
            {
                text.Append(lines[line++]).Append('\n');
            }

            text.Append(replacement(block) ?? block.Text);
            line += block.Lines.Count();
        }

        return text.AppendJoin('\n', lines.Skip(line)).ToString();
    }

    private IEnumerable<DocBlock> ReadBlocks()
    {
        for (int line = 0; line < lines.Length; line++)
        {
            if (!lines[line].StartsWith(Fence, StringComparison.Ordinal))
            {
                continue;
            }

            int open = line++;
            var text = new StringBuilder();
            while (lines[line] != Fence)
            {
                text.Append(lines[line++]).Append('\n');
            }

            string[] words = lines[open][Fence.Length..].Split(' ', 2);
            string[] pair = words.Length > 1 ? words[1].Split('=', 2) : ["", ""];
            yield return new DocBlock(words[0], pair[0], pair.Length > 1 ? pair[1] : "", open, text.ToString());
        }
    }
}
