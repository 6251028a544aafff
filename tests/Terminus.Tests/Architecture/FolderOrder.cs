using System.Text.RegularExpressions;

namespace Terminus.Tests.Architecture;

/// <summary>
/// Finds where a file uses a type of a folder below its own. It reads names, not meanings: a name after a point is a member, and so is
/// one that the file itself declares as a member.
/// </summary>
internal sealed partial class FolderOrder(IReadOnlyList<string> order)
{
    private const string Root = "";

    /// <summary>The order that the table of DEVELOPERS.md gives, the root first.</summary>
    internal static FolderOrder OfDevelopersGuide()
        => new([Root, .. Row().Matches(File.ReadAllText(Path.Combine(SourceTree.Root, "DEVELOPERS.md"))).Select(m => m.Groups["folder"].Value)]);

    internal IReadOnlyList<string> Order => order;

    /// <summary>Each use of a lower folder as <c>Dates/A.cs uses Dating of Combining</c>, and each folder that has no place in the order.</summary>
    internal IEnumerable<string> Violations(IReadOnlyList<SourceFile> files)
    {
        ILookup<string, string> homes = files.SelectMany(f => f.Types.Select(type => (type, f.Folder))).Distinct().ToLookup(t => t.type, t => t.Folder);
        foreach (SourceFile file in files)
        {
            int own = Place(file.Folder);
            if (own < 0)
            {
                yield return $"{file} is in a folder that the order does not name";
                continue;
            }

            foreach (string name in UsedNames(file.Code).Where(homes.Contains))
            {
                foreach (string folder in homes[name].Where(f => Place(f) > own))
                {
                    yield return $"{file} uses {name} of {folder}";
                }
            }
        }
    }

    private int Place(string folder) => order.ToList().IndexOf(folder.Split('/')[0]);

    private static IEnumerable<string> UsedNames(string code)
        => Use().Matches(code).Select(m => m.Groups["name"].Value).Distinct().Except(Member().Matches(code).Select(m => m.Groups["name"].Value));

    [GeneratedRegex(@"^\| `(?<folder>\w+)/` \|", RegexOptions.Multiline)]
    private static partial Regex Row();

    // A name that is not after a point, unless that is the point of the namespace.
    [GeneratedRegex(@"(?:(?<=\bTerminus\.)|(?<![\w.]))(?<name>[A-Z]\w*)")]
    private static partial Regex Use();

    // A property, field or method being declared: modifiers, a type, the name, and what opens or ends it.
    [GeneratedRegex(@"^\s+(?:public|private|protected|internal)\b[^\n=({]*[\w>?\])] (?<name>[A-Z]\w*)\s*(?:\{|=|;|\()", RegexOptions.Multiline)]
    private static partial Regex Member();
}
