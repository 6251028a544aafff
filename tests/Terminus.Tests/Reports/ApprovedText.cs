using Terminus.Tests.Architecture;

namespace Terminus.Tests.Reports;

/// <summary>Compares a text with the approved one of the source tree.</summary>
internal static class ApprovedText
{
    /// <summary>
    /// Where the two differ the text is left beside the approved file as <c>.received.txt</c>, to be looked at and, if it is right, moved over it.
    /// </summary>
    internal static void Check(string text, params string[] path)
    {
        string file = Path.Combine([SourceTree.Root, .. path]);
        string approved = File.Exists(file) ? File.ReadAllText(file).ReplaceLineEndings("\n") : "";
        if (approved != text)
        {
            File.WriteAllText(Path.ChangeExtension(file, ".received.txt"), text);
        }

        Assert.Equal(approved, text);
    }
}
