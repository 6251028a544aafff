using System.Text.RegularExpressions;

namespace Terminus.Tests.Architecture;

/// <summary>A source file of the library: its folder, its name, its text, and its code without comments and texts in quotes.</summary>
internal sealed partial record SourceFile(string Folder, string Name, string Text)
{
    internal string Code => NotCode().Replace(Text, match => match.Value[0] == '/' ? " " : "\"\"");

    internal int Lines => Text.Count(c => c == '\n');

    /// <summary>The types declared at the left edge, which are those outside of any other.</summary>
    internal IEnumerable<string> Types => Declaration().Matches(Code).Select(m => m.Groups["name"].Value);

    public override string ToString() => Folder.Length == 0 ? Name : Folder + "/" + Name;

    [GeneratedRegex("""//[^\n]*|/\*.*?\*/|\$*"{3,}.*?"{3,}|\$?@\$?"(?:[^"]|"")*"|\$?"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])+'""", RegexOptions.Singleline)]
    private static partial Regex NotCode();

    [GeneratedRegex(@"^(?:[a-z]+\s+)*(?:class|struct|interface|enum|record(?:\s+struct|\s+class)?)\s+(?<name>[A-Z]\w*)", RegexOptions.Multiline)]
    private static partial Regex Declaration();
}

/// <summary>The repository that the tests were built from.</summary>
internal static class SourceTree
{
    internal static string Root { get; } = FindRoot();

    /// <summary>The sources of the library.</summary>
    internal static IReadOnlyList<SourceFile> Library { get; } = [.. Read(Path.Combine(Root, "src", "Terminus"))];

    private static IEnumerable<SourceFile> Read(string folder)
        => from path in Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
           let relative = Path.GetRelativePath(folder, path).Replace('\\', '/')
           where !relative.StartsWith("obj/", StringComparison.Ordinal) && !relative.StartsWith("bin/", StringComparison.Ordinal)
           orderby relative
           select new SourceFile(
               Path.GetDirectoryName(relative)!.Replace('\\', '/'), Path.GetFileName(relative), File.ReadAllText(path).ReplaceLineEndings("\n"));

    private static string FindRoot()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Terminus.sln")))
            {
                return folder.FullName;
            }
        }

        throw new DirectoryNotFoundException("The tests run inside the repository, below Terminus.sln.");
    }
}
