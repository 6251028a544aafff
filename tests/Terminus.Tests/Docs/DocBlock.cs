namespace Terminus.Tests.Docs;

/// <summary>A fenced block of a page: its language, its one attribute, the line of its opening fence and its text.</summary>
/// <remarks>
/// <c>csharp sample=NAME</c> is the body of a method of <see cref="Samples"/>, <c>text output=NAME</c> what it prints, <c>json file=NAME</c> a file
/// that samples may read, and <c>console</c> a run of the console with its answer.
/// </remarks>
internal sealed record DocBlock(string Language, string Attribute, string Value, int Line, string Text)
{
    internal bool IsSample => Language == "csharp";

    internal bool IsOutput => Attribute == "output";

    internal bool IsFile => Attribute == "file";

    internal bool IsConsole => Language == "console";

    /// <summary>The leading <c>using</c> lines of a sample, with the blank line after them.</summary>
    internal string Usings => string.Concat(Lines.TakeWhile(l => IsUsing(l) || l.Length == 0).Select(l => l + "\n"));

    // A directive, not a declaration that disposes.
    private static bool IsUsing(string line) => line.StartsWith("using ", StringComparison.Ordinal) && !line.Contains('=', StringComparison.Ordinal);

    internal IEnumerable<string> Lines => Text.Split('\n').SkipLast(1);
}
