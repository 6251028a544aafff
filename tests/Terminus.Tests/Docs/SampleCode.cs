using System.Globalization;
using System.Reflection;
using Terminus.Tests.Architecture;

namespace Terminus.Tests.Docs;

/// <summary>A sample by its name in the pages: the body of a method of <see cref="Samples"/>, and what it prints.</summary>
internal static class SampleCode
{
    private static readonly string[] Sources =
    [
        .. Directory.EnumerateFiles(Path.Combine(SourceTree.Root, "tests", "Terminus.Tests", "Docs"), "Samples.*.cs")
            .Select(path => File.ReadAllText(path).ReplaceLineEndings("\n")),
    ];

    /// <summary>The names of all samples, as the pages write them.</summary>
    internal static IEnumerable<string> Names
        => typeof(Samples).GetMethods(BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
            .Where(m => m.GetParameters() is [{ Name: "Console" }])
            .Select(m => Words.Kebab(m.Name));

    /// <summary>The lines between the braces of the method, without their indent.</summary>
    internal static string Text(string name)
    {
        const string Indent = "        ";
        string head = " " + Method(name).Name + "(TextWriter Console)\n    {\n";
        string source = Sources.Single(s => s.Contains(head, StringComparison.Ordinal));
        int start = source.IndexOf(head, StringComparison.Ordinal) + head.Length;
        int end = source.IndexOf("\n    }\n", start, StringComparison.Ordinal) + 1;
        return string.Concat(source[start..end].Split('\n').SkipLast(1)
            .Select(line => (line.StartsWith(Indent, StringComparison.Ordinal) ? line[Indent.Length..] : line) + "\n"));
    }

    internal static string Output(string name)
    {
        using var culture = new CultureScope("");
        using var console = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        (Method(name).Invoke(null, [console]) as Task)?.GetAwaiter().GetResult();
        return console.ToString();
    }

    private static MethodInfo Method(string name)
        => typeof(Samples).GetMethod(
            string.Concat(name.Split('-').Select(w => char.ToUpperInvariant(w[0]) + w[1..])), BindingFlags.Static | BindingFlags.NonPublic)
            ?? throw new ArgumentException("No method of Samples is called for " + name + ".", nameof(name));
}
