namespace Terminus.Tests.Docs;

/// <summary>
/// The samples of the pages, one method each: the lines between its braces are the sample, and what it writes to its console is what the page
/// shows. Everything in them is invented.
/// </summary>
internal static partial class Samples
{
    /// <summary>Stands for <see cref="System.IO.File"/> in the samples and knows the files that the pages show.</summary>
    private static class File
    {
        internal static byte[] ReadAllBytes(string name) => System.Text.Encoding.UTF8.GetBytes(DocPage.FileText(name));
    }
}
