using PublicApiGenerator;

namespace Terminus.Tests.Architecture;

/// <summary>
/// Holds what the library exports against the approved text, for whichever build is under test: net10.0 and netstandard2.0 export the same.
/// Where they differ from it, the text of now is written beside it as <c>PublicApi.received.txt</c>. Read the difference, note in
/// docs/changelog.md what a user notices, and approve with <c>cd tests/Terminus.Tests/Architecture &amp;&amp; mv PublicApi.received.txt PublicApi.approved.txt</c>.
/// </summary>
public class PublicApiTest
{
    private static readonly string Folder = Path.Combine(SourceTree.Root, "tests", "Terminus.Tests", "Architecture");

    private static readonly string[] Downlevel =
    [
        "System.Runtime.CompilerServices.IsReadOnlyAttribute", "System.Runtime.CompilerServices.NullableAttribute",
        "System.Runtime.CompilerServices.NullableContextAttribute", "System.Runtime.CompilerServices.RequiredMemberAttribute",
        "System.Runtime.CompilerServices.CompilerFeatureRequiredAttribute",
    ];

    [Fact]
    public void Library_Exports_AreTheApprovedText()
    {
        string received = Exports();
        string approvedFile = Path.Combine(Folder, "PublicApi.approved.txt");
        string approved = File.Exists(approvedFile) ? File.ReadAllText(approvedFile) : "";
        if (received != approved)
        {
            File.WriteAllText(Path.Combine(Folder, "PublicApi.received.txt"), received);
        }

        Assert.Equal(approved.Split('\n'), received.Split('\n'));
    }

    private static string Exports()
        => typeof(Dating).Assembly.GeneratePublicApi(new ApiGeneratorOptions { IncludeAssemblyAttributes = false, ExcludeAttributes = Downlevel })
            .ReplaceLineEndings("\n").TrimEnd('\n') + "\n";
}
