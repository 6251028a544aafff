using System.Text.RegularExpressions;
using Terminus.Tests.Architecture;

namespace Terminus.Tests.Docs;

/// <summary>
/// Every sample of the pages is compiled, run and compared: its code with the method that stands in <see cref="Samples"/>, its output with what
/// that prints. Nothing is rewritten; where a page differs, the page as it should stand is left in the folder <c>received</c> beside the
/// tests.
/// </summary>
public sealed partial class PagesTest
{
    public static TheoryData<string> Pages => [.. DocPage.All.Select(p => p.Name)];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Samples_CompiledAndRun_AreWhatThePageShows(string name)
    {
#if !LIBRARY_NETSTANDARD
        using var session = new ConsoleSession();
#endif
        Approve(DocPage.Named(name), block =>
            block.IsSample ? block.Usings + SampleCode.Text(block.Value)
            : block.IsOutput ? SampleCode.Output(block.Value)
#if !LIBRARY_NETSTANDARD
            : block.IsConsole ? session.Replay(block)
#endif
            : null);
    }

    [Fact]
    public void Samples_All_StandOnAPage()
        => Assert.Equal(
            SampleCode.Names.Order(StringComparer.Ordinal),
            DocPage.All.SelectMany(p => p.Blocks).Where(b => b.IsSample).Select(b => b.Value).Order(StringComparer.Ordinal));

    [Fact]
    public void Readme_Sample_HasFewerThanFifteenLines()
        => Assert.InRange(DocPage.Named("README.md").Blocks.Single(b => b.IsSample).Lines.Count(), 1, 14);

    [Theory]
    [MemberData(nameof(Pages))]
    public void Links_WithinTheRepository_LeadSomewhere(string name)
    {
        string folder = Path.GetDirectoryName(Path.Combine(SourceTree.Root, name))!;
        foreach (Match link in Link().Matches(DocPage.Named(name).With(_ => "")))
        {
            string target = link.Groups["target"].Value;
            string[] parts = target.Split('#', 2);
            string path = parts[0].Length == 0 ? Path.Combine(SourceTree.Root, name) : Path.GetFullPath(Path.Combine(folder, parts[0]));
            Assert.True(Path.Exists(path), $"{name} links to {target}, and there is no such file.");
            Assert.True(parts.Length == 1 || Anchors(File.ReadAllText(path)).Contains(parts[1]), $"{name} links to {target}, and there is no such heading.");
        }
    }

    internal static void Approve(DocPage page, Func<DocBlock, string?> replacement) => Approve(page, page.With(replacement));

    internal static void Approve(DocPage page, string actual)
    {
        if (actual != page.Text)
        {
            string received = Path.Combine(AppContext.BaseDirectory, "received", page.Name);
            Directory.CreateDirectory(Path.GetDirectoryName(received)!);
            File.WriteAllText(received, actual);
        }

        Assert.Equal(page.Text, actual);
    }

    private static IEnumerable<string> Anchors(string page)
        => Heading().Matches(page).Select(m => NotInAnchor().Replace(m.Groups["text"].Value.ToLowerInvariant(), "").Replace(' ', '-'));

    [GeneratedRegex(@"\]\((?!https?:)(?<target>[^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"^#+ (?<text>.+)$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"[^\w\- ]")]
    private static partial Regex NotInAnchor();
}
